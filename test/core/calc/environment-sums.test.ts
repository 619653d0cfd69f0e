// Plain cases of the sums about air, vapour, gas and solvent, for what the published values do not reach.

import { describe, expect, test } from 'vitest';
import { dewPoint } from '../../../core/calc/air.ts';
import { checkPeaks, dayAverage } from '../../../core/calc/exposure.ts';
import { dayLimitOf, lowestLimit, substances } from '../../../core/calc/exposure-limits.ts';
import { flammableCategory, flushFlashPoint } from '../../../core/calc/flammable.ts';
import { purgeVolume } from '../../../core/calc/gas.ts';
import { batchOvenFlow } from '../../../core/calc/oven-air.ts';
import { assignedProtectionFactor } from '../../../core/calc/respirators.ts';
import { saturationTemperature } from '../../../core/calc/saturation.ts';
import { solvents } from '../../../core/calc/solvents.ts';
import { vapourPerLitre } from '../../../core/calc/vapour.ts';
import { flowAtTemperature, flowForExposure, flowForSolvents } from '../../../core/calc/ventilation.ts';
import { exemptLiquid, pouredTogether, vocContent } from '../../../core/calc/voc.ts';
import { humidityFromWetBulb, seaLevelPressure } from '../../../core/calc/wet-bulb.ts';
import * as u from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';

const quarter = u.fraction(0.25);
const litre = u.litres(1);

describe('given solvent that evaporates', () => {
  test('when half a litre of acetone is wiped off in 10 minutes, then the flow is six times that of half a litre an hour', () => {
    const wiped = [{ solvent: solvents.acetone, litres: u.litres(0.5) }];
    // 44.0 ft3 a US gallon by density 0.3293 m3 a litre, at 0.625 %: 159 times the vapour.
    expect(answered(flowForSolvents(wiped, u.minutes(10), quarter))).toBeCloseTo(0.5 * 6 * 0.32931 * 159, 0);
    const breathed = wiped.map((part) => ({ ...part, limitPpm: u.partsPerMillion(250) }));
    expect(answered(flowForExposure(breathed, u.minutes(10), 1))).toBeCloseTo((0.5 * 6 * 0.32931) / 250e-6, -1);
  });

  test('when the stack is at 90 degC, then the fan moves 1.234 times the flow', () => {
    // 363.15 K over 294.26 K.
    expect(answered(flowAtTemperature(u.cubicMetresPerHour(100), u.celsius(90)))).toBeCloseTo(123.41, 2);
  });

  test('when a solvent needs more than 10,000 ft3 a gallon, then its batch oven needs more than the rule in proportion', () => {
    // o-xylene: 26.75 ft3 of vapour a gallon at 0.225 % is 11,862 ft3 of air, 1.186 of the rule's 440 cfm.
    for (const gallons of [0.25, 1, 4]) {
      const load = [{ solvent: solvents.xylene, litres: u.litresFromUsGallons(gallons) }];
      const flow = u.cubicFeetPerMinuteFromCubicMetresPerHour(answered(batchOvenFlow(load, u.celsius(90))));
      expect(flow / gallons / 440).toBeCloseTo(1.186, 2);
    }
  });

  test('when nothing evaporates, then no flow is needed', () => {
    expect(batchOvenFlow([{ solvent: solvents.xylene, litres: u.litres(0) }], u.celsius(90))).toBe(0);
    expect(flowForSolvents([], u.minutes(10), quarter)).toBe(0);
  });

  test('when only one of density and molar mass is known, then the tabled volume stands, or none', () => {
    const { tabledVapour, lowerExplosiveLimits } = solvents.acetone;
    const bare = { lowerExplosiveLimits };
    const tabled = { ...bare, ...(tabledVapour !== undefined && { tabledVapour }) };
    expect(vapourPerLitre({ ...tabled, density: u.kilogramsPerLitre(0.8) })).toBe(tabledVapour);
    expect(vapourPerLitre({ ...tabled, molarMass: u.gramsPerMole(58) })).toBe(tabledVapour);
    expect(vapourPerLitre(bare)).toEqual({ failed: 'no-figure', what: 'vapour-volume' });
    const absurd = { ...bare, density: u.kilogramsPerLitre(800), molarMass: u.gramsPerMole(58) };
    expect(vapourPerLitre(absurd)).toMatchObject({ failed: 'out-of-range', what: 'density' });
  });
});

