// Splitting a mix, reading a weighing, and the sheet's tolerance both ways round.

import { describe, expect, it } from 'vitest';
import { massFromVolume, mixedDensity, mixedVolume, volumeFromMass } from '../../../core/calc/density.ts';
import {
  type MixRatio,
  ratioError,
  splitByVolume,
  splitByWeight,
  splitFill,
  splitMass,
} from '../../../core/calc/mixing.ts';
import { partAFor, partBFor } from '../../../core/calc/mixing-tolerance.ts';
import { fraction, grams, kilogramsPerLitre, litres } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';

const densities = { partAKilogramsPerLitre: kilogramsPerLitre(1.35), partBKilogramsPerLitre: kilogramsPerLitre(1.05) };
const oneToOne: MixRatio = { basis: 'weight', partsA: 1, partsB: 1 };
const fourToOne: MixRatio = { basis: 'volume', partsA: 4, partsB: 1, densities };
const fiveEitherWay = { under: fraction(0.05), over: fraction(0.05) };
const weighed = (partA: number, partB: number) => ({ partAGrams: grams(partA), partBGrams: grams(partB) });

describe('splitting a mix', () => {
  it('given 2.4 kg at 1 : 1 by weight (common practice, no source), then 1,200 g of each', () => {
    expect(splitByWeight(grams(2400), oneToOne)).toEqual(weighed(1200, 1200));
    expect(splitMass(grams(2400), oneToOne)).toEqual(weighed(1200, 1200));
  });

  it('given 119.5 g at 100 : 19.5 by weight, then 100 g and 19.5 g', () => {
    expect(splitByWeight(grams(119.5), { partsA: 100, partsB: 19.5 })).toEqual(weighed(100, 19.5));
  });

  it('given 5 L at 4 : 1 by volume, then 4 L weighing 5,400 g and 1 L weighing 1,050 g', () => {
    const wanted = { partAGrams: 5400, partBGrams: 1050, partALitres: 4, partBLitres: 1 };
    expect(splitByVolume(litres(5), { partsA: 4, partsB: 1 }, densities)).toEqual(wanted);
    expect(splitFill(litres(5), fourToOne)).toEqual(wanted);
    expect(splitMass(grams(6450), fourToOne)).toEqual(weighed(5400, 1050));
  });

  it('given a vessel to fill at 1 : 1 by weight, then equal weights that together fill it', () => {
    const filled = answered(splitFill(litres(2.4), { ...oneToOne, densities }));
    expect(filled.partAGrams).toBeCloseTo(filled.partBGrams, 9);
    expect(filled.partALitres + filled.partBLitres).toBeCloseTo(2.4, 12);
    // 2.4 / (1/1.35 + 1/1.05) = 1,417.5 g of each.
    expect(filled.partAGrams).toBeCloseTo(1417.5, 6);
  });

  it('given a vessel to fill and a ratio by weight without densities, then there is no figure', () => {
    expect(splitFill(litres(2.4), oneToOne)).toEqual({ failed: 'no-figure', what: 'densities' });
  });

  it.each([
    ['parts of A', { partsA: 0, partsB: 1 }],
    ['parts of A', { partsA: Number.NaN, partsB: 1 }],
    ['parts of B', { partsA: 1, partsB: -1 }],
    ['ratio of A to B', { partsA: 1e6, partsB: 1 }],
    ['ratio of A to B', { partsA: 1e-3, partsB: 1e6 }],
  ])('given a ratio that no sheet has, then it is refused by its %s', (what, parts) => {
    expect(splitByWeight(grams(100), parts)).toMatchObject({ failed: 'out-of-range', what });
    expect(splitByVolume(litres(1), parts, densities)).toMatchObject({ what });
    expect(splitMass(grams(100), { basis: 'volume', ...parts, densities })).toMatchObject({ what });
    expect(splitFill(litres(1), { basis: 'weight', ...parts, densities })).toMatchObject({ what });
    expect(ratioError({ basis: 'weight', ...parts }, weighed(1, 1))).toMatchObject({ what });
  });

  it('given ratios at the very ends, then they are still split', () => {
    expect(answered(splitByWeight(grams(10_001), { partsA: 1e4, partsB: 1 })).partBGrams).toBeCloseTo(1, 9);
    expect(answered(splitByWeight(grams(10_001), { partsA: 0.001, partsB: 10 })).partAGrams).toBeCloseTo(1, 9);
    expect(answered(splitByWeight(grams(200), { partsA: 1e6, partsB: 1e6 })).partAGrams).toBe(100);
  });

  it('given more than a thousand tonnes or cubic metres, then a unit was mistaken', () => {
    expect(splitByWeight(grams(1e9 + 1), oneToOne)).toMatchObject({ what: 'total', highest: 1e9 });
    expect(splitByVolume(litres(1e6 + 1), { partsA: 1, partsB: 1 }, densities)).toMatchObject({ what: 'total' });
  });

  it('given g/L typed for kg/L, then the density is refused and named', () => {
    const typed = { partAKilogramsPerLitre: kilogramsPerLitre(1350), partBKilogramsPerLitre: kilogramsPerLitre(1.05) };
    const typedB = { partAKilogramsPerLitre: kilogramsPerLitre(1.35), partBKilogramsPerLitre: kilogramsPerLitre(0) };
    expect(splitMass(grams(100), { ...fourToOne, densities: typed })).toMatchObject({ what: 'Part A density' });
    expect(splitMass(grams(100), { ...fourToOne, densities: typedB })).toMatchObject({ what: 'Part B density' });
    expect(splitFill(litres(1), { ...oneToOne, densities: typed })).toMatchObject({ what: 'Part A density' });
    expect(splitFill(litres(1), { ...oneToOne, densities: typedB })).toMatchObject({ what: 'Part B density' });
    expect(splitByVolume(litres(1), { partsA: 1, partsB: 1 }, typed)).toMatchObject({ given: 1350 });
    expect(splitByVolume(litres(1), { partsA: 1, partsB: 1 }, typedB)).toMatchObject({ given: 0 });
  });
});

