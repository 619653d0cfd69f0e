// Marks that are dictated by their names: `hold impeller-1 comma dent full stop`. What ends a line counts at its end alone.

import type { LineContext } from '../reading.ts';
import type { Heard } from './heard.ts';
import { isNumberWord } from './number-words.ts';
import { changed, lengthOf, longestAt, type Said, wordsOf } from './words.ts';

export function marksSaid(line: string, { hearing }: LineContext): readonly Heard[] {
  const { marks } = hearing.said;
  const said = wordsOf(line);
  const changes = said.flatMap((_, at) => {
    const phrase = at === 0 ? undefined : longestAt(said, at, [...marks.keys()]);
    const to = at + lengthOf(phrase ?? '');
    const mark = phrase === undefined ? undefined : marks.get(phrase);
    if (mark === undefined || isOfNumber(said, at, to, hearing)) return [];
    return mark === ',' || to === said.length ? [{ from: at, to, text: mark }] : [];
  });
  if (changes.length === 0) return [];
  const marked = changed(line, said, changes).replaceAll(/ +([,.!?])/g, '$1');
  return [{ line: marked.replace(/[.!]$/, ''), isSure: true }];
}

/** `uno coma dos`, where the mark parts a number from its decimals; `veinticuatro grados coma cuarenta y ocho` are two. */
function isOfNumber(said: readonly Said[], at: number, to: number, { tongues }: LineContext['hearing']): boolean {
  return tongues.some(({ numbers: { spoken } }) => {
    const isNumber = (word = ''): boolean =>
      /^\d/.test(word) || isNumberWord(word, spoken) || spoken.nought.includes(word);
    return (
      to === at + 1 &&
      spoken.point.includes(said[at]?.word ?? '') &&
      isNumber(said[at - 1]?.word) &&
      isNumber(said[to]?.word)
    );
  });
}
