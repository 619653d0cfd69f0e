// Thinner by volume: a share of the mixed coating's own volume, so 10 % is one litre into ten, eleven in all.

import { isFailed } from '../failed.ts';
import { type Fraction, fraction, type Grams, type KilogramsPerLitre, type Litres, litres } from '../units.ts';
import { largestLitres, massFromVolume, refuseVolume } from './density.ts';
import { outOfRange, type Result } from './refusal.ts';

export interface Thinner {
  readonly litres: Litres;
  readonly grams: Grams;
}

/** How much thinner makes that share of so much mixed coating. */
export function thinnerFor(coating: Litres, share: Fraction, density: KilogramsPerLitre): Result<Thinner> {
  const refused = refuseVolume('coating', coating) ?? outOfRange('thinner share', share, 0, 1);
  if (refused !== undefined) return refused;
  const volume = litres(coating * share);
  const mass = massFromVolume(volume, density);
  return isFailed(mass) ? mass : { litres: volume, grams: mass };
}

/** The share that was poured; refuses more thinner than coating, which is no coating any more. */
export function thinnerShare(thinner: Litres, coating: Litres): Result<Fraction> {
  return (
    outOfRange('coating', coating, Number.MIN_VALUE, largestLitres) ??
    outOfRange('thinner', thinner, 0, coating) ??
    fraction(thinner / coating)
  );
}
