// The ends of what each sum about air, vapour, gas, salts and solvent accepts: answered at both ends, refused just past
// them, and the refusal names the input and the ends.

import { describe, expect, test } from 'vitest';
import * as air from '../../../core/calc/air.ts';
import { checkClimate } from '../../../core/calc/climate-window.ts';
import * as exposure from '../../../core/calc/exposure.ts';
import { flammableCategory, flushFlashPoint, handledAs } from '../../../core/calc/flammable.ts';
import * as gas from '../../../core/calc/gas.ts';
import { batchOvenFlow } from '../../../core/calc/oven-air.ts';
import { maximumUse } from '../../../core/calc/respirators.ts';
import * as room from '../../../core/calc/room-oxygen.ts';
import { conductivityAt25, saltDensity } from '../../../core/calc/salts.ts';
import * as saturation from '../../../core/calc/saturation.ts';
import { solvents } from '../../../core/calc/solvents.ts';
import * as vapour from '../../../core/calc/vapour.ts';
import * as fan from '../../../core/calc/ventilation.ts';
import * as voc from '../../../core/calc/voc.ts';
import { humidityFromWetBulb, humidityRatio, standardPressure } from '../../../core/calc/wet-bulb.ts';

/** Any number under any brand, past the makers. */
const n = <Q extends number>(value: number): Q => value as Q;
const acetone = (litres: number) => [{ solvent: solvents.acetone, litres: n<never>(litres) }];
const can = { headspace: n<never>(10), from: n<never>(20.9), gasOxygen: n<never>(0) };
const patch = { patch: n<never>(12.5), water: n<never>(15), before: n<never>(2), after: n<never>(7) };
const coat = { volume: n<never>(10), voc: n<never>(100), water: n<never>(0), exempt: n<never>(0) };
const breathed = { solvent: solvents.acetone, litres: n<never>(1), limitPpm: n<never>(50) };
const peak = { averagePpm: n<never>(10), ceilingPpm: n<never>(25), peakPpm: n<never>(50), peakMinutes: n<never>(10) };
const caps = { limitPpm: n<never>(50), idlhPpm: n<never>(900) };
const day = { airCelsius: n<never>(20), humidityPercent: n<never>(50), surfaceCelsius: n<never>(18) };
const amount = [0, 1e9] as const;
const size = [1e-9, 1e9] as const;

type Edge = readonly [sum: string, what: string, ends: readonly [number, number], ours: (value: number) => unknown];

