// Readings told one after the other: `62 micras luego 65 y luego 58` is a list of them.

import type { LineContext } from '../reading.ts';
import type { Heard } from './heard.ts';
import { changed, lengthOf, longestAt, wordsOf } from './words.ts';

export function figuresJoined(line: string, { hearing }: LineContext): readonly Heard[] {
  const said = wordsOf(line);
  for (const { numbers } of hearing.tongues) {
    const { goesOn } = numbers.spoken;
    const changes = said.flatMap((_, at) => {
      const phrase = longestAt(said, at, goesOn);
      const to = at + lengthOf(phrase ?? '');
      const isBetween = [said[at - 1], said[at - 2]].some((each) => /^\d/.test(each?.word ?? ''));
      return phrase !== undefined && isBetween && /^\d/.test(said[to]?.word ?? '') ? [{ from: at, to, text: ',' }] : [];
    });
    const apart = changes.filter(({ from }, i) => from >= (changes[i - 1]?.to ?? 0));
    if (apart.length > 0) return [{ line: changed(line, said, apart).replaceAll(' ,', ','), isSure: true }];
  }
  return [];
}
