// What holds of every clock, whatever the day was like.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type DoseRules, dose, type Piece, projectedDone } from '../../../core/calc/dose.ts';
import { temperatureToFinish, temperatureToLast } from '../../../core/calc/dose-inverse.ts';
import { durationAt, type RateLaw } from '../../../core/calc/rate-law.ts';
import { isFailed } from '../../../core/failed.ts';
import { celsius, epochMs, kilojoulesPerMole, minutes } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';
import { day, minutesIn, morning } from './demo-stir.ts';

const range = { lowestCelsius: celsius(10), highestCelsius: celsius(35) };
const aDuration = fc.integer({ min: 5, max: 600 }).map((taken) => minutes(taken));

/** A sheet that is never slower when warmer, as all that are known. */
const aFallingTable = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 60 })), { minLength: 1, maxLength: 4 })
  .map((steps): RateLaw => {
    let at = 5;
    let taken = 5 + steps.reduce((sum, [, less]) => sum + less, 0);
    const points = [{ celsius: celsius(at), minutes: minutes(taken) }];
    for (const [warmer, less] of steps) {
      at += warmer;
      taken -= less;
      points.push({ celsius: celsius(at), minutes: minutes(taken) });
    }
    return { kind: 'table', points };
  });
const aFactor = fc.tuple(aDuration, fc.double({ min: 1.2, max: 4, noNaN: true })).map(
  ([taken, factorPerTenDegrees]): RateLaw => ({
    kind: 'q10',
    minutes: taken,
    atCelsius: celsius(20),
    factorPerTenDegrees,
    range,
  }),
);
const anEnergy = fc.tuple(aDuration, fc.integer({ min: 20, max: 120 })).map(
  ([taken, kilojoules]): RateLaw => ({
    kind: 'arrhenius',
    minutes: taken,
    atCelsius: celsius(20),
    activation: kilojoulesPerMole(kilojoules),
    range,
  }),
);
const aPlain = aDuration.map((taken): RateLaw => ({ kind: 'plain', minutes: taken, range }));
const aLaw = fc.oneof(aFallingTable, aFactor, anEnergy, aPlain);
const aTemperature = fc.option(fc.integer({ min: 0, max: 45 }), { nil: undefined });
const aDay = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 240 }), aTemperature), { minLength: 1, maxLength: 8 })
  .map((lasting) => day(...lasting));

const atLeast = (law: RateLaw): DoseRules => ({ law, caution: 'at-least', withoutFigure: 'nothing' });
const atMost = (law: RateLaw): DoseRules => ({ law, caution: 'at-most', withoutFigure: 'nothing' });

it('given a warmer room within the sheet, then no clock is slower', () => {
  const aPlace = fc.integer({ min: 10, max: 35 });
  let compared = 0;
  fc.assert(
    fc.property(aLaw, aPlace, aPlace, (law, one, other) => {
      const cooler = durationAt(law, celsius(Math.min(one, other)));
      const warmer = durationAt(law, celsius(Math.max(one, other)));
      if (!cooler.given || !warmer.given) return;
      compared += 1;
      expect(warmer.minutes).toBeLessThanOrEqual(cooler.minutes + 1e-9);
    }),
  );
  expect(compared).toBeGreaterThan(20);
});

it('given any day cut into any pieces, then the dose and its end are the same', () => {
  let done = 0;
  fc.assert(
    fc.property(aLaw, aDay, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (law, whole, share) => {
      const cut = whole.flatMap((piece): readonly Piece[] => {
        const at = epochMs(Math.round(piece.from + share * (piece.to - piece.from)));
        return [
          { ...piece, to: at },
          { ...piece, from: at },
        ];
      });
      for (const rules of [atLeast(law), atMost(law)]) {
        const one = dose(rules, whole);
        const two = dose(rules, cut);
        expect(two.progress).toBeCloseTo(one.progress, 9);
        expect(two.ranMinutes).toBeCloseTo(one.ranMinutes, 9);
        if (one.doneAt === undefined || two.doneAt === undefined) {
          expect(Math.min(one.progress, two.progress)).toBeLessThan(1 + 1e-9);
        } else {
          done += 1;
          expect(Math.abs(two.doneAt - one.doneAt)).toBeLessThan(1);
        }
      }
    }),
  );
  expect(done).toBeGreaterThan(20);
});

