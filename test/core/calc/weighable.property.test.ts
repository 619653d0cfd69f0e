// What a card shows to be weighed keeps to the sheet's tolerance, followed on a scale that is half a step off at worst; or
// the card says that the scale cannot. The sum is made here once more, from what is shown alone.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { toWeigh } from '../../../core/batch/to-weigh.ts';
import { splitByWeight } from '../../../core/calc/mixing.ts';
import { partBFor } from '../../../core/calc/mixing-tolerance.ts';
import {
  commonSteps,
  pairShown,
  pairShownAtAny,
  rangeShown,
  rangeShownAtAny,
  type Shown,
  smallestMix,
} from '../../../core/calc/weighable.ts';
import { isFailed } from '../../../core/failed.ts';
import { fraction, type Grams, grams, gramsFromOunces } from '../../../core/units.ts';
import { demoShelf } from '../given.ts';

const step = fc.constantFrom(
  ...[0.001, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20].map(grams),
  ...[0.001, 0.01, 0.1, 0.5].map(gramsFromOunces),
);
const total = fc.integer({ min: -100, max: 500 }).map((hundredths) => grams(10 ** (hundredths / 100)));
const ratio = fc.record({
  basis: fc.constant('weight' as const),
  partsA: fc.double({ min: 1, max: 100, noNaN: true }),
  partsB: fc.double({ min: 1, max: 100, noNaN: true }),
});
const share = fc.double({ min: 0.0005, max: 0.2, noNaN: true }).map(fraction);
const tolerance = fc.record({ under: share, over: share });
const exactA = (of: Grams, parts: { readonly partsA: number; readonly partsB: number }): Grams => {
  const split = splitByWeight(of, parts);
  return isFailed(split) ? expect.fail('drawn too far') : split.partAGrams;
};

/** Each of the four corners in which two scales can be half a step off. */
function worst(partA: Shown, partB: Shown, perA: number): { readonly over: number; readonly under: number } {
  const corners = [-0.5, 0.5].flatMap((a) =>
    [-0.5, 0.5].map((b) => (partB.grams + b * partB.stepGrams) / (partA.grams + a * partA.stepGrams) / perA - 1),
  );
  return { over: Math.max(...corners), under: -Math.min(...corners) };
}
const negligible = 1e-8;
const isWhole = ({ grams: mass, stepGrams }: Shown) => Math.abs(mass / stepGrams - Math.round(mass / stepGrams)) < 1e-4;

it('given any ratio, tolerance, amount and two scales, then what holds is within, and what does not is told', () => {
  const reached = { holds: 0, tooCoarse: 0 };
  fc.assert(
    fc.property(ratio, tolerance, total, step, step, (parts, within, of, stepA, stepB) => {
      const steps = { partAGrams: stepA, partBGrams: stepB };
      const { partA, partB, holds } = pairShown(parts, within, exactA(of, parts), steps);
      expect(isWhole(partA) && isWhole(partB)).toBe(true);
      reached[holds ? 'holds' : 'tooCoarse'] += 1;
      if (!holds) return;
      const { over, under } = worst(partA, partB, parts.partsB / parts.partsA);
      expect(over).toBeLessThanOrEqual(within.over + negligible);
      expect(under).toBeLessThanOrEqual(within.under + negligible);
    }),
    { numRuns: 4_000 },
  );
  // Neither answer is the only one that was drawn.
  expect(Math.min(reached.holds, reached.tooCoarse)).toBeGreaterThan(300);
});

it('given no scale, then it is told to the coarsest usual step that holds, in grams and in ounces', () => {
  const reached = new Map<number, number>();
  fc.assert(
    fc.property(ratio, tolerance, total, fc.constantFrom('grams', 'ounces'), (parts, within, of, unit) => {
      const ladder = unit === 'grams' ? commonSteps.grams : commonSteps.ounces;
      const found = pairShownAtAny(parts, within, exactA(of, parts), ladder);
      if (found === undefined) throw new Error('nothing is shown');
      const index = ladder.indexOf(found.partA.stepGrams);
      reached.set(found.holds ? index : -1, (reached.get(found.holds ? index : -1) ?? 0) + 1);
      if (!found.holds) return;
      const { over, under } = worst(found.partA, found.partB, parts.partsB / parts.partsA);
      expect(over).toBeLessThanOrEqual(within.over + negligible);
      expect(under).toBeLessThanOrEqual(within.under + negligible);
    }),
    { numRuns: 4_000 },
  );
  expect([...reached.keys()].sort()).toEqual([-1, 0, 1, 2, 3]);
});

