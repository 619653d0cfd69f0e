// A chunk that begins with a digit: `1201g`, `2lb10`, `24C48%`, `12/14/13um`, `1h20`, with thumb slips such as `12O1g`.
// Undefined where it is no number after all (a name, a date, a time of day).

import { readNumber, type TypedNumber } from './number-typed.ts';
import type { Span, Token } from './token.ts';
import { hour, minute, ounce, pound, type Spellings, takesFraction, type Unit } from './units-typed.ts';

/** degree: a temperature without its scale. */
export type UnitRead = Unit | 'degree';

interface Piece {
  readonly number: TypedNumber;
  readonly unit?: UnitRead;
  readonly from: number;
  readonly to: number;
}

export interface Numeric {
  readonly tokens: readonly Token[];
  /** The unit in the next chunk was needed for the last number. */
  readonly usesSpaced: boolean;
}

const digits = /[+-]?(?:\d+(?:[.,']\d+)*|[.,]\d+)/y;
const letters = /[a-z°%µμ"]+(?:\.[a-z]+)*(?:\^?2(?![\d.,]))?/iy;
const fraction = /^(\d{1,2})\/(2|4|8|16|32)(\D*)$/;

export function readNumeric(span: Span, spaced: UnitRead | undefined, spellings: Spellings): Numeric | undefined {
  const broken = fraction.exec(span.text);
  if (broken !== null) {
    const read = readFraction(span, broken, spaced, spellings);
    if (read !== undefined) return read;
  }
  const pieces = piecesOf(span.text, spellings) ?? piecesOfSlip(span.text, spaced !== undefined, spellings);
  if (pieces === undefined) return undefined;
  const last = pieces.at(-1);
  const usesSpaced = spaced !== undefined && last !== undefined && last.unit === undefined;
  const tokens = pieces.map((piece) =>
    tokenOf(
      {
        text: span.text.slice(piece.from, piece.to),
        start: span.start + piece.from,
        end: span.start + piece.to,
      },
      piece.number,
      piece === last && usesSpaced ? spaced : piece.unit,
    ),
  );
  return { tokens, usesSpaced };
}

function readFraction(
  span: Span,
  broken: RegExpExecArray,
  spaced: UnitRead | undefined,
  spellings: Spellings,
): Numeric | undefined {
  const own = broken[3] === '' ? undefined : spellings.get((broken[3] ?? '').toLowerCase());
  const unit = own ?? (broken[3] === '' ? spaced : undefined);
  if (unit === undefined || unit === 'degree' || !takesFraction.has(unit.name)) return undefined;
  const number = { value: Number(broken[1]) / Number(broken[2]), whole: false };
  return { tokens: [tokenOf(span, number, unit)], usesSpaced: own === undefined };
}

function piecesOf(text: string, spellings: Spellings): readonly Piece[] | undefined {
  const pieces: Piece[] = [];
  let at = 0;
  while (at < text.length) {
    const previous = pieces.at(-1);
    if (previous !== undefined && isSeparator(text.charCodeAt(at))) at += 1;
    const signed = text.charCodeAt(at) === 45 || text.charCodeAt(at) === 43;
    digits.lastIndex = at;
    const found = digits.exec(text);
    // A sign inside a chunk is a range or a date, never a minus: `12-14um`.
    if (found === null || (signed && at > 0)) return undefined;
    // `1l98g` is a slip for 1198g: nobody runs litres into another number.
    if (isGlued(text, at) && typeof previous?.unit === 'object' && previous.unit.is === 'volume') return undefined;
    const number = readNumber(found[0]);
    const after = at + found[0].length;
    const unit = unitIn(text, after, spellings);
    if (number === undefined) {
      const list = unit === undefined ? undefined : listOf(found[0], at, unit);
      if (list === undefined) return undefined;
      pieces.push(...list);
    } else {
      const glued = unit === undefined && isGlued(text, at) ? minorOf(previous, number) : unit?.unit;
      if (unit === undefined && glued === undefined && isGlued(text, at) && previous !== undefined) return undefined;
      pieces.push({ number, from: at, to: unit?.end ?? after, ...(glued !== undefined && { unit: glued }) });
    }
    if (unit === undefined && after < text.length && !isSeparator(text.charCodeAt(after))) return undefined;
    at = unit?.end ?? after;
  }
  return pieces;
}

/** `2lb10` and `1h20`: the smaller unit goes without saying. */
function minorOf(previous: Piece | undefined, number: TypedNumber): Unit | undefined {
  if (!number.whole) return undefined;
  if (previous?.unit === pound && number.value < 16) return ounce;
  return previous?.unit === hour && number.value < 60 ? minute : undefined;
}

/** `,` `+` `/` between two numbers. */
function isSeparator(code: number): boolean {
  return code === 44 || code === 43 || code === 47;
}

function isGlued(text: string, at: number): boolean {
  return at > 0 && !isSeparator(text.charCodeAt(at - 1));
}

function unitIn(
  text: string,
  from: number,
  spellings: Spellings,
): { readonly unit: UnitRead; readonly end: number } | undefined {
  letters.lastIndex = from;
  const found = letters.exec(text)?.[0].toLowerCase();
  if (found === undefined) return undefined;
  const whole = unitNamed(found, spellings);
  if (whole !== undefined) return { unit: whole, end: from + found.length };
  // `1h20`: the 2 belongs to the next number, not to a square.
  const without = found.endsWith('2') ? unitNamed(found.slice(0, -1), spellings) : undefined;
  return without === undefined ? undefined : { unit: without, end: from + found.length - 1 };
}

function unitNamed(spelling: string, spellings: Spellings): UnitRead | undefined {
  return spellings.get(spelling) ?? spellings.get(spelling.replaceAll('.', ''));
}

/** `12,14,13um`: three numbers and more with commas are a list of readings, the unit is the last one's. */
function listOf(text: string, at: number, last: { unit: UnitRead; end: number }): readonly Piece[] | undefined {
  const values = text.split(',');
  if (values.length < 3 || values.some((value) => !/^\d{1,4}(?:\.\d)?$/.test(value))) return undefined;
  let from = at;
  return values.map((value, i) => {
    const number = { value: Number(value), whole: !value.includes('.') };
    const isLast = i === values.length - 1;
    const piece = { number, from, to: isLast ? last.end : from + value.length, ...(isLast && { unit: last.unit }) };
    from += value.length + 1;
    return piece;
  });
}

const slipPrefix = /^[\doOlI.,]+/;

/**
 * O for 0 inside a number, or at its end where a unit follows and no decimals are at stake: `12O1g`, `2OOg`, but not
 * `1201o`, which may be a missed g. l or I for 1 only between digits and before a weight, since `2l` is two litres.
 */
function piecesOfSlip(text: string, hasUnitAfter: boolean, spellings: Spellings): readonly Piece[] | undefined {
  const longest = slipPrefix.exec(text)?.[0].length ?? 0;
  for (let end = longest; end > 1; end--) {
    const rest = text.slice(end).toLowerCase();
    const unit = rest === '' || /^[.,]/.test(rest) ? undefined : unitNamed(rest, spellings);
    if (rest !== '' && unit === undefined) continue;
    const typed = text.slice(0, end);
    if (/o$/i.test(typed) && ((unit === undefined && !hasUnitAfter) || /[.,]/.test(typed))) continue;
    const isMass = unit !== undefined && unit !== 'degree' && unit.is === 'mass';
    const digitsOnly = typed.replace(/[oO]/g, '0').replace(/(?<=\d)[lI](?=\d)/g, isMass ? '1' : '?');
    const number = readNumber(digitsOnly);
    if (number !== undefined) return [{ number, from: 0, to: text.length, ...(unit !== undefined && { unit }) }];
  }
  return undefined;
}

function tokenOf(span: Span, number: TypedNumber, unit: UnitRead | undefined): Token {
  const { text, start, end } = span;
  if (unit === undefined || unit === 'degree') {
    return { kind: 'number', number, countable: unit === undefined, text, start, end };
  }
  return withUnit(span, number, unit);
}

/** The number in this unit: a quantity, a doubt, or what cannot be. Also for a bare number that a later unit covers. */
export function withUnit(span: Span, number: TypedNumber, unit: Unit): Token {
  const { text, start, end } = span;
  const { value, other, doubt } = number;
  if (other !== undefined && (doubt === 'comma' || unit.coarse === true)) {
    const couldBe = [`${other}${unit.name}`, `${value}${unit.name}`];
    return { kind: 'doubt', is: unit.is, couldBe, text, start, end };
  }
  if (doubt === 'list' && unit.is === 'film') {
    const typed = /^[\d,]+/.exec(text)?.[0] ?? text;
    const couldBe = [`${value}${unit.name}`, `${typed.replace(',', `${unit.name} `)}${unit.name}`];
    return { kind: 'doubt', is: unit.is, couldBe, text, start, end };
  }
  if (value < unit.lowest) return { kind: 'impossible', is: unit.is, lowest: unit.lowest, unit, text, start, end };
  return { kind: 'quantity', quantity: { is: unit.is, value: unit.of(value) }, unit, value, text, start, end };
}
