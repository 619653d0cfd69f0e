// Mass and volume of the two parts and of their mix. Volumes are taken as additive, which is how sheets and VOC rules
// treat them; a mix that shrinks gives a little less volume than this.

import { isFailed } from '../failed.ts';
import { type Grams, grams, type KilogramsPerLitre, kilogramsPerLitre, type Litres, litres } from '../units.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** Lighter than any liquid coating, heavier than any element: catches g/L or lb/gal typed for kg/L, and zero. */
const lowestDensity = 0.1;
const highestDensity = 25;

/** A thousand tonnes, a thousand cubic metres: more than a crew mixes, and far from where a sum would overflow. */
export const heaviestGrams = 1e9;
export const largestLitres = 1e6;

export interface PartDensities {
  readonly partAKilogramsPerLitre: KilogramsPerLitre;
  readonly partBKilogramsPerLitre: KilogramsPerLitre;
}

/** Grams; refuses a density that no liquid has. */
export function massFromVolume(volume: Litres, density: KilogramsPerLitre): Result<Grams> {
  return refuseVolume('volume', volume) ?? refuseDensity('density', density) ?? grams(volume * density * 1000);
}

/** Litres; refuses a density that no liquid has. */
export function volumeFromMass(mass: Grams, density: KilogramsPerLitre): Result<Litres> {
  return refuseMass('mass', mass) ?? refuseDensity('density', density) ?? litres(mass / (density * 1000));
}

/** Volume of so much Part A and so much Part B, poured together. */
export function mixedVolume(partA: Grams, partB: Grams, densities: PartDensities): Result<Litres> {
  const volumeA = volumeFromMass(partA, densities.partAKilogramsPerLitre);
  if (isFailed(volumeA)) return volumeA;
  const volumeB = volumeFromMass(partB, densities.partBKilogramsPerLitre);
  if (isFailed(volumeB)) return volumeB;
  return litres(volumeA + volumeB);
}

/** Density of so much Part A with so much Part B; refuses an empty vessel. */
export function mixedDensity(partA: Grams, partB: Grams, densities: PartDensities): Result<KilogramsPerLitre> {
  const volume = mixedVolume(partA, partB, densities);
  if (isFailed(volume)) return volume;
  const mass = partA + partB;
  return (
    outOfRange('mixed mass', mass, Number.MIN_VALUE, 2 * heaviestGrams) ??
    outOfRange('mixed volume', volume, Number.MIN_VALUE, Number.MAX_VALUE) ??
    kilogramsPerLitre(mass / 1000 / volume)
  );
}

export function refuseMass(what: string, mass: Grams): Refusal | undefined {
  return outOfRange(what, mass, 0, heaviestGrams);
}

export function refuseVolume(what: string, volume: Litres): Refusal | undefined {
  return outOfRange(what, volume, 0, largestLitres);
}

export function refuseDensity(what: string, density: KilogramsPerLitre): Refusal | undefined {
  return outOfRange(what, density, lowestDensity, highestDensity);
}
