// From the first word or two of a line to its row in the vocabulary. A method stands for the coat it makes.

import type { Method } from '../../core/commands.ts';
import { methodsByWord } from './trade-words.ts';
import { spanishMethodWords, withoutAccents } from './typed/spanish-words.ts';
import type { Word } from './typed/tokens.ts';
import { type VocabularyRow, vocabulary } from './vocabulary.ts';
import { spanishVocabulary } from './vocabulary-spanish.ts';

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
  ...[...spanishMethodWords].map(([word, method]): [string, VerbNamed] => [
    word,
    { row: vocabulary.coat, printed: word, method },
  ]),
  ...Object.values(vocabulary).flatMap((row: VocabularyRow) => {
    const { words } = spanishVocabulary[row.name];
    return words.map((word): [string, VerbNamed] => [withoutAccents(word), { row, printed: words[0] ?? row.name }]);
  }),
]);
const firstOfTwo: ReadonlySet<string> = new Set(
  [...verbs.keys()].filter((word) => word.includes(' ')).map((word) => word.slice(0, word.indexOf(' '))),
);

export const verbWords: readonly string[] = [...verbs.keys()];

export function verbNamed(word: string): VerbNamed | undefined {
  return verbs.get(word) ?? verbs.get(withoutAccents(word));
}

/** `wet film`, `got it`. */
export function verbOfTwoWords(first: Word, second: Word): VerbNamed | undefined {
  const typed = asTyped(first);
  if (firstOfTwo.has(first.word)) {
    const verb = verbs.get(`${first.word} ${second.word}`);
    if (verb !== undefined) return verb;
  }
  return firstOfTwo.has(typed) ? verbs.get(`${typed} ${asTyped(second)}`) : undefined;
}

/** By what the word means, else by the word itself: `resumen` is a setting's name and asks for the day. */
export function verbOfWord(word: Word): VerbNamed | undefined {
  return verbNamed(word.word) ?? verbs.get(asTyped(word));
}

const asTyped = ({ text }: Word): string => withoutAccents(text.toLowerCase());
