// What brings an off-ratio weighing back: which part to add, how much, and whether the vessel holds it. Nothing is ever
// taken out, and nothing here gives the pot a new life: its clock runs from the first contact all the same.

import { isFailed } from '../failed.ts';
import { type Grams, grams, type Litres } from '../units.ts';
import { mixedVolume, refuseVolume } from './density.ts';
import type { MixRatio, Weights } from './mixing.ts';
import { partAFor, partBFor, type RatioTolerance } from './mixing-tolerance.ts';
import type { Result } from './refusal.ts';

export interface Addition {
  readonly grams: Grams;
  /** All that is then in the vessel. */
  readonly mixedGrams: Grams;
  /** `undefined` where the sheet gives no densities. */
  readonly mixedLitres: Litres | undefined;
  /** Not known without densities: somebody must look. */
  readonly vessel: 'holds-it' | 'too-small' | 'not-known';
}

export type Repair =
  | { readonly add: 'nothing' }
  | {
      readonly add: 'part-a' | 'part-b';
      /** Just to the end of the tolerance. */
      readonly least: Addition;
      /** To the sheet's own ratio. */
      readonly exact: Addition;
    };

/** What to add to what was weighed; `capacity` is what the vessel may hold, stirring room taken off by the caller. */
export function repair(ratio: MixRatio, tolerance: RatioTolerance, weighed: Weights, capacity: Litres): Result<Repair> {
  const refused = refuseVolume('vessel', capacity);
  if (refused !== undefined) return refused;
  const partB = partBFor(ratio, tolerance, weighed.partAGrams);
  if (isFailed(partB)) return partB;
  const partA = partAFor(ratio, tolerance, weighed.partBGrams);
  if (isFailed(partA)) return partA;
  if (weighed.partBGrams > partB.mostGrams) {
    const least = addition(ratio, weighed, capacity, partA.leastGrams - weighed.partAGrams, 0);
    if (isFailed(least)) return least;
    const exact = addition(ratio, weighed, capacity, partA.exactGrams - weighed.partAGrams, 0);
    return isFailed(exact) ? exact : { add: 'part-a', least, exact };
  }
  if (weighed.partBGrams < partB.leastGrams) {
    const least = addition(ratio, weighed, capacity, 0, partB.leastGrams - weighed.partBGrams);
    if (isFailed(least)) return least;
    const exact = addition(ratio, weighed, capacity, 0, partB.exactGrams - weighed.partBGrams);
    return isFailed(exact) ? exact : { add: 'part-b', least, exact };
  }
  return { add: 'nothing' };
}

function addition(ratio: MixRatio, weighed: Weights, capacity: Litres, moreA: number, moreB: number): Result<Addition> {
  const partA = grams(weighed.partAGrams + Math.max(0, moreA));
  const partB = grams(weighed.partBGrams + Math.max(0, moreB));
  const added = grams(Math.max(0, moreA) + Math.max(0, moreB));
  const mixedGrams = grams(partA + partB);
  if (ratio.densities === undefined) return { grams: added, mixedGrams, mixedLitres: undefined, vessel: 'not-known' };
  const mixedLitres = mixedVolume(partA, partB, ratio.densities);
  if (isFailed(mixedLitres)) return mixedLitres;
  return { grams: added, mixedGrams, mixedLitres, vessel: mixedLitres <= capacity ? 'holds-it' : 'too-small' };
}
