// What must hold for the air of any room, whatever the figures.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dewPoint, humidityAtSurface, vapourPressure } from '../../../core/calc/air.ts';
import { checkClimate } from '../../../core/calc/climate-window.ts';
import { saturationPressure, saturationTemperature } from '../../../core/calc/saturation.ts';
import { humidityFromWetBulb, seaLevelPressure } from '../../../core/calc/wet-bulb.ts';
import { celsius, celsiusSpread, percent } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const air = between(-45, 60).map(celsius);
const warmAir = between(0.1, 60).map(celsius);
const humidity = between(1, 100).map(percent);

describe('given the air of any room', () => {
  test('wetter air never has a lower dew point', () => {
    fc.assert(
      fc.property(air, humidity, humidity, (room, one, other) => {
        const [drier, wetter] = one <= other ? [one, other] : [other, one];
        expect(answered(dewPoint(room, wetter))).toBeGreaterThanOrEqual(answered(dewPoint(room, drier)));
      }),
    );
  });

  test('warmer air of the same humidity never has a lower dew point', () => {
    fc.assert(
      fc.property(air, air, humidity, (one, other, share) => {
        const [colder, warmer] = one <= other ? [one, other] : [other, one];
        expect(answered(dewPoint(warmer, share))).toBeGreaterThanOrEqual(answered(dewPoint(colder, share)) - 1e-9);
      }),
    );
  });

  test('above 0 degC the dew point is never above the air, and at 100 % it is the air', () => {
    fc.assert(
      fc.property(warmAir, humidity, (room, share) => {
        expect(answered(dewPoint(room, share))).toBeLessThanOrEqual(room + 1e-9);
        expect(answered(dewPoint(room, percent(100)))).toBeCloseTo(room, 9);
      }),
    );
  });

  test('below 0 degC saturated air frosts a surface that is as cold as itself', () => {
    fc.assert(
      fc.property(between(-45, -0.1).map(celsius), (room) => {
        expect(answered(dewPoint(room, percent(100)))).toBeGreaterThan(room);
      }),
    );
  });

  test('saturation there and back gives the temperature', () => {
    fc.assert(
      fc.property(between(-99.9, 199.9).map(celsius), (at) => {
        expect(answered(saturationTemperature(answered(saturationPressure(at))))).toBeCloseTo(at, 6);
      }),
    );
  });

  test('the surface is at 100 % exactly when its spread is nothing', () => {
    const reached = { dry: 0, wet: 0 };
    fc.assert(
      fc.property(air, humidity, between(-45, 120).map(celsius), (room, share, surface) => {
        const spread = surface - answered(dewPoint(room, share));
        const there = answered(humidityAtSurface(room, share, surface));
        if (Math.abs(spread) < 1e-6) return;
        reached[spread > 0 ? 'dry' : 'wet'] += 1;
        expect(there < 100).toBe(spread > 0);
      }),
    );
    expect(reached.dry).toBeGreaterThan(0);
    expect(reached.wet).toBeGreaterThan(0);
  });

  test('a surface as warm as the air has the humidity of the air, above 0 degC', () => {
    fc.assert(
      fc.property(warmAir, humidity, (room, share) => {
        expect(answered(humidityAtSurface(room, share, room))).toBeCloseTo(share, 9);
      }),
    );
  });

  test('a lower wet bulb never means wetter air; equal bulbs mean 100 %', () => {
    const reached = { both: 0, tooDry: 0 };
    fc.assert(
      fc.property(between(5, 60), between(0, 1), between(0, 1), (dry, one, other) => {
        const bulb = (share: number) => humidityFromWetBulb(celsius(dry), celsius(dry * share), seaLevelPressure);
        const lower = bulb(Math.min(one, other));
        const higher = bulb(Math.max(one, other));
        expect(answered(bulb(1))).toBeCloseTo(100, 6);
        if (typeof lower === 'number' && typeof higher === 'number') {
          reached.both += 1;
          expect(lower).toBeLessThanOrEqual(higher + 1e-9);
        } else {
          reached.tooDry += 1;
          // What is refused for being too low says how low it may be, and that is answered.
          if (typeof lower === 'number' || lower.failed !== 'out-of-range') throw new Error('refused the wrong way');
          expect(lower.lowest).toBeGreaterThan(dry * Math.min(one, other));
          const atLowest = humidityFromWetBulb(celsius(dry), celsius(lower.lowest + 1e-9), seaLevelPressure);
          expect(answered(atLowest)).toBeLessThan(1);
        }
      }),
    );
    expect(reached.both).toBeGreaterThan(0);
    expect(reached.tooDry).toBeGreaterThan(0);
  });

  test('air at the driest that still has a dew point is answered, drier is refused with that limit', () => {
    fc.assert(
      fc.property(between(-20, 60).map(celsius), (room) => {
        const refused = dewPoint(room, percent(0));
        if (typeof refused === 'number' || refused.failed !== 'out-of-range') throw new Error('dry air was answered');
        expect(answered(dewPoint(room, percent(refused.lowest * 1.001)))).toBeGreaterThanOrEqual(-100);
        expect(refused.highest).toBe(100);
        expect(answered(vapourPressure(room, percent(0)))).toBe(0);
      }),
    );
  });

  test('a colder surface or wetter air never lifts a no-go for the spread', () => {
    const reached = { go: 0, noGo: 0 };
    const isGo = (room: number, share: number, surface: number): boolean =>
      answered(
        checkClimate(
          { leastSpreadCelsius: celsiusSpread(3) },
          { airCelsius: celsius(room), humidityPercent: percent(share), surfaceCelsius: celsius(surface) },
        ),
      ).breaches.length === 0;
    fc.assert(
      fc.property(between(0, 40), between(20, 95), between(-5, 45), between(0, 5), (room, share, surface, less) => {
        const go = isGo(room, share, surface);
        reached[go ? 'go' : 'noGo'] += 1;
        if (go) return;
        expect(isGo(room, share, surface - less)).toBe(false);
        expect(isGo(room, share + less, surface)).toBe(false);
      }),
    );
    expect(reached.go).toBeGreaterThan(0);
    expect(reached.noGo).toBeGreaterThan(0);
  });
});
