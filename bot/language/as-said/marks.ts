// Words before a number that say what it is the number of.

import { meaningOf } from '../hearing.ts';
import type { LineContext } from '../reading.ts';
import { batchMarks, canMarks, sessionMarks } from '../tongues/english/line-words.ts';

/** `batch one`, `bote uno`. */
export function isMark(word: string, { hearing }: LineContext): boolean {
  const meaning = meaningOf(word, hearing);
  if (batchMarks.has(meaning) || canMarks.has(meaning) || sessionMarks.has(meaning)) return true;
  return hearing.tongues.some(({ pots, cans }) => `${pots} ${cans}`.split(' ').includes(word));
}

/** `impeller one`, `impellers`. */
export const isOfParts = (word: string, { parts }: LineContext): boolean =>
  word.length > 2 && parts.some((part) => part.startsWith(word.replace(/s$/, '')));
