// Clocks as doses, on the demo sheet's stir of 120 minutes at 15 degC and 90 at 30 (common practice, no source).

import { describe, expect, it } from 'vitest';
import { dose, paceAt, projectedDone } from '../../../core/calc/dose.ts';
import { durationAt, fastest, needsTemperature, type RateLaw, rangeOf, slowest } from '../../../core/calc/rate-law.ts';
import { celsius, kilojoulesPerMole, minutes } from '../../../core/units.ts';
import { day, minutesIn, morning, potLife, stir, stirAtSlowest, stirLaw } from './demo-stir.ts';

const roomTemperatures = { lowestCelsius: celsius(10), highestCelsius: celsius(35) };
const halving: RateLaw = {
  kind: 'q10',
  minutes: minutes(240),
  atCelsius: celsius(20),
  factorPerTenDegrees: 2,
  range: roomTemperatures,
};
const stated: RateLaw = {
  kind: 'arrhenius',
  minutes: minutes(240),
  atCelsius: celsius(20),
  activation: kilojoulesPerMole(60),
  range: roomTemperatures,
};
const tenMinutes: RateLaw = { kind: 'plain', minutes: minutes(10) };
const tenMinutesWarm: RateLaw = { kind: 'plain', minutes: minutes(10), range: roomTemperatures };

describe('how long the sheet says', () => {
  it('given the demo stir (common practice, no source), then 15 degC takes 120, 24 takes 102, 30 takes 90 minutes', () => {
    expect([15, 24, 30].map((at) => durationAt(stirLaw, celsius(at)))).toEqual([
      { given: true, minutes: 120 },
      { given: true, minutes: 102 },
      { given: true, minutes: 90 },
    ]);
  });

  it('given a temperature past either end of the table, then there is no figure and its side is named', () => {
    expect(durationAt(stirLaw, celsius(14.9))).toEqual({ given: false, side: 'below' });
    expect(durationAt(stirLaw, celsius(30.1))).toEqual({ given: false, side: 'above' });
  });

  it('given three points, then each stretch has its own straight line', () => {
    const bent: RateLaw = {
      kind: 'table',
      points: [
        { celsius: celsius(10), minutes: minutes(200) },
        { celsius: celsius(20), minutes: minutes(100) },
        { celsius: celsius(30), minutes: minutes(80) },
      ],
    };
    expect([10, 15, 20, 25, 30].map((at) => durationAt(bent, celsius(at)))).toEqual(
      [200, 150, 100, 90, 80].map((taken) => ({ given: true, minutes: taken })),
    );
    expect([slowest(bent), fastest(bent)]).toEqual([200, 80]);
  });

  it('given a law by factor or by energy, then its ends are the slowest and the fastest, and past them is no figure', () => {
    expect([slowest(halving), fastest(halving)]).toEqual([480, 240 / 2 ** 1.5]);
    // 240 / exp(60000/R (1/293.15 - 1/T)), at 283.15 and 308.15 K.
    expect(slowest(stated)).toBeCloseTo(572.5, 1);
    expect(fastest(stated)).toBeCloseTo(72.4, 1);
    for (const law of [halving, stated, tenMinutesWarm]) {
      expect(durationAt(law, celsius(9.9))).toEqual({ given: false, side: 'below' });
      expect(durationAt(law, celsius(35.1))).toEqual({ given: false, side: 'above' });
      expect(durationAt(law, celsius(10)).given && durationAt(law, celsius(35)).given).toBe(true);
    }
  });

  it('given a plain duration, then only one with a range asks for a temperature', () => {
    expect([needsTemperature(tenMinutes), needsTemperature(tenMinutesWarm), needsTemperature(stirLaw)]).toEqual([
      false,
      true,
      true,
    ]);
    expect(rangeOf(tenMinutes)).toBeUndefined();
    expect([slowest(tenMinutes), fastest(tenMinutes)]).toEqual([10, 10]);
    expect(durationAt(tenMinutes, celsius(-40))).toEqual({ given: true, minutes: 10 });
  });

  it('given a table without points, then it is a broken sheet and throws', () => {
    expect(() => durationAt({ kind: 'table', points: [] }, celsius(20))).toThrow('needs points');
  });
});

