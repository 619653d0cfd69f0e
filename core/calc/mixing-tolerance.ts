// A sheet's tolerance on its ratio, both ways round: the least and the most of one part that belong to what was weighed
// of the other.

import { isFailed } from '../failed.ts';
import { type Fraction, type Grams, grams } from '../units.ts';
import { refuseMass } from './density.ts';
import { type MixRatio, partsByWeight } from './mixing.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** How far B/A may stray from the sheet's, as a fraction of it: 0.05 over and 0.05 under is 'plus or minus 5 %'. */
export interface RatioTolerance {
  readonly under: Fraction;
  readonly over: Fraction;
}

export interface Pour {
  readonly leastGrams: Grams;
  readonly exactGrams: Grams;
  readonly mostGrams: Grams;
}

/** How much Part B belongs on so much Part A: the exact weight, and the ends of the tolerance. */
export function partBFor(ratio: MixRatio, tolerance: RatioTolerance, partA: Grams): Result<Pour> {
  const parts = partsByWeight(ratio);
  if (isFailed(parts)) return parts;
  const exact = (partA * parts.partsB) / parts.partsA;
  return (
    refuseMass('Part A', partA) ??
    refuseTolerance(tolerance) ?? {
      leastGrams: grams(exact * (1 - tolerance.under)),
      exactGrams: grams(exact),
      mostGrams: grams(exact * (1 + tolerance.over)),
    }
  );
}

/** How much Part A belongs to so much Part B. Too much B is too little A, so the tolerance's ends change places. */
export function partAFor(ratio: MixRatio, tolerance: RatioTolerance, partB: Grams): Result<Pour> {
  const parts = partsByWeight(ratio);
  if (isFailed(parts)) return parts;
  const exact = (partB * parts.partsA) / parts.partsB;
  return (
    refuseMass('Part B', partB) ??
    refuseTolerance(tolerance) ?? {
      leastGrams: grams(exact / (1 + tolerance.over)),
      exactGrams: grams(exact),
      mostGrams: grams(exact / (1 - tolerance.under)),
    }
  );
}

function refuseTolerance(tolerance: RatioTolerance): Refusal | undefined {
  return outOfRange('tolerance under', tolerance.under, 0, 0.99) ?? outOfRange('tolerance over', tolerance.over, 0, 1);
}
