// Thinner by volume, and Part A's stir before the pour.

import { describe, expect, it } from 'vitest';
import { type PreStirPoint, preStir } from '../../../core/calc/pre-stir.ts';
import { thinnerFor, thinnerShare } from '../../../core/calc/thinner.ts';
import { fraction, grams, gramsFromKilograms, kilogramsPerLitre, litres, minutes } from '../../../core/units.ts';

describe('thinner', () => {
  it('given 10 L of coating and 10 % of a thinner of 0.79 kg/L, then 1 L that weighs 790 g', () => {
    expect(thinnerFor(litres(10), fraction(0.1), kilogramsPerLitre(0.79))).toEqual({ litres: 1, grams: 790 });
  });

  it('given 0.5 L poured into 10, then 5 %', () => {
    expect(thinnerShare(litres(0.5), litres(10))).toBe(0.05);
    expect(thinnerShare(litres(0), litres(10))).toBe(0);
    expect(thinnerShare(litres(10), litres(10))).toBe(1);
  });

  it('given more thinner than coating, no coating, or a density that no thinner has, then it is refused', () => {
    expect(thinnerShare(litres(11), litres(10))).toMatchObject({ failed: 'out-of-range', what: 'thinner' });
    expect(thinnerShare(litres(0), litres(0))).toMatchObject({ failed: 'out-of-range', what: 'coating' });
    expect(thinnerShare(litres(1), litres(1e6 + 1))).toMatchObject({ what: 'coating' });
    expect(thinnerFor(litres(10), fraction(0.1), kilogramsPerLitre(790))).toMatchObject({ what: 'density' });
    expect(thinnerFor(litres(1e6 + 1), fraction(0.1), kilogramsPerLitre(1))).toMatchObject({ what: 'coating' });
  });
});

/** Half a minute to five minutes (common practice, no source); the demo sheet invents the quantities. */
const demo: readonly PreStirPoint[] = [
  { partAGrams: gramsFromKilograms(1), minutes: minutes(0.5) },
  { partAGrams: gramsFromKilograms(20), minutes: minutes(5) },
];

describe('the pre-stir of Part A on the demo sheet (common practice, no source)', () => {
  it('given 1 kg, then half a minute; given 20 kg, then five; half way between, 2.75', () => {
    expect(preStir(demo, grams(1000))).toEqual({ minutes: 0.5, withinPoints: true });
    expect(preStir(demo, grams(20_000))).toEqual({ minutes: 5, withinPoints: true });
    expect(preStir(demo, grams(10_500))).toEqual({ minutes: 2.75, withinPoints: true });
  });

  it('given less or more than the points, then the longest stands and the answer says so', () => {
    expect(preStir(demo, grams(999))).toEqual({ minutes: 5, withinPoints: false });
    expect(preStir(demo, grams(20_001))).toEqual({ minutes: 5, withinPoints: false });
  });

  it('given three points in any order, then each stretch has its own line', () => {
    const bent = [...demo, { partAGrams: grams(10_000), minutes: minutes(4) }];
    expect(preStir(bent, grams(5500))).toEqual({ minutes: 2.25, withinPoints: true });
    expect(preStir(bent, grams(15_000))).toEqual({ minutes: 4.5, withinPoints: true });
    expect(preStir(bent.toReversed(), grams(10_000))).toEqual({ minutes: 4, withinPoints: true });
  });

  it('given no points, then there is no figure; given points that no sheet has, then they are refused', () => {
    expect(preStir([], grams(1000))).toEqual({ failed: 'no-figure', what: 'pre-stir' });
    expect(preStir(demo, grams(1e9 + 1))).toMatchObject({ what: 'Part A' });
    expect(preStir([{ partAGrams: grams(1), minutes: minutes(-1) }], grams(1))).toMatchObject({ given: -1 });
    expect(preStir([{ partAGrams: grams(1), minutes: minutes(1441) }], grams(1))).toMatchObject({ highest: 1440 });
    expect(preStir([{ partAGrams: grams(1e9 + 1), minutes: minutes(1) }], grams(1))).toMatchObject({
      what: 'point of the pre-stir',
    });
    expect(preStir(demo.slice(0, 1), grams(2000))).toEqual({ minutes: 0.5, withinPoints: false });
    expect(preStir([{ partAGrams: grams(1), minutes: minutes(1440) }], grams(2))).toEqual({
      minutes: 1440,
      withinPoints: false,
    });
  });
});