describe('given exposure', () => {
  const ppm = u.partsPerMillion;
  const limit = { averagePpm: ppm(10), ceilingPpm: ppm(25), peakPpm: ppm(50), peakMinutes: u.minutes(10) };

  test('when a day is exactly at its average, then nothing is breached', () => {
    expect(checkPeaks(limit, [{ ppm: ppm(10), hours: u.hours(8) }])).toEqual({
      average: { ppm: 10, unsampledHours: 0 },
      aboveCeilingMinutes: 0,
      breaches: [],
    });
  });

  test('when three hours were sampled, then five were not; of twelve none', () => {
    expect(answered(dayAverage([{ ppm: ppm(8), hours: u.hours(3) }]))).toEqual({ ppm: 3, unsampledHours: 5 });
    expect(answered(dayAverage([{ ppm: ppm(8), hours: u.hours(12) }]))).toEqual({ ppm: 12, unsampledHours: 0 });
  });

  test('when more than a day is handed in, then it is refused', () => {
    const half = { ppm: ppm(8), hours: u.hours(13) };
    const refusal = { failed: 'out-of-range', what: 'hours', given: 26, lowest: 0, highest: 24 };
    expect(dayAverage([half, half])).toEqual(refusal);
    expect(checkPeaks(limit, [half, half])).toEqual(refusal);
  });

  test('when limits of several kinds stand, then each is found by its kind and the lowest wins', () => {
    const lowest = { body: 'mexico', kind: 'average', ppm: 20 };
    expect(answered(lowestLimit(substances.toluene, 'average'))).toMatchObject(lowest);
    expect(answered(lowestLimit(substances.toluene, 'short-term')).ppm).toBe(100);
    expect(answered(lowestLimit(substances.toluene, 'ceiling')).ppm).toBe(300);
    expect(answered(dayLimitOf(substances.hdi, 'niosh')).kind).toBe('average');
    const odd = {
      ...substances.mdi,
      limits: [{ body: 'osha', kind: 'ceiling', ppm: ppm(1), source: 'a test' }, ...substances.mdi.limits],
    } as const;
    expect(answered(dayLimitOf(odd, 'osha')).ppm).toBe(0.02);
    expect(answered(dayLimitOf({ ...odd, limits: odd.limits.toReversed() }, 'osha')).ppm).toBe(0.02);
    const reversed = {
      ...odd,
      limits: [{ body: 'osha', kind: 'average', ppm: ppm(3), source: 'a test' }, ...odd.limits],
    } as const;
    expect(answered(dayLimitOf(reversed, 'osha')).ppm).toBe(3);
    expect(lowestLimit(substances.ethanol, 'short-term')).toHaveProperty('failed', 'no-figure');
  });

  test('when a loose-fitting facepiece is asked, then a tested hood makes it no better', () => {
    expect(assignedProtectionFactor('powered-air-purifying', 'loose-fitting', 'maker-has-tested')).toBe(25);
    expect(assignedProtectionFactor('air-purifying', 'loose-fitting', 'none')).toEqual({
      failed: 'no-figure',
      what: 'protection-factor:air-purifying:loose-fitting',
    });
  });
});

describe('given flammable liquids', () => {
  test('when nobody read the boiling point, then the worst category counts', () => {
    expect(flammableCategory(u.celsius(10), undefined)).toBe('1');
    expect(flammableCategory(u.celsius(30), undefined)).toBe('3-below-100F');
  });

  test('when nobody knows what was sprayed, then a cold flush solvent has no figure and a warm one needs none', () => {
    expect(flushFlashPoint(u.celsius(12), [])).toEqual({ failed: 'no-figure', what: 'flash-point:sprayed' });
    expect(flushFlashPoint(u.celsius(50), [])).toBe('any-cleaning');
  });
});

describe('given gas', () => {
  const can = { headspace: u.litres(10), from: u.percent(20.9), gasOxygen: u.percent(1) };

  test('when the target is what the gas brings, then the refusal says so', () => {
    expect(purgeVolume(can, u.percent(1))).toEqual({
      failed: 'never-reached',
      what: 'oxygen-target',
      given: 1,
      limit: 1,
    });
  });

  test('when the headspace is beyond any vessel, then the gas is refused', () => {
    const vast = { headspace: u.litres(1e9), from: u.percent(20.9), gasOxygen: u.percent(0) };
    expect(purgeVolume(vast, u.percent(0.1))).toMatchObject({ failed: 'out-of-range', what: 'purge-gas' });
  });
});

describe('given the ends of the air equations', () => {
  test('when the air is bone dry, then the refusal names the humidity; when vapour is beyond them, the vapour', () => {
    expect(dewPoint(u.celsius(20), u.percent(0))).toMatchObject({ failed: 'out-of-range', what: 'relative-humidity' });
    expect(saturationTemperature(u.pascals(1e7))).toMatchObject({ failed: 'out-of-range', what: 'vapour-pressure' });
  });

  test('when the wet bulb is lower than bone-dry air makes it, then the refusal names it', () => {
    const refused = humidityFromWetBulb(u.celsius(40), u.celsius(5), seaLevelPressure);
    expect(refused).toMatchObject({ failed: 'out-of-range', what: 'wet-bulb', given: 5, highest: 40 });
  });

  test('when the air is hotter than any room, then the wet bulb is not looked at', () => {
    const refused = humidityFromWetBulb(u.celsius(61), u.celsius(20), seaLevelPressure);
    expect(refused).toMatchObject({ failed: 'out-of-range', what: 'air-temperature' });
  });
});

describe('given VOC', () => {
  test('when pure acetone is asked, then the refusal names what is missing', () => {
    expect(vocContent(answered(exemptLiquid(litre)))).toEqual({
      failed: 'does-not-apply',
      what: 'volume-less-water-and-exempt',
      given: 0,
      limit: 0,
    });
  });

  test('when water and exempt solvent together are more than the whole, then they are named', () => {
    const liquid = { volume: litre, voc: u.grams(0), water: u.litres(0.6), exempt: u.litres(0.6) };
    expect(pouredTogether([liquid])).toMatchObject({ failed: 'out-of-range', what: 'water-and-exempt', given: 1.2 });
  });

  test('when a volume is beyond any vessel, then it is named', () => {
    const liquid = { volume: u.litres(2e6), voc: u.grams(0), water: u.litres(0), exempt: u.litres(0) };
    expect(pouredTogether([liquid])).toMatchObject({ failed: 'out-of-range', what: 'volume' });
  });
});
