// From the weight per cents and the density on a sheet to a VOC liquid, and volume solids from what evaporates.

import {
  type Fraction,
  fraction,
  type GramsPerLitre,
  grams,
  type KilogramsPerLitre,
  type Litres,
  litres,
} from '../units.ts';
import { firstRefusal } from './amount.ts';
import { outOfRange, type Result } from './refusal.ts';
import type { VocLiquid } from './voc.ts';

export interface Weighed {
  readonly share: Fraction;
  readonly density: KilogramsPerLitre;
}

/** Weight fractions of the whole; what is neither solids, water nor exempt is VOC. */
export interface Composition {
  readonly density: KilogramsPerLitre;
  readonly solids: Fraction;
  readonly water: Weighed;
  readonly exempt: readonly Weighed[];
}

/** So much of a coating of this composition. Refuses shares that add up to more than the whole. */
export function liquidFromWeights(volume: Litres, composition: Composition): Result<VocLiquid> {
  const { density, solids, water, exempt } = composition;
  const exemptShare = exempt.reduce((sum, part) => sum + part.share, 0);
  const refusal =
    outOfRange('volume', volume, 0, 1e6) ??
    firstRefusal([density, water.density, ...exempt.map((part) => part.density)], (each) =>
      outOfRange('density', each, 0.1, 25),
    ) ??
    firstRefusal([solids, water.share, ...exempt.map((part) => part.share)], (each) =>
      outOfRange('weight-share', each, 0, 1),
    ) ??
    outOfRange('weight-shares', solids + water.share + exemptShare, 0, 1 + 1e-12);
  if (refusal !== undefined) return refusal;
  const mass = volume * density * 1000;
  const litresOf = (part: Weighed): number => (mass * part.share) / (part.density * 1000);
  return {
    volume,
    voc: grams(mass * Math.max(0, 1 - solids - water.share - exemptShare)),
    water: litres(litresOf(water)),
    exempt: litres(exempt.reduce((sum, part) => sum + litresOf(part), 0)),
  };
}

/** Volume solids, 1 - volatiles / their average density: 40 CFR 63.3941(b)(4). Refuses more volatiles than fit. */
export function volumeSolids(volatiles: GramsPerLitre, averageDensity: GramsPerLitre): Result<Fraction> {
  const refusal =
    outOfRange('volatile-density', averageDensity, 100, 25_000) ??
    outOfRange('volatiles', volatiles, 0, averageDensity);
  return refusal ?? fraction(1 - volatiles / averageDensity);
}
