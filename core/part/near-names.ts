// Which known names an unknown one may have been meant for: the same digits with letters that are nearly the same or cut
// short (`imp-1` for impeller-1), or one of its own numbers under the same letters (`impeller-1-4` for impeller-4). Different
// digits are different parts (impeller-7, impeller-8).

import { distance } from 'fastest-levenshtein';
import type { PartName } from '../ids.ts';

const mostSlips = 2;
const fewestLetters = 2;

/** Nearest first. */
export function nearNames(name: PartName, known: readonly PartName[]): readonly PartName[] {
  return known
    .flatMap((other) => {
      const far = farness(name, other);
      return far === undefined ? [] : [{ other, far }];
    })
    .sort((one, another) => one.far - another.far)
    .map(({ other }) => other);
}

/** Slips between two names; `undefined` where the one is no slip of the other. */
function farness(name: PartName, other: PartName): number | undefined {
  const [letters, otherLetters] = [lettersOf(name), lettersOf(other)];
  const numbers: readonly string[] = name.match(/\d+/g) ?? [];
  const otherDigits = other.replace(/\D/g, '');
  if (numbers.length > 1 && letters === otherLetters && numbers.includes(otherDigits)) return mostSlips + 1;
  if (numbers.join('') !== otherDigits) return undefined;
  const slips = distance(letters, otherLetters);
  // A short word has no room for two slips: `lid` is not a misspelt `rib`.
  const allowed = Math.min(mostSlips, Math.floor(Math.max(letters.length, otherLetters.length) / 3));
  if (slips <= allowed) return slips;
  const isCutShort = letters.length >= fewestLetters && otherLetters.startsWith(letters) && numbers.length > 0;
  return isCutShort ? mostSlips + 2 : undefined;
}

const lettersOf = (name: PartName): string => name.replace(/[^\p{L}]/gu, '');
