// Whether a name that nobody has used before is a slip of a known one: the same digits, and letters that are nearly the
// same. Different digits are different parts (impeller-7, impeller-8).

import { distance } from 'fastest-levenshtein';
import type { PartName } from '../ids.ts';

const mostSlips = 2;

export function nearNames(name: PartName, known: readonly PartName[]): readonly PartName[] {
  const letters = name.replace(/[^\p{L}]/gu, '');
  const digits = name.replace(/\D/g, '');
  return known.filter((other) => {
    if (other.replace(/\D/g, '') !== digits) return false;
    const otherLetters = other.replace(/[^\p{L}]/gu, '');
    // A short word has no room for two slips: `lid` is not a misspelt `rib`.
    const allowed = Math.min(mostSlips, Math.floor(Math.max(letters.length, otherLetters.length) / 3));
    return distance(letters, otherLetters) <= allowed;
  });
}
