// Part A and Part B by the sheet's ratio: how much of each, and how far a weighing is off. By
// weight the parts are grams; by volume they are litres, weighed through the densities.

import { isFailed } from '../failed.ts';
import { type Grams, grams, type Litres, litres } from '../units.ts';
import {
  heaviestGrams,
  massFromVolume,
  type PartDensities,
  refuseDensity,
  refuseMass,
  refuseVolume,
} from './density.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** 4 : 1, 100 : 19.4; numbers without a unit, both above zero. */
export interface Parts {
  readonly partsA: number;
  readonly partsB: number;
}

export type MixRatio =
  /** Densities are needed only where a volume is asked for. */
  | (Parts & { readonly basis: 'weight'; readonly densities?: PartDensities })
  | (Parts & { readonly basis: 'volume'; readonly densities: PartDensities });

export interface Weights {
  readonly partAGrams: Grams;
  readonly partBGrams: Grams;
}

export interface WeightsAndVolumes extends Weights {
  readonly partALitres: Litres;
  readonly partBLitres: Litres;
}

/** Grams of each part that together weigh `total`. */
export function splitByWeight(total: Grams, parts: Parts & { readonly basis?: 'weight' }): Result<Weights> {
  return (
    refuseMass('total', total) ??
    refuseParts(parts) ?? {
      partAGrams: grams((total * parts.partsA) / (parts.partsA + parts.partsB)),
      partBGrams: grams((total * parts.partsB) / (parts.partsA + parts.partsB)),
    }
  );
}

/** Grams and litres of each part that together fill `total` (volumes additive). */
export function splitByVolume(
  total: Litres,
  parts: Parts & { readonly basis?: 'volume' },
  densities: PartDensities,
): Result<WeightsAndVolumes> {
  const refused = refuseVolume('total', total) ?? refuseParts(parts);
  if (refused !== undefined) return refused;
  const partALitres = litres((total * parts.partsA) / (parts.partsA + parts.partsB));
  const partBLitres = litres((total * parts.partsB) / (parts.partsA + parts.partsB));
  const partAGrams = massFromVolume(partALitres, densities.partAKilogramsPerLitre);
  if (isFailed(partAGrams)) return partAGrams;
  const partBGrams = massFromVolume(partBLitres, densities.partBKilogramsPerLitre);
  if (isFailed(partBGrams)) return partBGrams;
  return { partAGrams, partBGrams, partALitres, partBLitres };
}

/** Grams of each part that together weigh `total`, on whichever basis the sheet states its ratio. */
export function splitMass(total: Grams, ratio: MixRatio): Result<Weights> {
  const parts = partsByWeight(ratio);
  return isFailed(parts) ? parts : splitByWeight(total, parts);
}

/**
 * Grams and litres of each part that together fill `total`, on whichever basis the sheet states its ratio. Refuses a
 * ratio by weight whose sheet gives no densities.
 */
export function splitFill(total: Litres, ratio: MixRatio): Result<WeightsAndVolumes> {
  if (ratio.densities === undefined) return { failed: 'no-figure', what: 'densities' };
  const refused = refuseParts(ratio);
  if (refused !== undefined) return refused;
  if (ratio.basis === 'volume') {
    return splitByVolume(total, { partsA: ratio.partsA, partsB: ratio.partsB }, ratio.densities);
  }
  const { partAKilogramsPerLitre, partBKilogramsPerLitre } = ratio.densities;
  const partsByVolume = {
    partsA: ratio.partsA / partAKilogramsPerLitre,
    partsB: ratio.partsB / partBKilogramsPerLitre,
  };
  return (
    refuseDensity('Part A density', partAKilogramsPerLitre) ??
    refuseDensity('Part B density', partBKilogramsPerLitre) ??
    splitByVolume(total, partsByVolume, ratio.densities)
  );
}

/** The ratio in parts by weight: 4 : 1 by volume at 1.35 and 1.05 kg/L is 5.4 : 1.05. */
export function partsByWeight(ratio: MixRatio): Result<Parts> {
  const refused = refuseParts(ratio);
  if (refused !== undefined) return refused;
  switch (ratio.basis) {
    case 'weight':
      return { partsA: ratio.partsA, partsB: ratio.partsB };
    case 'volume': {
      const { partAKilogramsPerLitre, partBKilogramsPerLitre } = ratio.densities;
      return (
        refuseDensity('Part A density', partAKilogramsPerLitre) ??
        refuseDensity('Part B density', partBKilogramsPerLitre) ?? {
          partsA: ratio.partsA * partAKilogramsPerLitre,
          partsB: ratio.partsB * partBKilogramsPerLitre,
        }
      );
    }
  }
}

/**
 * (B/A weighed) / (B/A of the sheet) - 1: 0.05 is five per cent too much Part B. The densities cancel, so the figure
 * is the same by weight and by volume. Refuses a vessel without Part A.
 */
export function ratioError(ratio: MixRatio, weighed: Weights): Result<number> {
  const parts = partsByWeight(ratio);
  if (isFailed(parts)) return parts;
  return (
    outOfRange('Part A', weighed.partAGrams, weighableGrams, heaviestGrams) ??
    refuseMass('Part B', weighed.partBGrams) ??
    (weighed.partBGrams * parts.partsA) / (weighed.partAGrams * parts.partsB) - 1
  );
}

/** Below a milligram nothing was weighed. */
const weighableGrams = 0.001;

/** Nobody mixes more than ten thousand to one; outside it a ratio is a slip of the thumb. */
function refuseParts(parts: Parts): Refusal | undefined {
  return (
    outOfRange('parts of A', parts.partsA, 1e-3, 1e6) ??
    outOfRange('parts of B', parts.partsB, 1e-3, 1e6) ??
    outOfRange('ratio of A to B', parts.partsA / parts.partsB, 1e-4, 1e4)
  );
}
