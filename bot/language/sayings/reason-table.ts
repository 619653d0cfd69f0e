// What clauses begin with that say why, of the tongues that are heard together.

import type { ReasonWords, Typed } from '../tongues/typed.ts';

export type Phrases = readonly (readonly string[])[];

/** How many words the phrase has that is said from `at` on, the first of the list. */
export const phraseAt = (
  words: readonly { readonly word: string }[],
  at: number,
  phrases: Phrases,
): number | undefined => phrases.find((phrase) => phrase.every((word, i) => words[at + i]?.word === word))?.length;

export type ReasonTable = Readonly<Record<keyof ReasonWords, Phrases>>;

export const reasonTableOf = (tongues: readonly Typed[]): ReasonTable => {
  const listed = (name: keyof ReasonWords): Phrases =>
    tongues
      .flatMap(({ reasons }) => reasons[name].split(', '))
      .map((phrase) => phrase.split(' '))
      .toSorted((one, other) => other.length - one.length);
  return {
    always: listed('always'),
    behindMark: listed('behindMark'),
    besides: listed('besides'),
    hence: listed('hence'),
    comesFirst: listed('comesFirst'),
    toldOf: listed('toldOf'),
    is: listed('is'),
  };
};
