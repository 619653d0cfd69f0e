// What of a line speaks for its meaning, whoever it names and whatever it reads: the roots of its words, and each two that stand
// together. `touched the 8, no mark` and `touching 7 leaves no marks` share most of theirs.

import { withoutAccents } from '../typed/without-accents.ts';

/** Enough to tell most words apart, and few enough to hold `brushed`, `brushing` and `brushes` together. */
export const rootLetters = 4;
const anyNumber = '#';

export interface PassedOver {
  /** Words that say nothing, `the`, `is`: two that only these part stand together. */
  readonly light: ReadonlySet<string>;
  /** What things are called: of any of them the same may be said. */
  readonly names: ReadonlySet<string>;
}

/** Each once. A sign of two words has a space in it. */
export function signsOf(line: string, { light, names }: PassedOver): readonly string[] {
  const words = wordsIn(line).filter((word) => !names.has(word));
  const telling = words.filter((word) => !light.has(word)).map(rootOf);
  return [...new Set([...words.map(rootOf), ...telling.slice(1).map((root, i) => pairOf(telling[i] ?? '', root))])];
}

export const pairOf = (one: string, next: string): string => `${one} ${next}`;
export const isPair = (sign: string): boolean => sign.includes(' ');

const wordsIn = (line: string): readonly string[] =>
  withoutAccents(line.toLowerCase())
    .replaceAll(/['’]/g, '')
    .replaceAll(/(\d)[.,](\d)/g, '$1$2')
    .match(/\d+|\p{L}+|%/gu) ?? [];

export const rootOf = (word: string): string => (/^\d/.test(word) ? anyNumber : word.slice(0, rootLetters));

export const rootsOf = (line: string): readonly string[] => wordsIn(line).map(rootOf);
