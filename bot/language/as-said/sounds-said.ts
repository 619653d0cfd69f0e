// Words that dictation hears in place of others: `wait batch 1 ...` for weigh, `patch two` for batch, `cute impeller-7 oven` for cure.
// Both stand as ways to read the line, and none of them is sure.

import type { LineContext } from '../reading.ts';
import type { Heard } from './heard.ts';
import { isNumberWord } from './number-words.ts';
import { changed, wordsOf } from './words.ts';

export function soundsSaid(line: string, { hearing }: LineContext): readonly Heard[] {
  const { heardAs, heardAsMark } = hearing.said;
  const said = wordsOf(line);
  const changes = said.flatMap(({ word }, at) => {
    const next = said[at + 1]?.word ?? '';
    const isNumber = /^\d/.test(next) || hearing.tongues.some(({ numbers }) => isNumberWord(next, numbers.spoken));
    const text = at === 0 && said.length > 1 ? heardAs.get(word) : isNumber ? heardAsMark.get(word) : undefined;
    return text === undefined ? [] : [{ from: at, to: at + 1, text }];
  });
  return changes.length === 0
    ? []
    : [
        { line, isSure: true },
        { line: changed(line, said, changes), isSure: false },
      ];
}
