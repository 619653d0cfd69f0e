// A part by its number as an ordinal: `the seventh impeller`, `la tercera brida`, `3rd one`. Only where no other stands in that place
// of the row.

import { inNaturalOrder } from '../../../core/natural-order.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { PartsAt, PartsInLine } from './parts-in-line.ts';

/** `token`: where the ordinal stands. */
export function nthPart({ tokens, atoms, known, context }: PartsInLine, token: number): PartsAt | undefined {
  const { ordinals, said } = context.hearing;
  const nth = ordinals.get(withoutAccents(tokens[token]?.text.toLowerCase() ?? ''));
  const at = atoms.firstOf[token + 1] ?? atoms.all.length;
  const noun = atoms.all[at];
  if (nth === undefined || noun?.ends === undefined || atoms.all[at + 1]?.is === 'number') return undefined;
  const { ones, nouns, plurals } = said.lists;
  const words = [noun.text, ...(nouns.get(noun.text) ?? [])];
  const ofNoun = words.flatMap((word) => known.roots.get(word) ?? []).map(({ name }) => name);
  // `first ones` are several.
  const isOne = ones.has(noun.text) && !plurals.some((plural) => noun.text.endsWith(plural));
  const row = (isOne ? context.parts : ofNoun).toSorted(inNaturalOrder);
  const [only, other] = (known.numbers.get(nth) ?? []).filter((name) => row.includes(name));
  const inPlace = row[nth - 1];
  return only === undefined || other !== undefined || (inPlace !== undefined && inPlace !== only)
    ? undefined
    : { names: [only], is: 'one-of', isSure: true, to: noun.ends };
}
