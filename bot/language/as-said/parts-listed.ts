// Parts told as a list or a stretch: `impellers 1 thru 3`, `1, 2 y 3`, `impeller-1-4`. Only where each of them is a part that the
// shop has; a number that may be of a pot as well makes it unsure.

import type { PartName } from '../../../core/ids.ts';
import type { LineContext } from '../reading.ts';
import type { ListWords } from '../tongues/typed.ts';
import type { Heard } from './heard.ts';
import { isMark } from './marks.ts';
import { type Change, changed, lengthOf, longestAt, type Said, wordsOf } from './words.ts';

/** The line with each part by its name; none where no list is told. */
export function partsListed(line: string, context: LineContext): readonly Heard[] {
  const stems = stemsOf(context.parts);
  if (stems.size === 0) return [];
  for (const { lists } of [...context.hearing.tongues].reverse()) {
    const on: ListLine = { said: wordsOf(apart(line)), lists, stems, context };
    const found = foundIn(on);
    if (found.length === 0) continue;
    const text = changed(apart(line), on.said, found);
    return [{ line: text, isSure: found.every(({ isSure }) => isSure) }];
  }
  return [];
}

/** `1,2,3` in three pieces, `1-4` in its ends; a decimal comma has a unit behind it. */
const apart = (line: string): string =>
  line
    .replaceAll(/(?<=^|[ ,])(\d{1,4}(?:,\d{1,4}){2,})(?= |$)/g, (list: string) => list.replaceAll(',', ', '))
    .replaceAll(/(\d) ?(?:-|\.\.) ?(?=\d{1,4}(?: |,|$))/g, '$1 - ');

interface ListLine {
  readonly said: readonly Said[];
  readonly lists: ListWords;
  readonly stems: Stems;
  readonly context: LineContext;
}

/** Parts by the letters of their names and their number. */
type Stems = ReadonlyMap<string, ReadonlyMap<number, PartName>>;

function stemsOf(parts: readonly PartName[]): Stems {
  const stems = new Map<string, Map<number, PartName>>();
  for (const part of parts) {
    const [, letters, number] = /^(.*?\p{L})[-_./]?(\d{1,6})$/u.exec(part) ?? [];
    if (letters === undefined) continue;
    const stem = letters.replaceAll(/[-_./]/g, ' ');
    stems.set(stem, (stems.get(stem) ?? new Map()).set(Number(number), part));
  }
  return stems;
}

interface FoundList extends Change {
  readonly isSure: boolean;
}

function foundIn(line: ListLine): readonly FoundList[] {
  const found: FoundList[] = [];
  for (let at = 0; at < line.said.length; ) {
    const list = stemmedAt(line, at) ?? bareAt(line, at);
    if (list !== undefined) found.push(list);
    at = list?.to ?? at + 1;
  }
  return found;
}

/** `impellers 1 2 y 3`, `impeller-1 to 4`, `pump housing 3`. */
function stemmedAt(line: ListLine, at: number): FoundList | undefined {
  for (const [stem, numbered] of line.stems) {
    const stemmed = stemAt(line, at, stem);
    if (stemmed === undefined) continue;
    const told = numbersAt(line, stemmed.to, stemmed.first, stemmed.isPlural);
    const names = told?.numbers.map((number) => numbered.get(number));
    if (told === undefined || names === undefined || !names.every((name) => name !== undefined)) continue;
    // A part's own name as it stands is no list.
    if (names.length === 1 && stemmed.first !== undefined) continue;
    return { from: at, to: told.to, text: names.join(' '), isSure: told.isSure };
  }
  return undefined;
}

interface Stemmed {
  readonly to: number;
  /** The number that ran into it. */
  readonly first?: number;
  readonly isPlural: boolean;
}

function stemAt({ said, lists }: ListLine, at: number, stem: string): Stemmed | undefined {
  const words = stem.split(' ');
  const last = said[at + words.length - 1]?.word ?? '';
  const run = /^(.*?\p{L})[-_./]?(\d{1,6})$/u.exec(said[at]?.word ?? '');
  if (run !== null && run[1]?.replaceAll(/[-_./]/g, ' ') === stem)
    return { to: at + 1, first: Number(run[2]), isPlural: false };
  const ending = words.at(-1) ?? '';
  const isPlural = lists.plurals.some((plural) => last === ending + plural);
  const before = words.slice(0, -1).every((word, i) => said[at + i]?.word === word);
  return before && (last === ending || isPlural) ? { to: at + words.length, isPlural } : undefined;
}

