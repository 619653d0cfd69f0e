// A cleaned line in pieces: words, quoted words, bare numbers, quantities with their unit. One pass; each piece knows
// its place in the line.

import { type Hearing, meaningOf } from '../hearing.ts';
import { amountSaid, halfMore } from './amount-said.ts';
import { readNumeric } from './numeric-chunk.ts';
import type { QuantityToken, Span, Token } from './token.ts';
import { inch, notAfterSpace, type Unit } from './units-typed.ts';
import { withoutAccents } from './without-accents.ts';

const outerMarks = /^[([{']+|[)\]},;:!'.?]+$/g;
const needsTrim = /^[([{']|[)\]},;:!?'.]$/;
const gluedLabel = /^([a-z-]+)[:=](.+)$/i;
const hasGlue = /[:=\d]/;
const endsPlain = /[a-z0-9%]$/i;
const startsNumeric = /^[+-]?[.,]?\d|^[oO][.,]\d/;

/** The pieces of `line`. Never throws. */
export function tokenize(line: string, hearing: Hearing): readonly Token[] {
  const kept = lastRead.get(hearing);
  const known = kept?.get(line);
  if (known !== undefined) return known;
  const tokens = piecesOf(line, hearing);
  if (kept === undefined || kept.size > mostKept) lastRead.set(hearing, new Map([[line, tokens]]));
  else kept.set(line, tokens);
  return tokens;
}

/** A line is looked at by a dozen readers, one after the other. */
const lastRead = new WeakMap<Hearing, Map<string, readonly Token[]>>();
const mostKept = 50;

function piecesOf(line: string, hearing: Hearing): readonly Token[] {
  const spans = chunksOf(line, hearing);
  const tokens: Token[] = [];
  for (let i = 0; i < spans.length; i++) {
    const span = spans[i];
    if (span === undefined) continue;
    const first = span.text.charCodeAt(0);
    if (first === 34 && span.text.length > 1 && span.text.endsWith('"')) {
      tokens.push({ kind: 'quoted', words: unquoted(span.text), ...span });
    } else if (startsNumeric.test(span.text)) {
      i += pushNumeric(tokens, spans, i, line, hearing);
      i += halfMore(tokens, spans, i, line, hearing);
    } else {
      const said = amountSaid(spans, i, line, hearing);
      if (said === undefined) pushWord(tokens, spans, i, line, hearing);
      else {
        tokens.push(said.token);
        i += said.chunks - 1;
      }
    }
  }
  return tokens;
}

/** With minutes or a half of the day: `gas puesto a la 1`, `a la una`, say which can. */
const oneOClock = /^0?1(?:[:.,h]\d\d|[ap]\.?m)/i;

/** `ocho`; `una` with what is past it, or its part of the day. */
function isHourSaid(spans: readonly Span[], index: number, { numbers, pastHour, times }: Hearing): boolean {
  const [hour = '', first = '', second = ''] = spans.slice(index, index + 3).map(plain);
  const number = numbers.get(hour) ?? 0;
  if (number > 1 || number === 0) return Number.isInteger(number) && number > 1;
  return pastHour.has(`${first} ${second}`) || times.some(({ partLeads }) => partLeads.split(' ').includes(first));
}

const plain = ({ text }: Span): string => withoutAccents(text.toLowerCase());

/** `a las 9:40` is `at 9:40`, `a la 1:30` too; elsewhere `a` is the letter of a part. */
function pushWord(tokens: Token[], spans: readonly Span[], index: number, line: string, hearing: Hearing): void {
  const [span, next] = [spans[index], spans[index + 1]];
  if (span === undefined) return;
  const { text, start, end } = span;
  const typed = text.toLowerCase();
  const word = meaningOf(typed, hearing);
  const before = tokens.at(-1);
  if (before?.kind === 'word') {
    for (const { atHour, atOne, atNoon } of hearing.times) {
      // Where nothing but a time can be meant.
      if (before.word === atNoon && (word === 'noon' || word === 'midnight')) {
        tokens[tokens.length - 1] = { ...before, word: 'at' };
      }
      const isHour =
        next !== undefined &&
        ((typed === atHour?.[1] &&
          before.word === atHour[0] &&
          (isDigit(next.text.charCodeAt(0)) || isHourSaid(spans, index + 1, hearing))) ||
          (typed === atOne?.[1] &&
            before.word === atOne[0] &&
            (oneOClock.test(next.text) || isHourSaid(spans, index + 1, hearing))));
      if (isHour) {
        const text = line.slice(before.start, end);
        tokens[tokens.length - 1] = { kind: 'word', word: 'at', text, start: before.start, end };
        return;
      }
    }
  }
  tokens.push({ kind: 'word', word, text, start, end });
}

/** The pieces of `text` as if it stood at `start` of the line. */
export function tokensAt(text: string, start: number, hearing: Hearing): readonly Token[] {
  return tokenize(' '.repeat(start) + text, hearing);
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

function chunksOf(line: string, hearing: Hearing): readonly Span[] {
  const spans: Span[] = [];
  let start = 0;
  while (start < line.length) {
    if (line.charCodeAt(start) === 32) {
      start += 1;
      continue;
    }
    let end = line.charCodeAt(start) === 34 ? closingQuote(line, start) : -1;
    if (end === -1) {
      end = line.indexOf(' ', start);
      if (end === -1) end = line.length;
      pushTrimmed(spans, line.slice(start, end), start, hearing);
    } else {
      spans.push({ text: line.slice(start, end), start, end });
    }
    start = end;
  }
  return spans;
}

/** The index after the quote that closes the one at `start`, or -1. `\"` inside does not close. */
function closingQuote(line: string, start: number): number {
  for (let i = start + 1; i < line.length; i++) {
    const code = line.charCodeAt(i);
    if (code === 92) i += 1;
    else if (code === 34) return i + 1;
  }
  return -1;
}

function unquoted(text: string): string {
  return text.slice(1, -1).replace(/\\(.)/g, '$1');
}

function pushTrimmed(spans: Span[], chunk: string, at: number, { gluedNumber }: Hearing): void {
  if (isDigit(chunk.charCodeAt(0)) ? endsPlain.test(chunk) : !needsTrim.test(chunk) && !hasGlue.test(chunk)) {
    spans.push({ text: chunk, start: at, end: at + chunk.length });
    return;
  }
  const text = chunk === '?' || !needsTrim.test(chunk) ? chunk : chunk.replace(outerMarks, '');
  if (text === '') return;
  const start = at + chunk.indexOf(text);
  if (isDigit(text.charCodeAt(0))) {
    spans.push({ text, start, end: start + text.length });
    return;
  }
  const glued = gluedLabel.exec(text) ?? gluedNumber.exec(text);
  const label = glued?.[1] ?? glued?.[3];
  const rest = glued?.[2] ?? glued?.[4];
  if (label !== undefined && rest !== undefined) {
    spans.push({ text: label, start, end: start + label.length });
    spans.push({ text: rest, start: start + text.length - rest.length, end: start + text.length });
  } else if (/^#\d/.test(text)) {
    spans.push(
      { text: '#', start, end: start + 1 },
      { text: text.slice(1), start: start + 1, end: start + text.length },
    );
  } else {
    spans.push({ text, start, end: start + text.length });
  }
}

/** Adds what the numeric chunk holds and answers how many chunks after it were its unit. */
function pushNumeric(tokens: Token[], spans: readonly Span[], index: number, line: string, hearing: Hearing): number {
  const span = spans[index];
  if (span === undefined) return 0;
  const spaced = spacedUnit(spans, index, hearing);
  const quick = quickQuantity(span, hearing) ?? quickNumber(span, spaced);
  if (quick !== undefined) {
    addToken(tokens, quick, line);
    return 0;
  }
  const numeric = readNumeric(span, spaced?.unit, hearing.units);
  if (numeric === undefined) {
    pushWord(tokens, spans, index, line, hearing);
    return 0;
  }
  const chunks = numeric.usesSpaced ? (spaced?.chunks ?? 0) : 0;
  const end = chunks === 0 ? undefined : spans[index + chunks]?.end;
  const last = numeric.tokens.length - 1;
  for (const [i, token] of numeric.tokens.entries()) {
    const isSpaced = i === last && end !== undefined;
    addToken(tokens, isSpaced ? { ...token, text: line.slice(token.start, end), end } : token, line);
  }
  return chunks;
}

const quickShape = /^((?:0|[1-9]\d{0,8})(?:\.\d{1,2})?)([a-z%]+)$/i;

/** The usual case, `1201g`, without the search for slips: digits that leave no doubt and a unit right behind. */
function quickQuantity(span: Span, { units }: Hearing): Token | undefined {
  const found = quickShape.exec(span.text);
  const unit = found === null ? undefined : units.get((found[2] ?? '').toLowerCase());
  if (found === null || unit === undefined || unit === 'degree') return undefined;
  const value = Number(found[1]);
  return {
    kind: 'quantity',
    quantity: { is: unit.is, value: unit.of(value) },
    unit,
    value,
    text: span.text,
    start: span.start,
    end: span.end,
  };
}

/** `1` with no unit behind it. */
function quickNumber({ text, start, end }: Span, spaced: SpacedUnit | undefined): Token | undefined {
  if (spaced !== undefined || !/^[1-9]\d{0,8}$/.test(text)) return undefined;
  return { kind: 'number', number: { value: Number(text), whole: true }, countable: true, text, start, end };
}

interface SpacedUnit {
  readonly unit: Unit | 'degree';
  readonly chunks: number;
}

/** The unit in the chunk or two after the one at `index`. */
function spacedUnit(spans: readonly Span[], index: number, { units }: Hearing): SpacedUnit | undefined {
  const next = spans[index + 1]?.text.toLowerCase();
  if (next === undefined || isDigit(next.charCodeAt(0))) return undefined;
  const after = spans[index + 2]?.text.toLowerCase();
  // `74 deg, humidity 51`: what a comma parts is no one unit.
  const isOne = spans[index + 2]?.start === (spans[index + 1]?.end ?? 0) + 1;
  const long = after === undefined || !isOne ? undefined : units.get(`${next} ${after}`);
  if (long !== undefined) return { unit: long, chunks: 2 };
  if (notAfterSpace.has(next) && !isThinInInches(spans, index)) return undefined;
  const short = units.get(next);
  return short === undefined ? undefined : { unit: short, chunks: 1 };
}

/** `0.0005 in` behind which nothing is named: so little is a film alone, and `in` stands before no place. */
function isThinInInches(spans: readonly Span[], index: number): boolean {
  const [number, unit, after] = spans.slice(index, index + 3);
  const isLast = after === undefined || after.start > (unit?.end ?? 0) + 1;
  return isLast && unit?.text.toLowerCase() === inch.name && /^0?[.,]0\d+$/.test(number?.text ?? '');
}

/** Ounces after whole pounds are one weight: `2lb 10oz`. Minutes after hours are one time: `1h 20min`. */
function addToken(tokens: Token[], token: Token, line: string): void {
  const previous = tokens.at(-1);
  const joined = previous === undefined ? undefined : join(previous, token, line);
  if (joined === undefined) tokens.push(token);
  else tokens[tokens.length - 1] = joined;
}

function join(major: Token, minor: Token, line: string): Token | undefined {
  if (major.kind !== 'quantity' || minor.kind !== 'quantity' || !Number.isInteger(major.value)) return undefined;
  const perMajor = major.unit.name === 'lb' && minor.unit.name === 'oz' ? 16 : hourAndMinute(major, minor) ? 60 : 0;
  if (perMajor === 0 || minor.value >= perMajor) return undefined;
  const value = major.value + minor.value / perMajor;
  const { start } = major;
  const { end } = minor;
  return {
    ...major,
    value,
    quantity: { is: major.unit.is, value: major.unit.of(value) },
    text: line.slice(start, end),
    start,
    end,
  };
}

function hourAndMinute(major: QuantityToken, minor: QuantityToken): boolean {
  return major.unit.name === 'h' && minor.unit.name === 'min';
}
