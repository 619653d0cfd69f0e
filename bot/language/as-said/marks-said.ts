// Marks that are dictated by their names: `hold impeller-1 comma dent full stop`. What ends a line counts at its end alone.

import type { LineContext } from '../reading.ts';
import type { Heard } from './heard.ts';
import { changed, lengthOf, longestAt, wordsOf } from './words.ts';

export function marksSaid(line: string, { hearing }: LineContext): readonly Heard[] {
  const { marks } = hearing.said;
  const said = wordsOf(line);
  const changes = said.flatMap((_, at) => {
    const phrase = at === 0 ? undefined : longestAt(said, at, [...marks.keys()]);
    const to = at + lengthOf(phrase ?? '');
    const mark = phrase === undefined ? undefined : marks.get(phrase);
    return mark !== undefined && (mark === ',' || to === said.length) ? [{ from: at, to, text: mark }] : [];
  });
  if (changes.length === 0) return [];
  const marked = changed(line, said, changes).replaceAll(/ +([,.!?])/g, '$1');
  return [{ line: marked.replace(/[.!]$/, ''), isSure: true }];
}