it('given the smallest mix of two scales, then every mix from there on holds on them', () => {
  fc.assert(
    fc.property(
      ratio,
      tolerance,
      step,
      step,
      fc.double({ min: 1, max: 50, noNaN: true }),
      (parts, within, a, b, up) => {
        const steps = { partAGrams: a, partBGrams: b };
        const of = grams(smallestMix(parts, within, steps) * up);
        expect(pairShown(parts, within, exactA(of, parts), steps).holds).toBe(true);
      },
    ),
    { numRuns: 4_000 },
  );
});

it('given Part A in the vessel, then both ends of Part B are rounded inwards, and so is what is wanted', () => {
  let reached = 0;
  fc.assert(
    fc.property(ratio, tolerance, total, step, (parts, within, of, stepB) => {
      const pour = partBFor(parts, within, of);
      if (isFailed(pour)) return;
      const usual = rangeShownAtAny(pour, commonSteps.grams);
      for (const shown of [rangeShown(pour, stepB), ...(usual === undefined ? [] : [usual])]) {
        if (!shown.holds) continue;
        reached += 1;
        expect(shown.least.grams).toBeGreaterThanOrEqual(pour.leastGrams - negligible);
        expect(shown.most.grams).toBeLessThanOrEqual(pour.mostGrams + negligible);
        expect(shown.exact.grams - shown.exact.stepGrams / 2).toBeGreaterThanOrEqual(pour.leastGrams - negligible);
        expect(shown.exact.grams + shown.exact.stepGrams / 2).toBeLessThanOrEqual(pour.mostGrams + negligible);
      }
    }),
    { numRuns: 4_000 },
  );
  expect(reached).toBeGreaterThan(2_000);
});

it('given several scales of a shop and either demo sheet, then the card holds or says which scale cannot', () => {
  const reached = { holds: 0, tooCoarse: 0 };
  const scale = fc.record({
    scale: fc.constantFrom('bench', 'floor', 'scale'),
    stepGrams: step,
    mostGrams: fc.option(fc.constantFrom(...[200, 2_000, 60_000].map(grams)), { nil: undefined }),
  });
  const sheets = ['demo-clear', 'demo-build'].flatMap((id) => {
    const read = demoShelf.get(id);
    return read?.kind === 'sheet' ? [read.sheet] : [];
  });
  fc.assert(
    fc.property(fc.constantFrom(...sheets), total, fc.array(scale, { maxLength: 3 }), (sheet, of, scales) => {
      const weigh = toWeigh(sheet, of, scales);
      if (weigh === undefined) throw new Error('nothing is shown');
      reached[weigh.tooCoarse === undefined ? 'holds' : 'tooCoarse'] += 1;
      const { partA, partB, holds } = weigh.pair.grams;
      if (weigh.tooCoarse?.smallestGrams !== undefined)
        expect(toWeigh(sheet, weigh.tooCoarse.smallestGrams, scales)?.tooCoarse).toBeUndefined();
      // What is shown stays within the ratio, whatever scale will not do.
      if (!holds) return;
      const error = (partB.grams / partA.grams) * (sheet.ratio.partsA / sheet.ratio.partsB);
      const { densities, basis, tolerancePercent } = sheet.ratio;
      const perA =
        basis === 'volume' ? error * (densities.partAKilogramsPerLitre / densities.partBKilogramsPerLitre) : error;
      expect(Math.abs(perA - 1)).toBeLessThanOrEqual(tolerancePercent / 100 + negligible);
    }),
    { numRuns: 3_000 },
  );
  expect(Math.min(reached.holds, reached.tooCoarse)).toBeGreaterThan(300);
});
