// The pieces of a line sorted by what they are, each checked against what the act's row takes. Units say what a number
// is, so their order is free.

import type { BatchNumber, PlaceName } from '../../../core/ids.ts';
import { isNumberWord } from '../as-said/number-words.ts';
import { partNamed, placeNamed } from '../names-typed.ts';
import type { Fault, LineContext } from '../reading.ts';
import type { Slot } from '../slots.ts';
import { batchMarks, fillers, sessionMarks } from '../tongues/english/line-words.ts';
import { type NumberToken, type QuantityToken, type Token, type Word, wordIn } from '../typed/token.ts';
import { ounce, type Quantity } from '../typed/units-typed.ts';
import { isIgnoredOn } from '../verbs-typed.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { countFrom, doubtful, impossible, quantityOutside } from './figure-of-slot.ts';
import { rangesJoined } from './part-ranges.ts';
import { type SlotsTaken, slotsTakenBy } from './slots-by-unit.ts';
import { unitMissing } from './unit-missing.ts';

export type NameToken = Extract<Token, { kind: 'word' | 'quoted' }>;

export interface SortedPieces {
  /** Of a batch, a can or a session, or how many. */
  readonly batch?: BatchNumber;
  readonly figures: ReadonlyMap<Slot, Quantity>;
  /** A place with `in` or `at` before it. */
  readonly place?: PlaceName;
  readonly words: readonly NameToken[];
}

interface Filling {
  batch?: BatchNumber;
  readonly figures: Map<Slot, Quantity>;
  place?: PlaceName;
  readonly words: NameToken[];
  /** What the next number, and the next word, has been announced to be. */
  numberNext: boolean;
  placeNext: boolean;
}

export function sortPieces(typed: ActLine): SortedPieces | Fault {
  const act = { ...typed, tokens: rangesJoined(typed.tokens, typed.context) };
  const taken = slotsTakenBy(act.verb.row);
  const filled: Filling = { figures: new Map(), words: [], numberNext: false, placeNext: false };
  for (let i = 0; i < act.tokens.length; i++) {
    const token = act.tokens[i];
    if (token === undefined) continue;
    const fault = token.kind === 'word' ? fillWord(filled, act, token, i, taken) : fill(filled, act, token, i, taken);
    if (fault !== undefined) return fault;
  }
  return filled;
}

function fillWord(filled: Filling, act: ActLine, token: Word, index: number, taken: SlotsTaken): Fault | undefined {
  const { word } = token;
  const { row } = act.verb;
  if (marksOf(taken.get('number')).has(word) && act.tokens[index + 1]?.kind === 'number') filled.numberNext = true;
  else if (row.may.includes('place') && isPlaceMark(word)) filled.placeNext = true;
  else if (isIgnoredOn(row.name, word, act.context.hearing) || fillers.has(word) || isNoName(word)) return undefined;
  else if (filled.placeNext) {
    filled.placeNext = false;
    const place = placeNamed(word, act.context.hearing);
    if (isMinutes(act, index, word)) return leftOver(token);
    if (place === undefined || filled.place !== undefined) return leftOver(token);
    filled.place = place;
  } else if (taken.has('word')) filled.words.push(token);
  else return leftOver(token);
  return undefined;
}

function fill(
  filled: Filling,
  act: ActLine,
  token: Exclude<Token, Word>,
  index: number,
  taken: SlotsTaken,
): Fault | undefined {
  switch (token.kind) {
    case 'quoted':
      if (!taken.has('word')) return leftOver(token);
      filled.words.push(token);
      return undefined;
    case 'number':
      return fillBatch(filled, act, token, index, taken);
    case 'quantity':
      return fillFigure(filled, act, token, taken);
    case 'doubt':
      return doubtful(token, act.line, taken.get(token.is));
    case 'impossible': {
      const slot = taken.get(token.is);
      return slot === undefined ? leftOver(token) : impossible(slot, token);
    }
    default: {
      const never: never = token;
      return never;
    }
  }
}

/** Two of a kind have no place here. */
function fillFigure(filled: Filling, act: ActLine, token: QuantityToken, taken: SlotsTaken): Fault | undefined {
  const slot = taken.get(token.quantity.is);
  const poured = taken.get('volume');
  // A liquid is poured by volume: an ounce of it is a fluid one, which only who typed it can say.
  if (slot === undefined && token.unit === ounce && poured !== undefined && !filled.figures.has(poured)) {
    const tries = [lineWith(act.line, token, `${token.value} fl oz`)];
    return { failed: 'unit-missing', token, needs: [poured], tries };
  }
  if (slot === undefined || filled.figures.has(slot)) return leftOver(token);
  filled.figures.set(slot, token.quantity);
  return quantityOutside(slot, token);
}

