// The pieces of a line sorted by what they are, each checked against what the act's row takes. Units say what a number
// is, so their order is free.

import { isVerb, verbRows } from '../../../core/commands.ts';
import type { BatchNumber, PlaceName } from '../../../core/ids.ts';
import type { Celsius, Grams, Litres, Millimetres, Minutes, Percent, SquareMetres } from '../../../core/units.ts';
import type { Kind, Limits } from '../../../core/verbs/slot.ts';
import { placeNamed } from '../names-typed.ts';
import type { Fault } from '../reading.ts';
import { isOutside, type Slot, slots } from '../slots.ts';
import { batchMarks, fillers, sessionMarks } from '../tongues/english/line-words.ts';
import type { NumberToken, Token } from '../typed/token.ts';
import type { Quantity } from '../typed/units-typed.ts';
import { isIgnoredOn } from '../verbs-typed.ts';
import { type VocabularyName, type VocabularyRow, vocabulary } from '../vocabulary.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { rangesJoined } from './part-ranges.ts';
import { unitMissing } from './unit-missing.ts';

export type NameToken = Extract<Token, { kind: 'word' | 'quoted' }>;

export interface SortedPieces {
  /** Of a batch, a can or a session, or how many. */
  readonly batch?: BatchNumber;
  readonly mass?: Grams;
  readonly volume?: Litres;
  readonly temperature?: Celsius;
  readonly percent?: Percent;
  readonly length?: Millimetres;
  readonly area?: SquareMetres;
  readonly duration?: Minutes;
  /** A place with `in` or `at` before it. */
  readonly place?: PlaceName;
  readonly words: readonly NameToken[];
}

type Filling = { -readonly [Field in keyof SortedPieces]: SortedPieces[Field] } & { readonly words: NameToken[] };

const slotsOfRow: ReadonlyMap<VocabularyRow, ReadonlyMap<Kind, Slot>> = new Map(
  Object.values(vocabulary).map((row: VocabularyRow) => [
    row,
    new Map(
      [...row.needs, ...row.may]
        .filter((slot) => !standsBehind(row.name, slot))
        .flatMap((slot) => slots[slot].kinds.map((kind) => [kind, slot] as const)),
    ),
  ]),
);
const noSlots: ReadonlyMap<Kind, Slot> = new Map();

/** Behind a word of its own: then its unit alone says nothing. */
function standsBehind(name: VocabularyName, slot: Slot): boolean {
  const fields = isVerb(name) ? Object.values(verbRows[name].fields) : [];
  return fields.some(
    ({ options, slots: own }) => options?.behind !== undefined && own.some((each) => each.name === slot),
  );
}

export function sortPieces(typed: ActLine): SortedPieces | Fault {
  const act = { ...typed, tokens: rangesJoined(typed.tokens) };
  const { row } = act.verb;
  const taken = slotsOfRow.get(row) ?? noSlots;
  const filled: Filling = { words: [] };
  let batchMarked = false;
  let placeMarked = false;
  for (let i = 0; i < act.tokens.length; i++) {
    const token = act.tokens[i];
    if (token === undefined) continue;
    switch (token.kind) {
      case 'word': {
        if (marksOf(taken.get('number')).has(token.word) && act.tokens[i + 1]?.kind === 'number') {
          batchMarked = true;
        } else if (row.may.includes('place') && isPlaceMark(token.word)) {
          placeMarked = true;
        } else if (
          isIgnoredOn(row.name, token.word, act.context.hearing) ||
          fillers.has(token.word) ||
          isNoName(token.word)
        ) {
          break;
        } else if (placeMarked) {
          const place = placeNamed(token.word);
          if (place === undefined || filled.place !== undefined) return leftOver(token);
          filled.place = place;
          placeMarked = false;
        } else if (taken.has('word')) filled.words.push(token);
        else return leftOver(token);
        break;
      }
      case 'quoted':
        if (!taken.has('word')) return leftOver(token);
        filled.words.push(token);
        break;
      case 'number': {
        const fault = fillBatch(filled, act, token, i, taken, batchMarked);
        if (fault !== undefined) return fault;
        batchMarked = false;
        break;
      }
      case 'quantity': {
        const slot = taken.get(token.quantity.is);
        if (slot === undefined || !fill(filled, token.quantity)) return leftOver(token);
        const limits = limitsFor(slot, token.quantity);
        if (limits !== undefined && isOutside(limits, baseValue(token.quantity))) {
          return { failed: 'impossible', token, needs: [slot], limits };
        }
        break;
      }
      case 'doubt':
        return doubtful(token, act.line, taken.get(token.is));
      case 'impossible': {
        const slot = taken.get(token.is);
        return slot === undefined ? leftOver(token) : impossibleUnit(token, slot);
      }
      default: {
        const never: never = token;
        return never;
      }
    }
  }
  return filled;
}

/** `seca la pieza x`, `aplicar a x`: the preposition, no part's letter. */
function isNoName(word: string): boolean {
  return word === 'batch' || word === 'part' || word === 'a';
}

function isPlaceMark(word: string): boolean {
  return word === 'in' || word === 'at' || word === 'place';
}

function fillBatch(
  filled: Filling,
  act: ActLine,
  token: NumberToken,
  index: number,
  taken: ReadonlyMap<Kind, Slot>,
  marked: boolean,
): Fault | undefined {
  const joined = marked ? undefined : partOfTwoPieces(act, index, token);
  if (joined !== undefined) return joined;
  const spaced = taken.has('number') ? undefined : spacedThousands(act, index, token);
  if (spaced !== undefined) return spaced;
  if (!taken.has('number') || filled.batch !== undefined || !token.countable) {
    return unitMissing(act, filled) ?? leftOver(token);
  }
  const batch = batchFrom(token, taken.get('number'));
  if (typeof batch !== 'number') return batch;
  filled.batch = batch;
  return undefined;
}

