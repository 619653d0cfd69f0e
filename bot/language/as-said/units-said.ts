// Units that are told in several words, `metres per second`, in the spelling that the readers know; and one whose key was missed:
// `1201h`, where `1201g` was meant.

import type { LineContext } from '../reading.ts';
import type { Strictly } from '../understood.ts';
import type { Heard } from './heard.ts';
import { changed, lengthOf, longestAt, wordsOf } from './words.ts';

/** The line with each such unit in short; none where it has none. */
export function unitsSaid(line: string, { hearing }: LineContext): readonly Heard[] {
  const { inShort } = hearing.said;
  const said = wordsOf(line);
  const changes = said.flatMap(({ word }, at) => {
    const phrase =
      at > 0 && inShort.byFirst.has(word) ? longestAt(said, at, inShort.byFirst.get(word) ?? []) : undefined;
    const text = phrase === undefined ? undefined : inShort.units.get(phrase);
    return phrase === undefined || text === undefined ? [] : [{ from: at, to: at + lengthOf(phrase), text }];
  });
  return changes.length === 0 ? [] : [{ line: changed(line, said, changes), isSure: true }];
}

/** Beside the `g` on a keyboard. */
const besideG = /^(\d{2,5}(?:[.,]\d{1,2})?)[fhvbty]$/i;

/** What was meant by a weight whose unit no weight has: to be asked about. */
export function unitSlipped(line: string, strictly: Strictly): readonly Heard[] {
  const unread = strictly(line);
  if (unread.kind !== 'unread') return [];
  const { failed: fault } = unread.read;
  if (fault.failed !== 'left-over' || !besideG.test(fault.token?.text ?? '')) return [];
  const mended = line
    .split(' ')
    .map((word) => word.replace(besideG, '$1g'))
    .join(' ');
  return [{ line: mended, isSure: false }];
}
