// Many parts by one word: `all of them`, `both`, `the rest`, `las tres`, `todas`. Which those are, the act tells: those to which it can be
// done now. They are only ever offered by their names.

import type { PartName } from '../../../core/ids.ts';
import type { Many } from '../tongues/list-words.ts';

export interface ManySaid {
  readonly many: Many;
  /** How many they are, where that was said. */
  readonly count?: number;
}

/** More ways to choose so many of those that fit are no choice. */
const mostWays = 3;

/** `named`: what the speaker's last card was about; `fitting`: in the order in which they are to be named. */
export function manyMeant(
  { many, count }: ManySaid,
  fitting: readonly PartName[],
  named: readonly PartName[],
): readonly (readonly PartName[])[] {
  const left = many === 'rest' || many === 'other' ? fitting.filter((name) => !named.includes(name)) : fitting;
  const rest = left.length === 0 ? fitting : left;
  if (rest.length === 0) return [];
  if (count === undefined || count >= rest.length) return count === undefined || count === rest.length ? [rest] : [];
  if (many === 'first') return [rest.slice(0, count)];
  if (many === 'last') return [rest.slice(-count)];
  const ofCard = named.filter((name) => rest.includes(name));
  if (ofCard.length === count) return [ofCard];
  // `both`, of three: each pair.
  const isOneLess = count === rest.length - 1 && rest.length <= mostWays;
  return isOneLess ? rest.map((one) => rest.filter((name) => name !== one)).toReversed() : [];
}
