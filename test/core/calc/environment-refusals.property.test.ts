// Whatever number reaches a sum about air, vapour, gas, salts or solvent, the answer is a figure or a refusal: never
// NaN, never infinite, never a throw. The numbers here go past the makers on purpose.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as air from '../../../core/calc/air.ts';
import { checkClimate } from '../../../core/calc/climate-window.ts';
import * as exposure from '../../../core/calc/exposure.ts';
import { flammableCategory, flushFlashPoint, handledAs } from '../../../core/calc/flammable.ts';
import { oxygenAfterPurge, purgeTime, purgeVolume } from '../../../core/calc/gas.ts';
import { batchOvenFlow } from '../../../core/calc/oven-air.ts';
import { maximumUse } from '../../../core/calc/respirators.ts';
import { oxygenAfterRelease } from '../../../core/calc/room-oxygen.ts';
import { conductivityAt25, saltDensity } from '../../../core/calc/salts.ts';
import * as saturation from '../../../core/calc/saturation.ts';
import { solvents } from '../../../core/calc/solvents.ts';
import * as vapour from '../../../core/calc/vapour.ts';
import * as ventilation from '../../../core/calc/ventilation.ts';
import * as voc from '../../../core/calc/voc.ts';
import { humidityFromWetBulb, humidityRatio, standardPressure } from '../../../core/calc/wet-bulb.ts';
import { isFailed } from '../../../core/failed.ts';

const raw = <Q extends number>(value: number): Q => value as Q;
const load = (volume: number) => [{ solvent: solvents.xylene, litres: raw<never>(volume) }];
const headspace = (volume: number, from: number, own: number) => ({
  headspace: raw<never>(volume),
  from: raw<never>(from),
  gasOxygen: raw<never>(own),
});

type Sum = (a: number, b: number, c: number, d: number) => unknown;