describe('mass and volume', () => {
  it('given 2 L at 1.35 kg/L, then 2,700 g, and back', () => {
    expect(massFromVolume(litres(2), kilogramsPerLitre(1.35))).toBe(2700);
    expect(volumeFromMass(grams(2700), kilogramsPerLitre(1.35))).toBe(2);
  });

  it('given 5,400 g of A and 1,050 g of B, then 5 L at 1.29 kg/L', () => {
    expect(mixedVolume(grams(5400), grams(1050), densities)).toBe(5);
    expect(mixedDensity(grams(5400), grams(1050), densities)).toBeCloseTo(1.29, 12);
  });

  it('given an empty vessel, then its density is refused', () => {
    expect(mixedDensity(grams(0), grams(0), densities)).toMatchObject({ failed: 'out-of-range', what: 'mixed mass' });
  });

  it('given densities and amounts past their ends, then each is refused, and at the ends none is', () => {
    expect(massFromVolume(litres(1), kilogramsPerLitre(0.099))).toMatchObject({ what: 'density', lowest: 0.1 });
    expect(volumeFromMass(grams(1), kilogramsPerLitre(25.1))).toMatchObject({ what: 'density', highest: 25 });
    expect(massFromVolume(litres(1e6 + 1), kilogramsPerLitre(1))).toMatchObject({ what: 'volume' });
    expect(volumeFromMass(grams(1e9 + 1), kilogramsPerLitre(1))).toMatchObject({ what: 'mass' });
    expect(massFromVolume(litres(1), kilogramsPerLitre(0.1))).toBe(100);
    expect(volumeFromMass(grams(25_000), kilogramsPerLitre(25))).toBe(1);
    expect(mixedVolume(grams(1e9 + 1), grams(1), densities)).toMatchObject({ what: 'mass', given: 1e9 + 1 });
    expect(mixedVolume(grams(1), grams(1e9 + 1), densities)).toMatchObject({ what: 'mass', given: 1e9 + 1 });
    expect(mixedDensity(grams(1e9 + 1), grams(1), densities)).toMatchObject({ what: 'mass' });
    expect(mixedDensity(grams(9e8), grams(9e8), densities)).toBeCloseTo(1.18125, 9);
  });
});

