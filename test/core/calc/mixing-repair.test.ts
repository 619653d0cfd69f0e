// Bringing an off-ratio weighing back.

import { describe, expect, it } from 'vitest';
import type { MixRatio } from '../../../core/calc/mixing.ts';
import { repair } from '../../../core/calc/mixing-repair.ts';
import { fraction, grams, kilogramsPerLitre, litres } from '../../../core/units.ts';

const densities = { partAKilogramsPerLitre: kilogramsPerLitre(1.25), partBKilogramsPerLitre: kilogramsPerLitre(1) };
const oneToOne: MixRatio = { basis: 'weight', partsA: 1, partsB: 1, densities };
const fivePerCent = { under: fraction(0.05), over: fraction(0.05) };
const weighed = (partA: number, partB: number) => ({ partAGrams: grams(partA), partBGrams: grams(partB) });

describe('repairing a weighing', () => {
  it('given 1,000 g of A and 1,260 g of B at 1 : 1, then A is added: 200 g to the tolerance, 260 g to the ratio', () => {
    expect(repair(oneToOne, fivePerCent, weighed(1000, 1260), litres(10))).toEqual({
      add: 'part-a',
      least: { grams: 200, mixedGrams: 2460, mixedLitres: 0.96 + 1.26, vessel: 'holds-it' },
      exact: { grams: 260, mixedGrams: 2520, mixedLitres: 1.008 + 1.26, vessel: 'holds-it' },
    });
  });

  it('given 1,000 g of A and 900 g of B, then B is added: 50 g to the tolerance, 100 g to the ratio', () => {
    expect(repair(oneToOne, fivePerCent, weighed(1000, 900), litres(10))).toEqual({
      add: 'part-b',
      least: { grams: 50, mixedGrams: 1950, mixedLitres: 0.8 + 0.95, vessel: 'holds-it' },
      exact: { grams: 100, mixedGrams: 2000, mixedLitres: 1.8, vessel: 'holds-it' },
    });
  });

  it('given a vessel that holds the least addition but not the exact one, then each says so', () => {
    expect(repair(oneToOne, fivePerCent, weighed(1000, 1260), litres(2.25))).toMatchObject({
      least: { vessel: 'holds-it' },
      exact: { vessel: 'too-small' },
    });
    expect(repair(oneToOne, fivePerCent, weighed(1000, 900), litres(1.8))).toMatchObject({
      exact: { vessel: 'holds-it' },
    });
    expect(repair(oneToOne, fivePerCent, weighed(1000, 900), litres(1.79))).toMatchObject({
      exact: { vessel: 'too-small' },
    });
  });

  it('given a sheet without densities, then whether the vessel holds it is not known', () => {
    const unknown = repair({ basis: 'weight', partsA: 1, partsB: 1 }, fivePerCent, weighed(1000, 900), litres(10));
    expect(unknown).toMatchObject({
      least: { mixedLitres: undefined, vessel: 'not-known' },
      exact: { grams: 100, mixedGrams: 2000, mixedLitres: undefined, vessel: 'not-known' },
    });
  });

  it('given a weighing within the tolerance, ends included, then nothing is added', () => {
    for (const partB of [950, 1000, 1050]) {
      expect(repair(oneToOne, fivePerCent, weighed(1000, partB), litres(10))).toEqual({ add: 'nothing' });
    }
  });

  it('given Part B poured first, then all of Part A is still to come', () => {
    expect(repair(oneToOne, fivePerCent, weighed(0, 500), litres(10))).toMatchObject({
      add: 'part-a',
      exact: { grams: 500, mixedGrams: 1000 },
    });
  });

  it('given figures that no vessel or scale has, then each is refused by name', () => {
    expect(repair(oneToOne, fivePerCent, weighed(1, 1), litres(1e6 + 1))).toMatchObject({ what: 'vessel' });
    expect(repair(oneToOne, fivePerCent, weighed(1e9 + 1, 1), litres(1))).toMatchObject({ what: 'Part A' });
    expect(repair(oneToOne, fivePerCent, weighed(1, 1e9 + 1), litres(1))).toMatchObject({ what: 'Part B' });
    const heavyB = {
      basis: 'weight',
      partsA: 1,
      partsB: 1,
      densities: { ...densities, partBKilogramsPerLitre: kilogramsPerLitre(1050) },
    } as const;
    expect(repair(heavyB, fivePerCent, weighed(1000, 900), litres(10))).toMatchObject({ what: 'density', given: 1050 });
    expect(repair(heavyB, fivePerCent, weighed(1000, 1260), litres(10))).toMatchObject({
      what: 'density',
      given: 1050,
    });
    const hundredToOne: MixRatio = { basis: 'weight', partsA: 1e4, partsB: 1, densities };
    expect(repair(hundredToOne, fivePerCent, weighed(1, 1e6), litres(10))).toMatchObject({ what: 'mass' });
    const oneToHundred: MixRatio = { basis: 'weight', partsA: 1, partsB: 1e4, densities };
    expect(repair(oneToHundred, fivePerCent, weighed(1e6, 1), litres(10))).toMatchObject({ what: 'mass' });
  });
});
