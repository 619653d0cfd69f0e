// A cleaned line in pieces: words, quoted words, bare numbers, quantities with their unit. One pass; each piece knows
// its place in the line.

import type { TypedNumber } from './number-typed.ts';
import { readNumeric } from './numeric-chunk.ts';
import { degreeWithoutScale, notAfterSpace, type Quantity, type Unit, unitsBySpelling } from './units-typed.ts';

export interface Span {
  /** As typed. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export type Token =
  | (Span & { readonly kind: 'word'; readonly word: string })
  | (Span & { readonly kind: 'quoted'; readonly words: string })
  | (Span & { readonly kind: 'number'; readonly number: TypedNumber; readonly countable: boolean })
  | (Span & { readonly kind: 'quantity'; readonly quantity: Quantity; readonly unit: Unit; readonly value: number })
  /** A quantity that can be read in more than one way. */
  | (Span & { readonly kind: 'doubt'; readonly is: Quantity['is']; readonly couldBe: readonly string[] })
  /** Below anything that exists in this unit: -1 kg. */
  | (Span & { readonly kind: 'impossible'; readonly is: Quantity['is']; readonly lowest: number; readonly unit: Unit });

export type Word = Extract<Token, { kind: 'word' }>;
export type NumberToken = Extract<Token, { kind: 'number' }>;
export type QuantityToken = Extract<Token, { kind: 'quantity' }>;

const outerMarks = /^[([{']+|[)\]},;:!'.?]+$/g;
const needsTrim = /^[([{']|[)\]},;:!?'.]$/;
const gluedLabel = /^([a-z-]+)[:=](.+)$/i;
const gluedNumber = /^(batch|pot|max|no\.?)(\d.*)$|^(at)(\d{1,2}[:.h]\d{2}.*|\d{4}|\d{1,2}[ap]m)$/i;
const startsNumeric = /^[+-]?[.,]?\d|^[oO][.,]\d/;

/** The pieces of `line` from `from` on. Never throws. */
export function tokenize(line: string, from = 0): readonly Token[] {
  const spans = chunksOf(line, from);
  const tokens: Token[] = [];
  for (let i = 0; i < spans.length; i++) {
    const span = spans[i];
    if (span === undefined) continue;
    const first = span.text.charCodeAt(0);
    if (first === 34 && span.text.length > 1 && span.text.endsWith('"')) {
      tokens.push({ kind: 'quoted', words: unquoted(span.text), ...span });
    } else if (isLetter(first) && !(first === 79 || first === 111)) {
      tokens.push({ kind: 'word', word: span.text.toLowerCase(), text: span.text, start: span.start, end: span.end });
    } else if (startsNumeric.test(span.text)) {
      i += pushNumeric(tokens, spans, i, span);
    } else {
      tokens.push({ kind: 'word', word: span.text.toLowerCase(), ...span });
    }
  }
  return tokens;
}

function isLetter(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

function chunksOf(line: string, from: number): readonly Span[] {
  const spans: Span[] = [];
  let start = from;
  while (start < line.length) {
    if (line.charCodeAt(start) === 32) {
      start += 1;
      continue;
    }
    let end = line.charCodeAt(start) === 34 ? closingQuote(line, start) : -1;
    if (end === -1) {
      end = line.indexOf(' ', start);
      if (end === -1) end = line.length;
      pushTrimmed(spans, line.slice(start, end), start);
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

function pushTrimmed(spans: Span[], chunk: string, at: number): void {
  if (!needsTrim.test(chunk) && !/[:=\d]/.test(chunk)) {
    spans.push({ text: chunk, start: at, end: at + chunk.length });
    return;
  }
  const text = chunk === '?' ? chunk : chunk.replace(outerMarks, '');
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
function pushNumeric(tokens: Token[], spans: readonly Span[], index: number, span: Span): number {
  const next = spans[index + 1]?.text.toLowerCase();
  const two = next === undefined ? undefined : `${next} ${spans[index + 2]?.text.toLowerCase() ?? ''}`;
  const spaced = next === undefined ? undefined : spacedUnit(next, two);
  const numeric = readNumeric(span, spaced?.unit);
  if (numeric === undefined) {
    tokens.push({ kind: 'word', word: span.text.toLowerCase(), ...span });
    return 0;
  }
  const last = numeric.tokens.length - 1;
  const unitEnd = spaced === undefined ? undefined : spans[index + spaced.chunks]?.end;
  for (const [i, token] of numeric.tokens.entries()) {
    const previous = tokens.at(-1);
    if (i === last && numeric.usesSpaced && unitEnd !== undefined) {
      const unitText = spans.slice(index + 1, index + 1 + (spaced?.chunks ?? 0)).map((chunk) => chunk.text);
      addToken(tokens, previous, { ...token, text: [token.text, ...unitText].join(' '), end: unitEnd });
    } else {
      addToken(tokens, previous, token);
    }
  }
  return numeric.usesSpaced ? (spaced?.chunks ?? 0) : 0;
}

function spacedUnit(next: string, two: string | undefined): { unit: Unit | 'degree'; chunks: number } | undefined {
  const long = two === undefined ? undefined : unitsBySpelling.get(two);
  if (long !== undefined) return { unit: long, chunks: 2 };
  if (notAfterSpace.has(next)) return undefined;
  const short = unitsBySpelling.get(next);
  if (short !== undefined) return { unit: short, chunks: 1 };
  return degreeWithoutScale.has(next) ? { unit: 'degree', chunks: 1 } : undefined;
}

/** Ounces after whole pounds are one weight: `2lb 10oz`. Minutes after hours are one time: `1h 20min`. */
function addToken(tokens: Token[], previous: Token | undefined, token: Token): void {
  const joined = previous === undefined ? undefined : join(previous, token);
  if (joined === undefined) tokens.push(token);
  else tokens[tokens.length - 1] = joined;
}

function join(major: Token, minor: Token): Token | undefined {
  if (major.kind !== 'quantity' || minor.kind !== 'quantity' || !Number.isInteger(major.value)) return undefined;
  const perMajor = major.unit.name === 'lb' && minor.unit.name === 'oz' ? 16 : hourAndMinute(major, minor) ? 60 : 0;
  if (perMajor === 0 || minor.value >= perMajor) return undefined;
  const value = major.value + minor.value / perMajor;
  const text = `${major.text}${major.end === minor.start ? '' : ' '}${minor.text}`;
  return { ...major, value, quantity: major.unit.of(value), text, end: minor.end };
}

function hourAndMinute(major: QuantityToken, minor: QuantityToken): boolean {
  return major.unit.name === 'h' && minor.unit.name === 'min';
}