/** `seca la pieza x`, `aplicar a x`: the preposition, no part's letter. */
function isNoName(word: string): boolean {
  return word === 'batch' || word === 'part' || word === 'a';
}

function isPlaceMark(word: string): boolean {
  return word === 'in' || word === 'at' || word === 'place';
}

/** `at twenty to`: a time in words, and no place of that name. */
function isMinutes({ tokens, context }: ActLine, index: number, word: string): boolean {
  const next = wordIn(tokens[index + 1]);
  return context.hearing.tongues.some(
    ({ times: { spoken }, numbers }) =>
      (Object.hasOwn(spoken.minutes, word) || isNumberWord(word, numbers.spoken)) &&
      (spoken.past.includes(next) || spoken.to.includes(next)),
  );
}

function fillBatch(
  filled: Filling,
  act: ActLine,
  token: NumberToken,
  index: number,
  taken: SlotsTaken,
): Fault | undefined {
  const joined = filled.numberNext ? undefined : partOfTwoPieces(act, index, token);
  filled.numberNext = false;
  if (joined !== undefined) return joined;
  const slot = taken.get('number');
  const spaced = slot === undefined ? spacedThousands(act, index, token) : undefined;
  if (spaced !== undefined) return spaced;
  const isCount = slot !== undefined && filled.batch === undefined && token.countable;
  const unit = isCount && (slot !== 'session' || token.number.whole) ? undefined : unitMissing(act, filled.figures);
  if (unit !== undefined || !isCount) return unit ?? leftOver(token);
  const batch = countFrom(token, slot);
  if (typeof batch !== 'number') return batch;
  filled.batch = batch;
  return undefined;
}

/** `1 201g` where no batch can stand in front. */
function spacedThousands(act: ActLine, index: number, token: NumberToken): Fault | undefined {
  const next = act.tokens[index + 1];
  if (next?.kind !== 'quantity' || !/^\d{1,3}$/.test(token.text) || !/^\d{3}(?!\d)/.test(next.text)) return undefined;
  return meantAsOne(act, token, next, [`${token.text}${next.text}`]);
}

const noMarks: ReadonlySet<string> = new Set();

/** What may stand before the number. */
function marksOf(slot: Slot | undefined): ReadonlySet<string> {
  return slot === undefined ? noMarks : slot === 'session' ? sessionMarks : batchMarks;
}

/** `impeller 7` where the shop has an impeller-7: the 7 is no batch. */
export function partOfTwoPieces(act: ActLine, index: number, token: NumberToken): Fault | undefined {
  const before = act.tokens[index - 1];
  if (before?.kind !== 'word' || act.context.parts.includes(before.word)) return undefined;
  const joined = [before.word, ...alikeTo(before.word, act.context)]
    .flatMap((word) => [`${word}-${token.text}`, `${word}${token.text}`])
    .filter((name) => act.context.parts.includes(name));
  return joined.length === 0 ? undefined : meantAsOne(act, before, token, joined);
}

/** `impulsor` for an impeller. */
const alikeTo = (word: string, context: LineContext): readonly string[] =>
  partNamed(word, context) === undefined ? [] : (context.hearing.said.lists.nouns.get(word) ?? []);

/** `hold the pump housing, dent`: the only part of those words. */
export function partOfWords({ tokens, line, context }: ActLine, index: number): Fault | undefined {
  const [first, second, third] = tokens.slice(index, index + 3);
  if (first?.kind !== 'word' || second?.kind !== 'word' || context.parts.includes(first.word)) return undefined;
  for (const last of third?.kind === 'word' ? [third, second] : [second]) {
    const typed = tokens.slice(index, index + 3).filter(({ end }) => end <= last.end);
    const name = typed.map(({ text }) => text.toLowerCase()).join('-');
    const named = context.parts.filter((part) => part === name || part.replace(/-\d+$/, '') === name);
    if (named.length === 1) return meantAsOne({ line }, first, last, named);
  }
  return undefined;
}

function meantAsOne(
  { line }: Pick<ActLine, 'line'>,
  { start }: Token,
  { end }: Token,
  couldBe: readonly string[],
): Fault {
  const span = { start, end };
  const tries = couldBe.map((text) => lineWith(line, span, text));
  return { failed: 'ambiguous-number', token: { text: line.slice(start, end), ...span }, couldBe, tries };
}
