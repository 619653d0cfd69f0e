// From the first word or two of a line to its row in the vocabulary. A method stands for the coat it makes.

import type { Method } from '../../core/commands.ts';
import { methodsByWord } from './trade-words.ts';
import { type VocabularyRow, vocabulary } from './vocabulary.ts';

export interface VerbNamed {
  readonly row: VocabularyRow;
  /** As it is printed. */
  readonly printed: string;
  readonly method?: Method;
}

const verbs: ReadonlyMap<string, VerbNamed> = new Map([
  ...[...methodsByWord].map(([word, method]): [string, VerbNamed] => [
    word,
    { row: vocabulary.coat, printed: method, method },
  ]),
  ...Object.values(vocabulary).flatMap((row) =>
    row.words.map((word): [string, VerbNamed] => [word, { row, printed: row.words[0] ?? row.name }]),
  ),
]);
const firstOfTwo: ReadonlySet<string> = new Set(
  [...verbs.keys()].filter((word) => word.includes(' ')).map((word) => word.slice(0, word.indexOf(' '))),
);

export const verbWords: readonly string[] = [...verbs.keys()];

export function verbNamed(word: string): VerbNamed | undefined {
  return verbs.get(word);
}

/** `wet film`, `got it`. */
export function verbOfTwoWords(first: string, second: string): VerbNamed | undefined {
  return firstOfTwo.has(first) ? verbs.get(`${first} ${second}`) : undefined;
}
