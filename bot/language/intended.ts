// What somebody is about to do: a word of soon beside what they do themselves, `ahorita la meto al horno`. It plans, and tells nothing
// that has happened. A reading is taken as it is told (`ahora mido 86`), so that its verbs are not among them.

import type { SaidTable } from './slots-heard/said-table.ts';

export interface WordTyped {
  /** In lower case, without accents. */
  readonly word: string;
  readonly typed: string;
}

/** The indices of the words of soon that say so. */
export function intendedAt(
  words: readonly WordTyped[],
  { soon, iDo, light, pronouns }: Pick<SaidTable, 'soon' | 'iDo' | 'light' | 'pronouns'>,
): readonly number[] {
  /** `pinto`, and no `pintó`. */
  const isDoing = (each: WordTyped | undefined): boolean =>
    each !== undefined && iDo.has(each.word) && !/[áéíóú]\P{L}*$/u.test(each.typed.toLowerCase());
  const passes = (each: WordTyped | undefined): boolean =>
    each !== undefined && !iDo.has(each.word) && (pronouns.has(each.word) || light.has(each.word));
  return words.flatMap((_, at) => {
    const phrase = soon.find((each) => each.every((word, i) => words[at + i]?.word === word));
    if (phrase === undefined) return [];
    const to = at + phrase.length;
    let verb = to;
    while (verb < to + mostBetween && passes(words[verb])) verb += 1;
    const isLast = to === words.length;
    const isSaid = isDoing(words[verb]) || isDoing(words[at - 1]) || (isLast && words.some(isDoing));
    return isSaid ? phrase.map((_word, i) => at + i) : [];
  });
}

/** `ahorita ya la meto`. */
const mostBetween = 3;
