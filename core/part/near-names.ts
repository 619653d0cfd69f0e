// Which known names an unknown one may have been meant for: the same numbers with letters that are nearly the same or cut
// short (`imp-1` for impeller-1), written without its dash or with other zeros (`a1` for a-01); its letters alone (`imp` for
// any impeller); or one of its own numbers under the same letters (`impeller-1-4` for impeller-4). Different numbers are
// different parts (impeller-7, impeller-8).

import { distance } from 'fastest-levenshtein';
import type { PartName } from '../ids.ts';
import { inNaturalOrder } from '../natural-order.ts';

const mostSlips = 2;
const fewestLetters = 2;
/** More of them are no answer to which was meant. */
const mostNear = 3;

/** Nearest first, three at most. */
export function nearNames(name: PartName, known: readonly PartName[]): readonly PartName[] {
  return known
    .flatMap((other) => {
      const far = farness(name, other);
      return far === undefined ? [] : [{ other, far }];
    })
    .sort((one, another) => one.far - another.far || inNaturalOrder(one.other, another.other))
    .slice(0, mostNear)
    .map(({ other }) => other);
}

/** Slips between two names; `undefined` where the one is no slip of the other. */
function farness(name: PartName, other: PartName): number | undefined {
  const [letters, otherLetters] = [lettersOf(name), lettersOf(other)];
  const [numbers, otherNumbers] = [numbersOf(name), numbersOf(other)];
  const isOneOfIts = numbers.length > 1 && otherNumbers.length === 1 && numbers.includes(otherNumbers.join());
  if (isOneOfIts && letters === otherLetters) return mostSlips + 1;
  const isSame = numbers.join() === otherNumbers.join() || digitsOf(name) === digitsOf(other);
  if (!isSame && numbers.length > 0) return undefined;
  // A number left out is further off than any slip of the letters.
  const leftOut = isSame ? 0 : mostSlips + 3;
  const slips = areSwapped(letters, otherLetters) ? 1 : distance(letters, otherLetters);
  // A short word has no room for two slips: `lid` is not a misspelt `rib`.
  const allowed = Math.min(mostSlips, Math.floor(Math.max(letters.length, otherLetters.length) / 3));
  if (slips <= allowed) return leftOut + slips;
  const isCutShort = letters.length >= fewestLetters && otherLetters.startsWith(letters);
  return isCutShort ? leftOut + mostSlips + 2 : undefined;
}

/** `ldi` for `lid`: two neighbours that change places are one slip of the thumb. */
function areSwapped(typed: string, meant: string): boolean {
  const at = [...typed].findIndex((letter, i) => letter !== meant[i]);
  return at !== -1 && meant === `${typed.slice(0, at)}${typed[at + 1] ?? ''}${typed[at]}${typed.slice(at + 2)}`;
}

const lettersOf = (name: PartName): string => name.replace(/[^\p{L}]/gu, '');

const digitsOf = (name: PartName): string => name.replace(/\D/g, '');

/** By their size: `07` is 7. */
const numbersOf = (name: PartName): readonly string[] =>
  (name.match(/\d+/g) ?? []).map((digits) => digits.replace(/^0+(?=\d)/, ''));
