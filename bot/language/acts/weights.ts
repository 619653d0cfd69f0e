// Part A and Part B on one line: A then B, or each after (or before) its letter; the last unit covers the bare numbers
// before it; a bare whole number in front is the batch.

import { isFailed } from '../../../core/failed.ts';
import type { BatchNumber } from '../../../core/ids.ts';
import { type Grams, grams } from '../../../core/units.ts';
import type { Fault, LineContext } from '../reading.ts';
import { batchMarks, fillers } from '../tongues/english/line-words.ts';
import { withUnit } from '../typed/numeric-chunk.ts';
import { type NumberToken, type QuantityToken, type Token, wordIn } from '../typed/token.ts';
import { leftOver, lineWith } from './act-line.ts';
import { countFrom, doubtful, figureFor, impossible, outside, unitless } from './figure-of-slot.ts';

export interface Weights {
  readonly batch: BatchNumber | undefined;
  readonly partAGrams: Grams | undefined;
  readonly partBGrams: Grams | undefined;
}

interface Letter {
  readonly kind: 'letter';
  readonly letter: 'a' | 'b';
  readonly token: Token;
}
type Entry = Letter | NumberToken | QuantityToken;

/** `knownBatch`: said elsewhere on the line, so no number here is one. */
export function weightsFrom(
  tokens: readonly Token[],
  line: string,
  context: LineContext,
  knownBatch?: BatchNumber,
): Weights | Fault {
  const marked = markedBatch(tokens);
  if (marked !== undefined && isFailed(marked)) return marked;
  const entries: Entry[] = [];
  for (const [i, token] of tokens.entries()) {
    if (i === marked?.index || (token.kind === 'word' && (fillers.has(token.word) || batchMarks.has(token.word))))
      continue;
    const entry = entryOf(token, line, tokens);
    if (isFailed(entry)) return entry;
    entries.push(entry);
  }
  const split = batchInFront(entries, marked?.batch ?? knownBatch, context);
  if (isFailed(split)) return split;
  const covered = coverBareNumbers(split.entries, line, context);
  if (isFailed(covered)) return covered;
  return lettered(covered, split.batch);
}

function markedBatch(tokens: readonly Token[]): { index: number; batch: BatchNumber } | Fault | undefined {
  for (const [i, token] of tokens.entries()) {
    const before = tokens[i - 1];
    if (token.kind !== 'number' || before?.kind !== 'word' || !batchMarks.has(before.word)) continue;
    const batch = countFrom(token);
    return typeof batch === 'number' ? { index: i, batch } : batch;
  }
  return undefined;
}

function entryOf(token: Token, line: string, all: readonly Token[]): Entry | Fault {
  const letter = wordIn(token);
  if (letter === 'a' || letter === 'b') return { kind: 'letter', letter, token };
  if (token.kind === 'number') return token;
  if (token.kind === 'quantity' && token.quantity.is === 'mass') return token;
  if (token.kind === 'doubt' && token.is === 'mass') return doubtful(token, line, 'part-a', all);
  const fault = figureFor('part-a', token, line);
  return isFailed(fault) ? fault : leftOver(token);
}

interface Split {
  readonly batch: BatchNumber | undefined;
  readonly entries: readonly Entry[];
}

/** Three numbers: the first is the batch. Two: only where the first can hardly be a weight beside the second. */
function batchInFront(entries: readonly Entry[], marked: BatchNumber | undefined, context: LineContext): Split | Fault {
  const [first, ...rest] = entries;
  const numbers = entries.filter((entry) => entry.kind !== 'letter').length;
  if (first?.kind !== 'number' || marked !== undefined) return { batch: marked, entries };
  const next = rest.find((entry) => entry.kind === 'quantity');
  const isBatch = numbers === 1 || numbers > 2 || isBatchBeside(first, rest, next, context);
  if (!isBatch) return { batch: undefined, entries };
  const batch = countFrom(first);
  return typeof batch === 'number' ? { batch, entries: rest } : batch;
}

/** Two parts differ by less than this factor on any sheet that a bare first weight is worth guessing for. */
const widestRatio = 20;

function isBatchBeside(
  first: NumberToken,
  rest: readonly Entry[],
  next: QuantityToken | undefined,
  context: LineContext,
): boolean {
  if (!first.number.whole || next === undefined || rest.some((entry) => entry.kind === 'letter')) {
    return first.number.whole && next !== undefined;
  }
  return context.batches.includes(first.number.value) || first.number.value * widestRatio < next.value;
}

function coverBareNumbers(
  entries: readonly Entry[],
  line: string,
  context: LineContext,
): readonly (Letter | QuantityToken)[] | Fault {
  if (entries.every((entry) => entry.kind !== 'number')) return entries;
  const covered: (Letter | QuantityToken)[] = [];
  let unit: QuantityToken['unit'] | undefined;
  for (const entry of [...entries].reverse()) {
    if (entry.kind !== 'number') {
      if (entry.kind === 'quantity') unit = entry.unit;
      covered.unshift(entry);
      continue;
    }
    if (unit === undefined) return withoutUnit(entry, entries, line, context);
    const token = withUnit(entry, entry.number, unit);
    if (token.kind === 'doubt') return doubtful(token, line, 'part-a');
    if (token.kind === 'impossible') return impossible('part-a', token);
    if (token.kind === 'quantity') covered.unshift(token);
  }
  return covered;
}

function withoutUnit(token: NumberToken, entries: readonly Entry[], line: string, { units }: LineContext): Fault {
  const masses = entries.filter((entry) => entry.kind === 'quantity');
  // After two weights a bare number wants no unit: perhaps the batch, said last.
  if (masses.length >= 2) return leftOver(token, [lineWith(line, token, `batch ${token.text}`)]);
  const used = masses[0]?.unit.name;
  // No scale of a metric crew shows pounds.
  const usual = units === 'metric' ? ['g', 'kg'] : ['g', 'kg', 'lb'];
  return unitless(token, ['part-a', 'part-b'], line, used === undefined ? usual : [used]);
}

/** Letters stand before each weight, or after each, or nowhere. */
function lettered(entries: readonly (Letter | QuantityToken)[], batch: BatchNumber | undefined): Weights | Fault {
  const masses = entries.filter((entry) => entry.kind === 'quantity');
  const letters = entries.filter((entry) => entry.kind === 'letter');
  const third = masses[2];
  if (third !== undefined) return leftOver(third);
  for (const token of masses) {
    const fault = outside('part-a', token, token.quantity.value);
    if (fault !== undefined) return { ...fault, needs: ['part-a', 'part-b'] };
  }
  const stray = letters[0] === undefined ? undefined : strayLetter(entries, letters);
  if (stray !== undefined) return leftOver(stray);
  const [first, second] = masses.map(({ quantity }) => grams(quantity.value));
  const swapped = letters[0]?.letter === 'b';
  return { batch, partAGrams: swapped ? second : first, partBGrams: swapped ? first : second };
}

/** The first letter where they do not pair off with the weights, one A and one B at most. */
function strayLetter(entries: readonly (Letter | QuantityToken)[], letters: readonly Letter[]): Token | undefined {
  const shape = entries.map((entry) => (entry.kind === 'letter' ? 'L' : 'm')).join('');
  const isPaired = shape === 'LmLm' || shape === 'mLmL' || shape === 'Lm' || shape === 'mL';
  return isPaired && letters[0]?.letter !== letters[1]?.letter ? undefined : letters[0]?.token;
}
