// Pot life by mass: the sheet's own points, invented here.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lawTimes, potLifeFactor } from '../../../core/calc/pot-mass.ts';
import { durationAt, type RateLaw } from '../../../core/calc/rate-law.ts';
import { celsius, grams, kilojoulesPerMole, minutes } from '../../../core/units.ts';

const points = [
  { grams: grams(10_000), factor: 1 },
  { grams: grams(30_000), factor: 0.6 },
];

it('given points at 10 kg and 30 kg, then 20 kg lie half way; less is as the first, more as the smallest and says so', () => {
  expect(potLifeFactor(points, grams(20_000))).toEqual({ factor: 0.8, withinPoints: true });
  expect(potLifeFactor(points, grams(500))).toEqual({ factor: 1, withinPoints: true });
  expect(potLifeFactor(points, grams(30_000))).toEqual({ factor: 0.6, withinPoints: true });
  expect(potLifeFactor(points, grams(31_000))).toEqual({ factor: 0.6, withinPoints: false });
});

it('given no points, or a factor that lengthens a life, then it refuses', () => {
  expect(potLifeFactor([], grams(1000))).toMatchObject({ failed: 'no-figure' });
  expect(potLifeFactor([{ grams: grams(1), factor: 1.2 }], grams(1000))).toMatchObject({ failed: 'out-of-range' });
});

it('given a factor, then every law takes just that share of its time, at every temperature', () => {
  const range = { lowestCelsius: celsius(10), highestCelsius: celsius(40) };
  const laws: readonly RateLaw[] = [
    { kind: 'plain', minutes: minutes(240), range },
    {
      kind: 'table',
      points: [
        { celsius: celsius(10), minutes: minutes(480) },
        { celsius: celsius(40), minutes: minutes(60) },
      ],
    },
    { kind: 'q10', minutes: minutes(240), atCelsius: celsius(20), factorPerTenDegrees: 2, range },
    { kind: 'arrhenius', minutes: minutes(240), atCelsius: celsius(20), activation: kilojoulesPerMole(60), range },
  ];
  fc.assert(
    fc.property(
      fc.constantFrom(...laws),
      fc.double({ min: 0.05, max: 1, noNaN: true }),
      fc.integer({ min: 10, max: 40 }),
      (law, factor, at) => {
        const whole = durationAt(law, celsius(at));
        const share = durationAt(lawTimes(law, factor), celsius(at));
        expect(whole.given && share.given && share.minutes / whole.minutes).toBeCloseTo(factor, 9);
      },
    ),
    { numRuns: 400, seed: 4 },
  );
});

it('given more mass, then the factor never rises', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 50_000 }), fc.integer({ min: 0, max: 50_000 }), (a, b) => {
      const factorOf = (mass: number) => {
        const found = potLifeFactor(points, grams(mass));
        return 'factor' in found ? found.factor : Number.NaN;
      };
      expect(factorOf(Math.max(a, b))).toBeLessThanOrEqual(factorOf(Math.min(a, b)));
    }),
    { numRuns: 300, seed: 4 },
  );
});