describe('the dose of a stir', () => {
  it('given half stirred at 15 degC and the rest at 30 (common practice), then it is done after 60 + 45 minutes', () => {
    const stirred = dose(stir, day([60, 15], [60, 30]));
    expect(stirred.progress).toBeCloseTo(0.5 + 60 / 90, 12);
    expect(stirred.doneAt).toBe(minutesIn(105));
    expect(stirred.ranMinutes).toBe(120);
  });

  it('given five readings and one gap, then the gap earns nothing and is told', () => {
    const stirred = dose(stir, day([30, 15], [30, 24], [20, undefined], [30, 30], [15, 24]));
    expect(stirred.progress).toBeCloseTo(30 / 120 + 30 / 102 + 30 / 90 + 15 / 102, 12);
    expect(stirred.withoutFigureMinutes).toEqual({ unknown: 20, below: 0, above: 0 });
    // 0.25 + 0.294118 + 0.333333 = 0.877451 at minute 110; the rest at 102 minutes the whole.
    expect(stirred.doneAt).toBe(minutesIn(110 + 102 * (1 - 30 / 120 - 30 / 102 - 30 / 90)));
    expect(stirred.ranMinutes).toBe(125);
  });

  it('given time colder or warmer than the table, then at-least earns nothing there', () => {
    const stirred = dose(stir, day([60, 10], [60, 35]));
    expect(stirred).toEqual({
      progress: 0,
      doneAt: undefined,
      ranMinutes: 120,
      withoutFigureMinutes: { unknown: 0, below: 60, above: 60 },
    });
  });

  it('given a sheet that says so, then at-least earns the slowest there', () => {
    expect(dose(stirAtSlowest, day([60, 10], [30, undefined], [30, 40])).progress).toBeCloseTo(1, 12);
  });

  it('given a clock of at most, then what is unknown, colder or warmer runs at the fastest', () => {
    const pot = dose(potLife, day([30, undefined], [30, 10], [30, 40]));
    expect(pot.progress).toBeCloseTo(1, 12);
    expect(pot.doneAt).toBe(minutesIn(90));
    expect(pot.withoutFigureMinutes).toEqual({ unknown: 30, below: 30, above: 30 });
  });

  it('given a dose that is full at the very end of a piece, then it is done then and not later', () => {
    expect(dose(stir, day([40, 15], [40, 15], [40, 15])).doneAt).toBe(minutesIn(120));
    expect(dose(stir, day([40, 15], [40, 15], [39.99, 15])).doneAt).toBeUndefined();
  });

  it('given a piece that ends before it begins, then it counts for nothing', () => {
    const backwards = { from: minutesIn(60), to: minutesIn(0), celsius: celsius(24) };
    expect(dose(stir, [backwards]).ranMinutes).toBe(0);
  });

  it('given a ring on the way at three quarters, then it comes after 90 of 120 minutes', () => {
    expect(dose(stir, day([120, 15]), 0.75).doneAt).toBe(minutesIn(90));
  });

  it('given a plain flash-off of ten minutes, then time alone proves it', () => {
    const flashOff = dose({ ...stir, law: tenMinutes }, day([12, undefined]));
    expect(flashOff.doneAt).toBe(minutesIn(10));
    expect(flashOff.withoutFigureMinutes.unknown).toBe(0);
    expect(paceAt({ ...stir, law: tenMinutesWarm }, undefined)).toEqual({ perMinute: 0, why: 'unknown' });
  });
});

describe('when it will be done', () => {
  it('given half a stir at 15 degC and a room now at 30, then 45 minutes from now', () => {
    expect(projectedDone(stir, 0.5, minutesIn(60), celsius(30))).toBe(minutesIn(105));
  });

  it('given no temperature, then at-least rings at the slowest and at-most at the fastest', () => {
    expect(projectedDone(stir, 0, morning, undefined)).toBe(minutesIn(120));
    expect(projectedDone(stir, 0, morning, celsius(5))).toBe(minutesIn(120));
    expect(projectedDone(potLife, 0, morning, undefined)).toBe(minutesIn(90));
  });

  it('given a clock already full, then now', () => {
    expect(projectedDone(stir, 1.2, minutesIn(200), celsius(24))).toBe(minutesIn(200));
  });
});