it('given any day, then at-most is never behind at-least, and is done no later', () => {
  let both = 0;
  fc.assert(
    fc.property(aLaw, aDay, (law, pieces) => {
      const least = dose(atLeast(law), pieces);
      const most = dose(atMost(law), pieces);
      expect(most.progress).toBeGreaterThanOrEqual(least.progress - 1e-9);
      if (least.doneAt === undefined) return;
      both += 1;
      expect(most.doneAt).toBeDefined();
      expect(most.doneAt).toBeLessThanOrEqual(least.doneAt + 1);
    }),
  );
  expect(both).toBeGreaterThan(10);
});

it('given any day and the room as it is now, then there is always a time to ring, and never one gone by', () => {
  fc.assert(
    fc.property(aLaw, aDay, aTemperature, (law, pieces, now) => {
      const { progress } = dose(atLeast(law), pieces);
      const here = now === undefined ? undefined : celsius(now);
      const due = projectedDone(atLeast(law), progress, minutesIn(600), here);
      expect(due).toBeGreaterThanOrEqual(minutesIn(600));
      expect(projectedDone(atMost(law), progress, minutesIn(600), here)).toBeLessThanOrEqual(due + 1);
    }),
  );
});

it('given a temperature that is said to finish in time, then it does, and every warmer one of the sheet', () => {
  let found = 0;
  fc.assert(
    fc.property(
      aLaw,
      fc.integer({ min: 1, max: 900 }),
      fc.double({ min: 0, max: 0.95, noNaN: true }),
      (law, wanted, progress) => {
        const needed = temperatureToFinish(law, progress, minutes(wanted));
        if (isFailed(needed) || needed.needed !== 'from') return;
        found += 1;
        for (const warmer of [0, 1, 5]) {
          const taken = durationAt(law, celsius(needed.celsius + warmer));
          if (taken.given) expect(taken.minutes * (1 - progress)).toBeLessThanOrEqual(wanted * (1 + 1e-9));
        }
        const cooler = durationAt(law, celsius(needed.celsius - 0.5));
        if (cooler.given && law.kind !== 'plain') {
          expect(cooler.minutes * (1 - progress)).toBeGreaterThanOrEqual(wanted * (1 - 1e-9));
        }
      },
    ),
  );
  expect(found).toBeGreaterThan(20);
});

it('given a temperature up to which a pot is said to last, then it does, and at every cooler one of the sheet', () => {
  let found = 0;
  fc.assert(
    fc.property(aLaw, fc.integer({ min: 1, max: 900 }), (law, wanted) => {
      const needed = temperatureToLast(law, 0, minutes(wanted));
      if (isFailed(needed) || needed.needed !== 'up-to') return;
      found += 1;
      for (const cooler of [0, 1, 5]) {
        const taken = durationAt(law, celsius(needed.celsius - cooler));
        if (taken.given) expect(taken.minutes).toBeGreaterThanOrEqual(wanted * (1 - 1e-9));
      }
    }),
  );
  expect(found).toBeGreaterThan(20);
});

it('given the temperature that finishes, then a run at it is done when said', () => {
  let found = 0;
  fc.assert(
    fc.property(fc.oneof(aFactor, anEnergy), fc.integer({ min: 10, max: 900 }), (law, wanted) => {
      const needed = temperatureToFinish(law, 0, minutes(wanted));
      if (isFailed(needed) || needed.needed !== 'from' || needed.celsius <= 10) return;
      found += 1;
      const piece = { from: morning, to: minutesIn(wanted + 1), celsius: needed.celsius };
      const doneAt = answered(dose(atLeast(law), [piece])).doneAt ?? Number.NaN;
      expect(Math.abs(doneAt - minutesIn(wanted))).toBeLessThan(1);
    }),
  );
  expect(found).toBeGreaterThan(10);
});