const sums: Readonly<Record<string, Sum>> = {
  vapourPressure: (a, b) => air.vapourPressure(raw(a), raw(b)),
  dewPoint: (a, b) => air.dewPoint(raw(a), raw(b)),
  humidityAtSurface: (a, b, c) => air.humidityAtSurface(raw(a), raw(b), raw(c)),
  saturationPressure: (a) => saturation.saturationPressure(raw(a)),
  saturationTemperature: (a) => saturation.saturationTemperature(raw(a)),
  liquidSaturationPressure: (a) => saturation.liquidSaturationPressure(raw(a)),
  humidityFromWetBulb: (a, b, c) => humidityFromWetBulb(raw(a), raw(b), raw(c)),
  humidityRatio: (a, b) => humidityRatio(raw(a), raw(b)),
  standardPressure: (a) => standardPressure(raw(a)),
  checkClimate: (a, b, c, d) =>
    checkClimate(
      { leastSpreadCelsius: raw(d), highestAirCelsius: raw(c) },
      { airCelsius: raw(a), humidityPercent: raw(b), surfaceCelsius: raw(c) },
    ),
  airToStayBelow: (a, b, c) => vapour.airToStayBelow(raw(a), raw(b), raw(c)),
  airForSolvents: (a, b) => vapour.airForSolvents(load(a), raw(b)),
  vapourFromDensity: (a, b) => vapour.vapourFromDensity(raw(a), raw(b)),
  flowForSolvents: (a, b, c) => ventilation.flowForSolvents(load(a), raw(b), raw(c)),
  flowForExposure: (a, b, c, d) =>
    ventilation.flowForExposure([{ solvent: solvents.xylene, litres: raw(a), limitPpm: raw(b) }], raw(c), d),
  faceFlow: (a, b) => ventilation.faceFlow(raw(a), raw(b)),
  flowAtTemperature: (a, b) => ventilation.flowAtTemperature(raw(a), raw(b)),
  purgeBeforeHeat: (a, b) => ventilation.purgeBeforeHeat(raw(a), raw(b)),
  batchOvenFlow: (a, b) => batchOvenFlow(load(a), raw(b)),
  milligramsFromPpm: (a, b) => exposure.milligramsFromPpm(raw(a), raw(b)),
  ppmFromMilligrams: (a, b) => exposure.ppmFromMilligrams(raw(a), raw(b)),
  dayAverage: (a, b, c, d) =>
    exposure.dayAverage([
      { ppm: raw(a), hours: raw(b) },
      { ppm: raw(c), hours: raw(d) },
    ]),
  mixtureIndex: (a, b, c, d) =>
    exposure.mixtureIndex([
      { ppm: raw(a), limitPpm: raw(b) },
      { ppm: raw(c), limitPpm: raw(d) },
    ]),
  checkPeaks: (a, b, c, d) =>
    exposure.checkPeaks({ averagePpm: raw(a), ceilingPpm: raw(b), peakPpm: raw(c), peakMinutes: raw(d) }, [
      { ppm: raw(c), hours: raw(d) },
    ]),
  flammableCategory: (a, b) => flammableCategory(raw(a), raw(b)),
  handledAs: (a, b, c) => handledAs(raw(a), raw(b), raw(c)),
  flushFlashPoint: (a, b) => flushFlashPoint(raw(a), [raw(b)]),
  maximumUse: (a, b, c, d) => maximumUse(a, { limitPpm: raw(b), idlhPpm: raw(c), lelPercent: raw(d) }),
  purgeVolume: (a, b, c, d) => purgeVolume(headspace(a, b, c), raw(d)),
  oxygenAfterPurge: (a, b, c, d) => oxygenAfterPurge(headspace(a, b, c), raw(d)),
  purgeTime: (a, b, c, d) => purgeTime(headspace(a, b, 0), raw(c), raw(d)),
  oxygenAfterRelease: (a, b) => oxygenAfterRelease(raw(a), raw(b)),
  saltDensity: (a, b, c, d) => saltDensity({ patch: raw(a), water: raw(b), before: raw(c), after: raw(d) }, 'iso-mix'),
  conductivityAt25: (a, b) => conductivityAt25(raw(a), raw(b)),
  vocContent: (a, b, c, d) => voc.vocContent({ volume: raw(a), voc: raw(b), water: raw(c), exempt: raw(d) }),
  pouredTogether: (a, b, c, d) => voc.pouredTogether([{ volume: raw(a), voc: raw(b), water: raw(c), exempt: raw(d) }]),
  liquidOfContent: (a, b) => voc.liquidOfContent(raw(a), raw(b)),
  exemptLiquid: (a) => voc.exemptLiquid(raw(a)),
};

/** From plausible to absurd, so that answers as well as refusals are reached. */
const anyNumber = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }) },
  { weight: 6, arbitrary: fc.double({ min: 1, max: 100, noNaN: true }) },
  { weight: 3, arbitrary: fc.double({ min: 100, max: 2000, noNaN: true }) },
  { weight: 3, arbitrary: fc.double({ min: 40_000, max: 120_000, noNaN: true }) },
  { weight: 2, arbitrary: fc.double() },
  { weight: 1, arbitrary: fc.constantFrom(0, -0, 1e-320, 1e308, -1, Number.NaN, Infinity, -Infinity) },
);

function everyNumberIsFinite(answer: unknown): boolean {
  if (typeof answer === 'number') return Number.isFinite(answer);
  if (typeof answer !== 'object' || answer === null) return true;
  return Object.values(answer).every(everyNumberIsFinite);
}

describe('given any numbers at all', () => {
  for (const [name, sum] of Object.entries(sums)) {
    test(`${name} answers with figures or refuses`, () => {
      const reached = { answered: 0, refused: 0 };
      fc.assert(
        fc.property(anyNumber, anyNumber, anyNumber, anyNumber, (a, b, c, d) => {
          const answer = sum(a, b, c, d);
          const refused = isFailed(answer);
          reached[refused ? 'refused' : 'answered'] += 1;
          return refused || everyNumberIsFinite(answer);
        }),
        { numRuns: 3000 },
      );
      expect(reached.answered, 'answers reached').toBeGreaterThan(0);
      expect(reached.refused, 'refusals reached').toBeGreaterThan(0);
    });
  }
});
