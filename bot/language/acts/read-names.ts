// Names among the words of a line: parts, places, sheets. Whether a part exists is not asked; what the shop has only
// helps to tell a name from a stray word.

import { distance } from 'fastest-levenshtein';
import type { PartName, PlaceName, SheetId } from '../../../core/ids.ts';
import { partNamed, placeNamed } from '../names-typed.ts';
import type { Fault, LineContext } from '../reading.ts';
import { isPlaceWord } from '../trade-words.ts';
import type { Token } from '../typed/token.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { commasApart } from './commas-apart.ts';
import { isTooLong, mostParts, partsOfRange } from './part-ranges.ts';
import type { NameToken } from './sort-pieces.ts';

export function wordOf(token: NameToken): string {
  return token.kind === 'word' ? token.word : token.words.toLowerCase();
}

/** One part at least. After the first a plain word that the shop does not know as a part is no name: `dry x-1 twice`. */
export function partsFrom(words: readonly NameToken[], context: LineContext): readonly PartName[] | Fault {
  const parts: PartName[] = [];
  const apart = words.flatMap(commasApart);
  for (const token of apart) {
    const word = wordOf(token);
    const known = context.parts.includes(word);
    const range = known ? undefined : partsOfRange(word, context.hearing);
    if (range !== undefined) {
      parts.push(...range.filter((name) => !parts.includes(name)));
      continue;
    }
    if (!known && isTooLong(word)) return tooMany(token);
    const part = partNamed(word, context);
    if (part === undefined || (parts.length > 0 && !known && !/\d/.test(word))) return leftOver(token);
    if (!parts.includes(part)) parts.push(part);
  }
  // `capa final impulsor-7`: before a part that is known, a plain word is none.
  if (parts.length > mostParts && apart[0] !== undefined) return tooMany(apart[0]);
  const [first, second] = apart;
  const isStray = second !== undefined && parts.length > 1 && !isNamed(parts[0] ?? '', context);
  if (isStray && first !== undefined) return leftOver(first);
  return parts.length === 0 ? { failed: 'incomplete', needs: ['parts'] } : parts;
}

const tooMany = ({ text, start, end }: Token): Fault => ({
  failed: 'too-many-parts',
  token: { text, start, end },
  limits: { lowest: 1, highest: mostParts, unit: '' },
});

const isNamed = (part: PartName, context: LineContext): boolean => context.parts.includes(part) || /\d/.test(part);

export function onePartFrom(words: readonly NameToken[], context: LineContext): PartName | Fault | undefined {
  const [first, second] = words;
  if (first === undefined) return undefined;
  return second === undefined ? (partNamed(wordOf(first), context) ?? leftOver(first)) : leftOver(second);
}

/** The place in plain sight, or the one that `in` introduced. */
export function placeFrom(
  act: ActLine,
  words: readonly NameToken[],
  introduced?: PlaceName,
): PlaceName | Fault | undefined {
  const [first, second] = words;
  if (first === undefined) return introduced;
  if (second !== undefined || introduced !== undefined) return leftOver(second ?? first);
  const word = wordOf(first);
  const { hearing, places } = act.context;
  const place = placeNamed(word, hearing);
  if (place !== undefined && (places.includes(place) || isPlaceWord(place))) return place;
  const near = places.filter((known) => distance(known, word) <= 2);
  return leftOver(
    first,
    [...near, `in ${word}`].map((text) => lineWith(act.line, first, text)),
  );
}

const fewestLetters = 3;

/** A sheet by its id or any part of it that no other sheet shares. */
export function sheetFrom(
  act: Pick<ActLine, 'line' | 'context'>,
  words: readonly NameToken[],
): SheetId | Fault | undefined {
  const [first] = words;
  const last = words.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const said = words.map(wordOf).join('-');
  const { sheetIds, sheetsByFullName = [] } = act.context;
  const exact = [...sheetIds, ...sheetsByFullName].find((id) => id.toLowerCase() === said);
  if (exact !== undefined) return exact;
  const matching = said.length < fewestLetters ? [] : sheetIds.filter((id) => id.toLowerCase().includes(said));
  if (matching.length === 1) return matching[0];
  const span = { start: first.start, end: last.end };
  const likely = matching.length > 0 ? matching : nearestIds(said, sheetIds);
  return {
    failed: matching.length > 0 ? 'ambiguous-name' : 'unknown-sheet',
    token: { text: act.line.slice(span.start, span.end), ...span },
    needs: ['sheet'],
    couldBe: matching,
    tries: likely.map((id) => lineWith(act.line, span, id)),
  };
}

function nearestIds(said: string, ids: readonly SheetId[]): readonly SheetId[] {
  const far = (id: SheetId): number =>
    Math.min(...id.split('-').map((piece) => distance(piece, said)), distance(id, said));
  return [...ids].sort((one, other) => far(one) - far(other));
}
