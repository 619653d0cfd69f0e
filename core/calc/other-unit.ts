// A scale reading said in another unit than it was shown in: grams for ounces, pounds or kilograms, or the other way
// round. Known by missing the planned weight by just that factor; by a factor of ten a digit was left out or typed twice.

import { type Grams, grams, gramsFromKilograms, gramsFromOunces, gramsFromPounds } from '../units.ts';

/** Grams in an ounce, a pound, a kilogram: 28.35, 453.6, 1000. */
const factors = [gramsFromOunces(1), gramsFromPounds(1), gramsFromKilograms(1)];

/** So near to the plan must the reading come in the other unit: our own figure, no source. */
const nearEnough = 0.1;

/** What was likely meant, nearest to the plan first; empty where the reading is no such slip. */
export function unitDoubts(said: Grams, planned: Grams): readonly Grams[] {
  if (planned <= 0 || said <= 0 || isNear(said, planned)) return [];
  return factors
    .flatMap((factor) => [said * factor, said / factor])
    .filter((meant) => isNear(meant, planned))
    .sort((a, b) => Math.abs(a - planned) - Math.abs(b - planned))
    .map(grams);
}

/** Which digit it was nobody can tell. */
export const lacksDigit = (said: Grams, planned: Grams): boolean =>
  planned > 0 && (isNear(said * 10, planned) || isNear(said / 10, planned));

function isNear(mass: number, planned: number): boolean {
  return Math.abs(mass / planned - 1) <= nearEnough;
}
