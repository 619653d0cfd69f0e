// Times as they are spoken, put as the readers know them: `quarter to ten`, `a las nueve cuarenta`, `hace 20`, `20 min back`. What
// may be two times is two lines, and none of them sure.

import { meaningOf } from '../hearing.ts';
import { intendedAt } from '../intended.ts';
import type { LineContext } from '../reading.ts';
import { clockSaid } from './clock-said.ts';
import { durationSaid } from './duration-said.ts';
import type { Heard } from './heard.ts';
import { isNumberWord } from './number-words.ts';
import type { TimeAt, TimeLine } from './time-line.ts';
import { changed, lengthOf, longestAt, wordsOf } from './words.ts';

/** Each way to say the line's time; none where it has no time in such words. */
export function timesSaid(line: string, context: LineContext): readonly Heard[] {
  for (const { times, numbers } of [...context.hearing.tongues].reverse()) {
    const said = wordsOf(line, (word) => isNumberWord(word, numbers.spoken));
    const on = { said, times: times.spoken, numbers: numbers.spoken, context };
    for (let at = 0; at < said.length; at++) {
      const time = vagueAt(on, at) ?? durationSaid(on, at) ?? clockSaid(on, at);
      if (time === undefined) continue;
      return time.texts.map((text) => ({
        line: changed(line, said, [{ from: at, to: time.to, text }])
          .replace(/ {2,}/g, ' ')
          .trim(),
        isSure: time.isSure,
      }));
    }
  }
  return [];
}

/** `earlier`, `denantes`: it has happened, and nobody can tell when. */
function vagueAt({ said, times, context }: TimeLine, at: number): TimeAt | undefined {
  const phrase = longestAt(said, at, times.vague);
  if (phrase === undefined || meaningOf(said[at - 1]?.word ?? '', context.hearing) === 'not') return undefined;
  // `ahorita la meto`: the word that tells of what has just been done tells as well of what comes next.
  const words = said.map(({ word, text: typed }) => ({ word, typed }));
  if (intendedAt(words, context.hearing.said).includes(at)) return undefined;
  return { to: at + lengthOf(phrase), texts: [''], isSure: false };
}
