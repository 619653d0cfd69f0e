// `six impellers to do`: behind a name of several a `to` is no number, unless more numbers are listed.

import type { LineContext } from '../reading.ts';
import type { NumberWords } from '../tongues/typed.ts';
import { isNumberWord } from './number-words.ts';
import type { Said } from './words.ts';

export function isManyToDo(said: readonly Said[], at: number, words: NumberWords, { hearing }: LineContext): boolean {
  const before = said[at - 1]?.word ?? '';
  const next = said[at + 1]?.word ?? '';
  const { plurals, to, and } = hearing.said.lists;
  const isTo = to.some((phrase) => phrase.length === 1 && phrase[0] === said[at]?.word);
  const isMany = plurals.some((plural) => before.endsWith(plural));
  const goesOn = isNumberWord(next, words) || /^\d/.test(next) || and.some((phrase) => phrase[0] === next);
  return isTo && isMany && next !== '' && !goesOn && said[at]?.comma !== true;
}
