// Whether one of several phrases stands in a line, and where.

import { withoutAccents } from '../typed/without-accents.ts';

export const wordsOf = (line: string): readonly string[] =>
  withoutAccents(line.toLowerCase())
    .split(/[\s,;:!¡¿?()"]+|\.(?!\d)/)
    .filter((word) => word !== '');

export const isSaid = (words: readonly string[], phrases: readonly (readonly string[])[]): boolean =>
  phrases.some((phrase) => words.some((_, at) => phrase.every((word, i) => words[at + i] === word)));