describe('how far a weighing is off', () => {
  it('given 1,201 g and 1,198 g at 1 : 1, then Part B is 0.25 % short', () => {
    expect(ratioError(oneToOne, weighed(1201, 1198))).toBeCloseTo(1198 / 1201 - 1, 12);
  });

  it('given 4 : 1 by volume weighed to the gram, then no error; with 10 % too much B, 10 %', () => {
    expect(ratioError(fourToOne, weighed(5400, 1050))).toBeCloseTo(0, 12);
    expect(ratioError(fourToOne, weighed(5400, 1155))).toBeCloseTo(0.1, 12);
  });

  it('given no Part A, then it is refused; given no Part B, then all of it is missing', () => {
    expect(ratioError(oneToOne, weighed(0, 100))).toMatchObject({ failed: 'out-of-range', what: 'Part A' });
    expect(ratioError(oneToOne, weighed(100, 0))).toBe(-1);
    expect(ratioError(oneToOne, weighed(100, 1e9 + 1))).toMatchObject({ what: 'Part B' });
    expect(ratioError(oneToOne, weighed(0.001, 0.001))).toBe(0);
  });
});

describe('the tolerance of a ratio', () => {
  it('given a sheet that forgives 2 % under and 10 % over, then the sides are kept apart', () => {
    const uneven = { under: fraction(0.02), over: fraction(0.1) };
    expect(partBFor(oneToOne, uneven, grams(1000))).toEqual({ leastGrams: 980, exactGrams: 1000, mostGrams: 1100 });
  });

  it('given 1,000 g of B, then A may lie from 952.4 to 1,052.6 g, for too much B is too little A', () => {
    const partA = answered(partAFor(oneToOne, fiveEitherWay, grams(1000)));
    expect(partA.leastGrams).toBeCloseTo(952.381, 3);
    expect(partA.exactGrams).toBe(1000);
    expect(partA.mostGrams).toBeCloseTo(1052.632, 3);
  });

  it('given 5,400 g of A at 4 : 1 by volume, then 1,050 g of B belong on it; and back', () => {
    expect(answered(partBFor(fourToOne, fiveEitherWay, grams(5400))).exactGrams).toBeCloseTo(1050, 9);
    expect(answered(partAFor(fourToOne, fiveEitherWay, grams(1050))).exactGrams).toBeCloseTo(5400, 9);
  });

  it('given a tolerance of the whole part, or of more than twice it, then it is refused', () => {
    const noneOfB = { under: fraction(1), over: fraction(0) };
    expect(partBFor(oneToOne, noneOfB, grams(1))).toMatchObject({ what: 'tolerance under' });
    expect(partAFor(oneToOne, noneOfB, grams(1))).toMatchObject({ what: 'tolerance under' });
    expect(partBFor(oneToOne, { under: fraction(0.99), over: fraction(1) }, grams(100))).toMatchObject({
      mostGrams: 200,
    });
    expect(partBFor(oneToOne, fiveEitherWay, grams(1e9 + 1))).toMatchObject({ what: 'Part A' });
    expect(partAFor(oneToOne, fiveEitherWay, grams(1e9 + 1))).toMatchObject({ what: 'Part B' });
    expect(partBFor({ ...oneToOne, partsA: 0 }, fiveEitherWay, grams(1))).toMatchObject({ what: 'parts of A' });
    expect(partAFor({ ...oneToOne, partsA: 0 }, fiveEitherWay, grams(1))).toMatchObject({ what: 'parts of A' });
  });
});
