// Our sums about air beside the reference library psychrolib, live, over a grid of rooms.

import { describe, expect, test } from 'vitest';
import { dewPoint, vapourPressure } from '../../core/calc/air.ts';
import { saturationPressure } from '../../core/calc/saturation.ts';
import { humidityFromWetBulb, humidityRatio, standardPressure } from '../../core/calc/wet-bulb.ts';
import { celsius, metres, pascals, percent } from '../../core/units.ts';
import { psychrometrics } from './psychrometrics.ts';
import { answered } from './published-case.ts';

const steps = (from: number, to: number, by: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, index) => from + index * by);
const humidities = steps(1, 100, 3);
const rooms = (airs: readonly number[]) => airs.flatMap((air) => humidities.map((humidity) => ({ air, humidity })));
const largest = (differences: readonly number[]): number => differences.reduce((a, b) => Math.max(a, Math.abs(b)), 0);

const dew = (air: number, humidity: number): number => answered(dewPoint(celsius(air), percent(humidity)));

describe('air beside psychrolib', () => {
  test('given rooms of 0 to 60 degC, the dew point agrees within 0.02 degC', () => {
    const differences = rooms(steps(0, 60, 1)).map(
      ({ air, humidity }) => dew(air, humidity) - psychrometrics.GetTDewPointFromRelHum(air, humidity / 100),
    );
    expect(differences).toHaveLength(61 * 34);
    expect(largest(differences)).toBeLessThan(0.02);
  });

  test('given rooms below 0 degC, it agrees for the same vapour, and is never lower than from humidity over ice', () => {
    for (const { air, humidity } of rooms(steps(-45, -1, 2))) {
      const ours = dew(air, humidity);
      const vapour = answered(vapourPressure(celsius(air), percent(humidity)));
      expect(Math.abs(ours - psychrometrics.GetTDewPointFromVapPres(60, vapour))).toBeLessThan(0.02);
      expect(ours).toBeGreaterThan(psychrometrics.GetTDewPointFromRelHum(air, humidity / 100) - 0.001);
    }
  });

  test('given every tenth of a degree from -100 to 200 degC, the saturation pressure agrees within a millionth', () => {
    for (const at of steps(-100, 200, 0.1).map((degrees) => Math.min(200, degrees))) {
      const theirs = psychrometrics.GetSatVapPres(at);
      expect(Math.abs(answered(saturationPressure(celsius(at))) / theirs - 1)).toBeLessThan(1e-6);
    }
  });

  test('given a wet bulb at sea level and at 2,000 m, the humidity agrees within 0.05 %', () => {
    let compared = 0;
    for (const pressure of [101_325, answered(standardPressure(metres(2000)))]) {
      for (const { air, humidity } of rooms(steps(5, 60, 5))) {
        const wet = psychrometrics.GetTWetBulbFromRelHum(air, humidity / 100, pressure);
        if (wet < 0.01 || wet > air) continue;
        const theirs = 100 * psychrometrics.GetRelHumFromTWetBulb(air, wet, pressure);
        // Drier than the library's own wet bulb can tell apart.
        if (theirs < 0.1) continue;
        compared += 1;
        const ours = answered(humidityFromWetBulb(celsius(air), celsius(wet), pascals(pressure)));
        expect(Math.abs(ours - theirs)).toBeLessThan(0.05);
      }
    }
    expect(compared).toBeGreaterThan(600);
  });

  test('given rooms of 0 to 60 degC, the humidity ratio agrees within 0.01 g/kg', () => {
    const differences = rooms(steps(0, 60, 5)).map(({ air, humidity }) => {
      const vapour = answered(vapourPressure(celsius(air), percent(humidity)));
      const ours = answered(humidityRatio(vapour, pascals(101_325)));
      return 1000 * (ours - psychrometrics.GetHumRatioFromRelHum(air, humidity / 100, 101_325));
    });
    expect(largest(differences)).toBeLessThan(0.01);
  });

  test('given altitudes to 11,000 m, the standard pressure agrees within 1 Pa', () => {
    for (const altitude of steps(0, 11_000, 500)) {
      const ours = answered(standardPressure(metres(altitude)));
      expect(Math.abs(ours - psychrometrics.GetStandardAtmPressure(altitude))).toBeLessThan(1);
    }
  });
});
