// `air 24C 48% booth`, `surface 22C`: what a place reads.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { PartName } from '../../../core/ids.ts';
import { looksLikePart, partNamed } from '../names-typed.ts';
import type { Fault } from '../reading.ts';
import { isCoatedThing, isPlaceRoot } from '../trade-words.ts';
import type { ActLine } from './act-line.ts';
import { airFrom } from './air-said.ts';
import { newApart, placeFrom, wordOf } from './read-names.ts';
import { type NameToken, sortPieces } from './sort-pieces.ts';

export function readAir(act: ActLine): CommandOf<'air'> | Fault {
  const gathered = sortPieces(act);
  if (isFailed(gathered)) return hotterThanAir(act, gathered);
  const place = placeFrom(act, gathered.words, gathered.place);
  if (typeof place === 'object') return place;
  const air = airFrom(gathered);
  if (air === undefined) return { failed: 'incomplete', needs: ['air-temperature', 'humidity'] };
  return place === undefined ? { verb: 'air', air } : { verb: 'air', place, air };
}

/** `88C` alone is no air, but may be a part's reading. */
function hotterThanAir(act: ActLine, fault: Fault): Fault {
  const alone = act.tokens.find((token) => token.text === act.line);
  return fault.failed === 'impossible' && alone !== undefined ? { ...fault, tries: [`temp ${alone.text}`] } : fault;
}

/** Of a part where the word is one, or could be one and is no place that anybody has named: who meant a place says `in`. */
export function readSurface(act: ActLine): CommandOf<'surface'> | Fault {
  const gathered = sortPieces(act);
  if (isFailed(gathered)) return gathered;
  const { temperature } = gathered;
  const { words, asNew } = newApart(gathered.words);
  const part = gathered.place === undefined ? surfacePart(act, words) : undefined;
  const place = part === undefined ? placeFrom(act, words, gathered.place) : undefined;
  if (typeof place === 'object') return place;
  if (temperature === undefined) return { failed: 'incomplete', needs: ['surface-temperature'] };
  return {
    verb: 'surface',
    celsius: temperature,
    ...(part !== undefined && { part, ...(asNew && { asNew }) }),
    ...(place !== undefined && { place }),
  };
}

function surfacePart(act: ActLine, words: readonly NameToken[]): PartName | undefined {
  const [first, second] = words;
  if (first === undefined || second !== undefined) return undefined;
  const word = wordOf(first);
  if (act.context.parts.includes(word)) return word;
  if (act.context.places.includes(word)) return undefined;
  return isCoatedThing(word) || (looksLikePart(word) && !isPlaceRoot(word)) ? partNamed(word) : undefined;
}