/** `1, 2 y 3`, `7-9`: at least two of them joined, each the number of one part alone. */
function bareAt(line: ListLine, at: number): FoundList | undefined {
  const { said, stems, context } = line;
  const from = articlesTo(line, at);
  if (!/^\d{1,4}$/.test(said[from]?.word ?? '') || isMark(said[at - 1]?.word ?? '', context)) return undefined;
  const told = numbersAt(line, at, undefined, false);
  const names = told?.numbers.map((number) => {
    const parts = [...stems.values()].flatMap((numbered) => numbered.get(number) ?? []);
    return parts.length === 1 ? parts[0] : undefined;
  });
  if (told === undefined || names === undefined || names.length < 2 || !names.every((name) => name !== undefined)) {
    return undefined;
  }
  return { from: at, to: told.to, text: names.join(' '), isSure: told.isSure };
}

interface Told {
  readonly numbers: readonly number[];
  readonly to: number;
  readonly isSure: boolean;
}

/** More than anybody racks at once. */
const mostParts = 100;

function numbersAt(line: ListLine, at: number, first: number | undefined, isPlural: boolean): Told | undefined {
  const numbers: number[] = first === undefined ? [] : [first];
  let to = at;
  let isSure = true;
  let isClosed = false;
  for (;;) {
    const joint = numbers.length === 0 ? { to, is: 'and' as const } : jointAt(line, to);
    const from = articlesTo(line, joint?.to ?? to);
    const number = wholeAt(line, from);
    // Behind a name that stands for several a number goes on, until a joint has closed the list; else it may be a pot's.
    if (number === undefined || (joint === undefined && (!isPlural || isClosed))) break;
    isClosed = numbers.length > 0 && joint !== undefined && joint.is !== 'comma';
    if (numbers.length > 0 && (joint === undefined || joint.is === 'comma'))
      isSure = isSure && joinsLater(line, from + 1);
    const start = numbers.at(-1);
    if (joint?.is === 'to' && start !== undefined) {
      if (number <= start || number - start > mostParts) return undefined;
      numbers.push(...Array.from({ length: number - start }, (_, i) => start + 1 + i));
    } else numbers.push(number);
    to = from + 1;
  }
  return numbers.length === 0 ? undefined : { numbers: [...new Set(numbers)], to, isSure };
}

function wholeAt({ said, context }: ListLine, at: number): number | undefined {
  const { word = '', end = 0 } = said[at] ?? {};
  const unit = context.hearing.units.get(said[at + 1]?.word ?? '');
  // `1 200 g`: an amount.
  const isAmount = unit !== undefined && (said[at + 1]?.start ?? 0) - end < 2 && (said[at + 1]?.word.length ?? 0) !== 1;
  return /^\d{1,4}$/.test(word) && !isAmount ? Number(word) : undefined;
}

/** A joint that is no number's own follows, so the list goes on to there. */
function joinsLater(line: ListLine, at: number): boolean {
  for (let next = at; next < at + 6; next++) {
    const joint = jointAt(line, next);
    if (joint !== undefined && joint.is !== 'comma') return wholeAt(line, articlesTo(line, joint.to)) !== undefined;
    if (wholeAt(line, next) === undefined && joint === undefined) return false;
  }
  return false;
}

interface Joint {
  readonly to: number;
  readonly is: 'and' | 'to' | 'comma';
}

function jointAt({ said, lists }: ListLine, at: number): Joint | undefined {
  const and = longestAt(said, at, lists.and);
  if (and !== undefined) return { to: at + lengthOf(and), is: 'and' };
  const to = longestAt(said, at, ['-', ...lists.to]);
  if (to !== undefined) return { to: at + lengthOf(to), is: 'to' };
  return said[at - 1]?.comma === true ? { to: at, is: 'comma' } : undefined;
}

function articlesTo({ said, lists }: ListLine, at: number): number {
  const article = longestAt(said, at, lists.articles);
  return article === undefined ? at : at + lengthOf(article);
}