/** `1 201g` where no batch can stand in front. */
function spacedThousands(act: ActLine, index: number, token: NumberToken): Fault | undefined {
  const next = act.tokens[index + 1];
  if (next?.kind !== 'quantity' || !/^\d{1,3}$/.test(token.text) || !/^\d{3}(?!\d)/.test(next.text)) return undefined;
  const span = { start: token.start, end: next.end };
  const joined = `${token.text}${next.text}`;
  return {
    failed: 'ambiguous-number',
    token: { text: act.line.slice(span.start, span.end), ...span },
    couldBe: [joined],
    tries: [lineWith(act.line, span, joined)],
  };
}

const noMarks: ReadonlySet<string> = new Set();

/** What may stand before the number. */
function marksOf(slot: Slot | undefined): ReadonlySet<string> {
  return slot === undefined ? noMarks : slot === 'session' ? sessionMarks : batchMarks;
}

/** A bare whole number: of a batch, a can, a session, or a count. */
export function batchFrom(token: NumberToken, slot: Slot = 'batch'): BatchNumber | Fault {
  const { value, other, whole } = token.number;
  const { limits } = slots[slot];
  if (other !== undefined) return { failed: 'ambiguous-number', token, couldBe: [`${other}`, `${value}`] };
  if (!whole || (limits !== undefined && isOutside(limits, value))) {
    return { failed: 'impossible', token, needs: [slot], ...(limits !== undefined && { limits }) };
  }
  return value;
}

/** `impeller 7` where the shop has an impeller-7: the 7 is no batch. */
export function partOfTwoPieces(act: ActLine, index: number, token: NumberToken): Fault | undefined {
  const before = act.tokens[index - 1];
  if (before?.kind !== 'word' || act.context.parts.includes(before.word)) return undefined;
  const joined = [`${before.word}-${token.text}`, `${before.word}${token.text}`].filter((name) =>
    act.context.parts.includes(name),
  );
  if (joined.length === 0) return undefined;
  const span = { start: before.start, end: token.end };
  const text = act.line.slice(span.start, span.end);
  return {
    failed: 'ambiguous-number',
    token: { text, ...span },
    couldBe: joined,
    tries: joined.map((name) => lineWith(act.line, span, name)),
  };
}

/** `all`: the pieces of the line. Whoever means thousands by one comma means them by the next. */
export function doubtful(
  token: Extract<Token, { kind: 'doubt' }>,
  line: string,
  slot: Slot | undefined,
  all: readonly Token[] = [token],
): Fault {
  const settled = (text: string, each: Token, way: number): string =>
    each.kind === 'doubt' ? lineWith(text, each, each.couldBe[way] ?? each.text) : text;
  const tries = token.couldBe.map((_, way) => all.reduceRight((text, each) => settled(text, each, way), line));
  const { couldBe } = token;
  return { failed: 'ambiguous-number', token, couldBe, tries, needs: slot === undefined ? [] : [slot] };
}

export function impossibleUnit(token: Extract<Token, { kind: 'impossible' }>, slot: Slot): Fault {
  const limits = slots[slot].limits;
  return { failed: 'impossible', token, needs: [slot], ...(limits !== undefined && { limits }) };
}

/** The same number bounds a mass in grams and a volume in millilitres. */
export function limitsFor(slot: Slot, quantity: Quantity): Limits | undefined {
  const limits = slots[slot].limits;
  return limits !== undefined && quantity.is === 'volume' ? { ...limits, unit: 'mL' } : limits;
}

/** As limits are told: of a volume in millilitres. */
export function baseValue(quantity: Quantity): number {
  return quantity.is === 'volume' ? quantity.litres * 1000 : figureOf(quantity);
}

/** In its base unit. */
export function figureOf(quantity: Quantity): number {
  switch (quantity.is) {
    case 'mass':
      return quantity.grams;
    case 'volume':
      return quantity.litres;
    case 'temperature':
      return quantity.celsius;
    case 'percent':
      return quantity.percent;
    case 'length':
      return quantity.millimetres;
    case 'area':
      return quantity.squareMetres;
    case 'film':
      return quantity.micrometres;
    case 'duration':
      return quantity.minutes;
    default: {
      const never: never = quantity;
      return never;
    }
  }
}

/** False where there is one of the kind already: two of a kind have no place here. */
function fill(filled: Filling, quantity: Quantity): boolean {
  switch (quantity.is) {
    case 'mass':
      if (filled.mass !== undefined || filled.volume !== undefined) return false;
      filled.mass = quantity.grams;
      return true;
    case 'volume':
      if (filled.mass !== undefined || filled.volume !== undefined) return false;
      filled.volume = quantity.litres;
      return true;
    case 'temperature':
      if (filled.temperature !== undefined) return false;
      filled.temperature = quantity.celsius;
      return true;
    case 'percent':
      if (filled.percent !== undefined) return false;
      filled.percent = quantity.percent;
      return true;
    case 'length':
      if (filled.length !== undefined) return false;
      filled.length = quantity.millimetres;
      return true;
    case 'area':
      if (filled.area !== undefined) return false;
      filled.area = quantity.squareMetres;
      return true;
    case 'duration':
      if (filled.duration !== undefined) return false;
      filled.duration = quantity.minutes;
      return true;
    case 'film':
      return false;
    default: {
      const never: never = quantity;
      return never;
    }
  }
}
