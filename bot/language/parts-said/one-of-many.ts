// What one of several is called: `rieles` is of riel, `valves` of valve.

import type { LineContext } from '../reading.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { partsKnown } from './parts-known.ts';

/** `truss`, `chassis`, `bus`: one, though they end as several do. */
const isOfOne = /(?:ss|is|us)$/u;
/** `trusses`, `boxes` */
const isLonger = /(?:ss|x|sh|tch)es$/u;

/** As a part of the shop is called, else by the letters before the ending; the word itself where it is of one. */
export function oneOf(many: string, { hearing, parts }: Pick<LineContext, 'hearing' | 'parts'>): string {
  const word = many.toLowerCase();
  if (isOfOne.test(word)) return word;
  const ones = hearing.tongues
    .flatMap(({ lists }) => lists.plurals)
    .flatMap((plural) => (word.endsWith(plural) ? [word.slice(0, -plural.length)] : []));
  const known = ones.find((one) => parts.some((part) => part.startsWith(`${one}-`)));
  const isOfLongEnding = isLonger.test(word) || (/[lrnd]es$/u.test(word) && hearing.tongues.length > 1);
  return known ?? ones.find((one) => !isOfLongEnding || !one.endsWith('e')) ?? word;
}

/** `escuadras`, `piezas`: what a number before it counts. */
export function isOfSeveral(
  typed: string,
  { hearing, parts = [] }: Pick<LineContext, 'hearing'> & Partial<Pick<LineContext, 'parts'>>,
): boolean {
  const word = withoutAccents(typed.toLowerCase());
  const { nouns, ones, plurals } = hearing.said.lists;
  const { roots } = partsKnown(parts);
  return plurals.some((plural) => {
    const one = word.endsWith(plural) ? word.slice(0, -plural.length) : '';
    return one !== '' && (roots.has(one) || nouns.has(one) || ones.has(one));
  });
}
