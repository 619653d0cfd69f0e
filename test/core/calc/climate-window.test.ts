// Go or no-go: each limit of a sheet at its edge, just past it, and unread.

import { describe, expect, test } from 'vitest';
import { type Climate, type ClimateWindow, checkClimate } from '../../../core/calc/climate-window.ts';
import { celsius, celsiusSpread, percent } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';

const day: Climate = { airCelsius: celsius(20), humidityPercent: percent(50), surfaceCelsius: celsius(18) };
const breaches = (window: ClimateWindow, climate: Climate = day) => answered(checkClimate(window, climate)).breaches;

describe('given air of 20 degC and 50 %, and steel of 18 degC', () => {
  const edges: readonly (readonly [keyof ClimateWindow, ClimateWindow, ClimateWindow, number, number])[] = [
    ['lowestAirCelsius', { lowestAirCelsius: celsius(20) }, { lowestAirCelsius: celsius(22) }, 20, 22],
    ['highestAirCelsius', { highestAirCelsius: celsius(20) }, { highestAirCelsius: celsius(18) }, 20, 18],
    ['lowestSurfaceCelsius', { lowestSurfaceCelsius: celsius(18) }, { lowestSurfaceCelsius: celsius(20) }, 18, 20],
    ['highestSurfaceCelsius', { highestSurfaceCelsius: celsius(18) }, { highestSurfaceCelsius: celsius(16) }, 18, 16],
    ['lowestHumidityPercent', { lowestHumidityPercent: percent(50) }, { lowestHumidityPercent: percent(52) }, 50, 52],
    [
      'highestHumidityPercent',
      { highestHumidityPercent: percent(50) },
      { highestHumidityPercent: percent(48) },
      50,
      48,
    ],
  ];
  for (const [limit, at, past, given, allowed] of edges) {
    test(`when ${limit} is just met, then it passes; when missed by 2, then it says so`, () => {
      expect(breaches(at)).toEqual([]);
      expect(breaches(past)).toEqual([{ limit, given, allowed, by: 2 }]);
    });
  }

  test('when a sheet limits nothing, then nothing is breached and the dew point is still told', () => {
    const verdict = answered(checkClimate({}, day));
    expect(verdict.breaches).toEqual([]);
    // psychrolib 1.1.1: 9.272 degC.
    expect(verdict.dewPointCelsius).toBeCloseTo(9.272, 2);
    expect(verdict.spreadCelsius).toBeCloseTo(18 - 9.272, 2);
    // Vapour of 1169.4 Pa over the 2064 Pa that steel of 18 degC holds.
    expect(verdict.surfaceHumidityPercent).toBeCloseTo(56.6, 1);
  });

  test('when several limits fail, then all are told', () => {
    const window = {
      lowestAirCelsius: celsius(25),
      highestHumidityPercent: percent(40),
      leastSpreadCelsius: celsiusSpread(10),
    };
    expect(breaches(window).map((breach) => breach.limit)).toEqual([
      'lowestAirCelsius',
      'highestHumidityPercent',
      'leastSpreadCelsius',
    ]);
  });
});

describe('given that nobody read the surface', () => {
  const unread: Climate = { ...day, surfaceCelsius: undefined };

  test('when the sheet limits it or the spread, then that is a no-go', () => {
    const window = {
      lowestSurfaceCelsius: celsius(10),
      highestSurfaceCelsius: celsius(40),
      leastSpreadCelsius: celsiusSpread(3),
    };
    expect(breaches(window, unread)).toEqual([
      { limit: 'lowestSurfaceCelsius', given: 'not-read', allowed: 10 },
      { limit: 'highestSurfaceCelsius', given: 'not-read', allowed: 40 },
      { limit: 'leastSpreadCelsius', given: 'not-read', allowed: 3 },
    ]);
  });

  test('when the sheet does not, then the air alone decides', () => {
    const verdict = answered(checkClimate({ highestHumidityPercent: percent(85) }, unread));
    expect(verdict).toMatchObject({ breaches: [], spreadCelsius: undefined, surfaceHumidityPercent: undefined });
  });
});
