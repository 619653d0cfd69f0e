// A reading said in another unit than it was shown in.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lacksDigit, unitDoubts } from '../../../core/calc/other-unit.ts';
import { grams } from '../../../core/units.ts';

it('given 1200 g planned, when 42.3 is said, then it may be ounces: 42.3 x 28.349523125 (exact by definition)', () => {
  expect(unitDoubts(grams(42.3), grams(1200))).toEqual([grams(42.3 * 28.349523125)]);
});

it('given 1200 g planned, when 2.65 or 1.2 is said, then it may be pounds (453.59237) or kilograms', () => {
  expect(unitDoubts(grams(2.65), grams(1200))[0]).toBeCloseTo(1202.02, 2);
  expect(unitDoubts(grams(1.2), grams(1200))).toEqual([1200]);
});

it('given what is near the plan, or nothing at all, then there is no doubt', () => {
  expect(unitDoubts(grams(1290), grams(1200))).toEqual([]);
  expect(unitDoubts(grams(0), grams(1200))).toEqual([]);
  expect(unitDoubts(grams(1200), grams(0))).toEqual([]);
  // Half the plan is a slip of the hand, not of the unit.
  expect(unitDoubts(grams(600), grams(1200))).toEqual([]);
});

it('given ten times too little or too much, then a digit is lacking or one too many, and no unit is offered', () => {
  expect([119, 12_010, 600, 1200].map((said) => lacksDigit(grams(said), grams(1200)))).toEqual([
    true,
    true,
    false,
    false,
  ]);
  expect(unitDoubts(grams(119), grams(1200))).toEqual([]);
});

it('whatever is offered lies within a tenth of the plan, and was not said', () => {
  let offered = 0;
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 1e6, noNaN: true }),
      fc.double({ min: 1, max: 1e5, noNaN: true }),
      (said, planned) => {
        for (const meant of unitDoubts(grams(said), grams(planned))) {
          offered += 1;
          expect(Math.abs(meant / planned - 1)).toBeLessThanOrEqual(0.1);
          expect(meant).not.toBe(said);
        }
      },
    ),
    { numRuns: 3000, seed: 4 },
  );
  expect(offered).toBeGreaterThan(20);
});