const edges: readonly Edge[] = [
  ['dewPoint', 'air-temperature', [-45, 60], (v) => air.dewPoint(n(v), n(50))],
  ['vapourPressure', 'relative-humidity', [0, 100], (v) => air.vapourPressure(n(20), n(v))],
  ['humidityAtSurface', 'surface-temperature', [-100, 200], (v) => air.humidityAtSurface(n(20), n(50), n(v))],
  ['saturationPressure', 'temperature', [-100, 200], (v) => saturation.saturationPressure(n(v))],
  ['liquidSaturationPressure', 'temperature', [-45, 200], (v) => saturation.liquidSaturationPressure(n(v))],
  ['humidityFromWetBulb', 'air-pressure', [50_000, 110_000], (v) => humidityFromWetBulb(n(20), n(15), n(v))],
  ['humidityFromWetBulb', 'wet-bulb', [0, 1], (v) => humidityFromWetBulb(n(1), n(v), n(101_325))],
  ['humidityRatio', 'air-pressure', [50_000, 110_000], (v) => humidityRatio(n(1000), n(v))],
  ['humidityRatio', 'vapour-pressure', [0, 99_000], (v) => humidityRatio(n(v), n(100_000))],
  ['standardPressure', 'altitude', [0, 11_000], (v) => standardPressure(n(v))],
  ['checkClimate', 'leastSpreadCelsius', [-273.15, 1000], (v) => checkClimate({ leastSpreadCelsius: n(v) }, day)],
  ['checkClimate', 'surface-temperature', [-100, 200], (v) => checkClimate({}, { ...day, surfaceCelsius: n(v) })],
  ['airToStayBelow', 'vapour', amount, (v) => vapour.airToStayBelow(n(v), n(2), n(0.25))],
  ['airToStayBelow', 'lower-explosive-limit', [0.1, 50], (v) => vapour.airToStayBelow(n(1), n(v), n(0.25))],
  ['airToStayBelow', 'share-of-lel', [0.01, 1], (v) => vapour.airToStayBelow(n(1), n(2), n(v))],
  ['airForSolvents', 'solvent-volume', [0, 1e6], (v) => vapour.airForSolvents(acetone(v), n(0.25))],
  ['vapourFromDensity', 'density', [0.1, 25], (v) => vapour.vapourFromDensity(n(v), n(60))],
  ['vapourFromDensity', 'molar-mass', [1, 1000], (v) => vapour.vapourFromDensity(n(1), n(v))],
  ['flowForSolvents', 'duration', size, (v) => fan.flowForSolvents(acetone(1), n(v), n(0.25))],
  ['flowForExposure', 'duration', size, (v) => fan.flowForExposure([breathed], n(v), 1)],
  ['flowForExposure', 'mixing-factor', [1, 100], (v) => fan.flowForExposure([], n(60), v)],
  [
    'flowForExposure',
    'exposure-limit',
    [1e-6, 1e6],
    (v) => fan.flowForExposure([{ solvent: solvents.acetone, litres: n(1), limitPpm: n(v) }], n(60), 1),
  ],
  ['faceFlow', 'face-area', amount, (v) => fan.faceFlow(n(v), n(0.5))],
  ['faceFlow', 'face-velocity', amount, (v) => fan.faceFlow(n(1), n(v))],
  ['flowAtTemperature', 'flow', amount, (v) => fan.flowAtTemperature(n(v), n(90))],
  ['flowAtTemperature', 'air-temperature', [-45, 1000], (v) => fan.flowAtTemperature(n(1), n(v))],
  ['purgeBeforeHeat', 'oven-volume', size, (v) => fan.purgeBeforeHeat(n(v), n(6))],
  ['purgeBeforeHeat', 'flow', size, (v) => fan.purgeBeforeHeat(n(1), n(v))],
  ['batchOvenFlow', 'solvent-volume', [0, 1e6], (v) => batchOvenFlow(acetone(v), n(90))],
  ['batchOvenFlow', 'oven-temperature', [0, 260], (v) => batchOvenFlow(acetone(1), n(v))],
  ['milligramsFromPpm', 'ppm', [0, 1e6], (v) => exposure.milligramsFromPpm(n(v), n(92))],
  ['milligramsFromPpm', 'molar-mass', [1, 1000], (v) => exposure.milligramsFromPpm(n(10), n(v))],
  ['ppmFromMilligrams', 'vapour-mass', amount, (v) => exposure.ppmFromMilligrams(n(v), n(92))],
  ['ppmFromMilligrams', 'molar-mass', [1, 1000], (v) => exposure.ppmFromMilligrams(n(10), n(v))],
  ['dayAverage', 'ppm', [0, 1e6], (v) => exposure.dayAverage([{ ppm: n(v), hours: n(1) }])],
  ['dayAverage', 'hours', [0, 24], (v) => exposure.dayAverage([{ ppm: n(1), hours: n(v) }])],
  ['mixtureIndex', 'ppm', [0, 1e6], (v) => exposure.mixtureIndex([{ ppm: n(v), limitPpm: n(1) }])],
  ['mixtureIndex', 'exposure-limit', size, (v) => exposure.mixtureIndex([{ ppm: n(1), limitPpm: n(v) }])],
  ['checkPeaks', 'average-limit', size, (v) => exposure.checkPeaks({ ...peak, averagePpm: n(v) }, [])],
  ['checkPeaks', 'ceiling', size, (v) => exposure.checkPeaks({ ...peak, ceilingPpm: n(v) }, [])],
  ['checkPeaks', 'peak', size, (v) => exposure.checkPeaks({ ...peak, peakPpm: n(v) }, [])],
  ['checkPeaks', 'peak-minutes', [0, 1440], (v) => exposure.checkPeaks({ ...peak, peakMinutes: n(v) }, [])],
  ['flammableCategory', 'flash-point', [-273.15, 1000], (v) => flammableCategory(n(v), n(100))],
  ['flammableCategory', 'boiling-point', [-273.15, 1000], (v) => flammableCategory(n(10), n(v))],
  ['handledAs', 'liquid-temperature', [-273.15, 1000], (v) => handledAs(n(10), n(100), n(v))],
  ['flushFlashPoint', 'flash-point', [-273.15, 1000], (v) => flushFlashPoint(n(v), [n(20)])],
  ['flushFlashPoint', 'flash-point', [-273.15, 1000], (v) => flushFlashPoint(n(20), [n(v)])],
  ['maximumUse', 'protection-factor', [1, 10_000], (v) => maximumUse(v, caps)],
  ['maximumUse', 'exposure-limit', [1e-6, 1e6], (v) => maximumUse(10, { ...caps, limitPpm: n(v) })],
  ['maximumUse', 'idlh', [0, 1e6], (v) => maximumUse(10, { ...caps, idlhPpm: n(v) })],
  ['maximumUse', 'highest-use', [0, 1e6], (v) => maximumUse(10, { ...caps, highestUsePpm: n(v) })],
  ['maximumUse', 'lower-explosive-limit', [0.1, 50], (v) => maximumUse(10, { ...caps, lelPercent: n(v) })],
  ['purgeVolume', 'headspace', size, (v) => gas.purgeVolume({ ...can, headspace: n(v) }, n(10))],
  ['purgeVolume', 'oxygen', [0, 100], (v) => gas.purgeVolume({ ...can, from: n(v) }, n(10))],
  ['purgeVolume', 'oxygen-in-gas', [0, 20.9], (v) => gas.purgeVolume({ ...can, gasOxygen: n(v) }, n(20.9))],
  ['purgeVolume', 'oxygen-target', [0, 100], (v) => gas.purgeVolume(can, n(v))],
  ['oxygenAfterPurge', 'purge-gas', amount, (v) => gas.oxygenAfterPurge(can, n(v))],
  ['purgeTime', 'gas-flow', size, (v) => gas.purgeTime(can, n(1), n(v))],
  ['oxygenAfterRelease', 'room', size, (v) => room.oxygenAfterRelease(n(v), n(1))],
  ['oxygenAfterRelease', 'released-gas', amount, (v) => room.oxygenAfterRelease(n(30), n(v))],
  ['saltDensity', 'patch-area', size, (v) => saltDensity({ ...patch, patch: n(v) }, 'iso-mix')],
  ['saltDensity', 'water-volume', size, (v) => saltDensity({ ...patch, water: n(v) }, 'iso-mix')],
  [
    'saltDensity',
    'water-conductivity',
    [0, 1e6],
    (v) => saltDensity({ ...patch, before: n(v), after: n(v) }, 'iso-mix'),
  ],
  ['saltDensity', 'extract-conductivity', [2, 1e6], (v) => saltDensity({ ...patch, after: n(v) }, 'iso-mix')],
  ['conductivityAt25', 'conductivity', amount, (v) => conductivityAt25(n(v), n(20))],
  ['conductivityAt25', 'solution-temperature', [5, 40], (v) => conductivityAt25(n(10), n(v))],
  ['vocContent', 'volume', [1e-6, 1e6], (v) => voc.vocContent({ ...coat, volume: n(v) })],
  ['vocContent', 'voc-mass', [0, 1e10], (v) => voc.vocContent({ ...coat, voc: n(v) })],
  ['pouredTogether', 'water', [0, 10], (v) => voc.pouredTogether([{ ...coat, water: n(v) }])],
  ['pouredTogether', 'exempt-solvent', [0, 10], (v) => voc.pouredTogether([{ ...coat, exempt: n(v) }])],
  ['liquidOfContent', 'volume', [0, 1e6], (v) => voc.liquidOfContent(n(v), n(250))],
  ['liquidOfContent', 'voc-content', [0, 25_000], (v) => voc.liquidOfContent(n(1), n(v))],
  ['exemptLiquid', 'volume', [0, 1e6], (v) => voc.exemptLiquid(n(v))],
];

const justBelow = (end: number): number => end - Math.max(Math.abs(end) * 1e-9, 1e-12);
const justAbove = (end: number): number => end + Math.max(Math.abs(end) * 1e-9, 1e-12);

describe('given an input at the ends of what a sum accepts', () => {
  for (const [sum, what, [lowest, highest], ours] of edges) {
    test(`${sum} takes ${what} from ${lowest} to ${highest} and refuses past them`, () => {
      expect(ours(lowest)).not.toMatchObject({ failed: 'out-of-range' });
      expect(ours(highest)).not.toMatchObject({ failed: 'out-of-range' });
      const refusal = { failed: 'out-of-range', what, lowest, highest };
      expect(ours(justBelow(lowest))).toEqual({ ...refusal, given: justBelow(lowest) });
      expect(ours(justAbove(highest))).toEqual({ ...refusal, given: justAbove(highest) });
      expect(ours(Number.NaN)).toHaveProperty('failed', 'out-of-range');
    });
  }
});
