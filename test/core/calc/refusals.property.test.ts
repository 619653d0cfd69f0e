// Whatever number comes in, a sum answers with a finite number or a refusal: never NaN, never infinity, never a throw.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { astmCrossCut, isoCrossCut } from '../../../core/calc/adhesion.ts';
import { coatingNeed, dryFilmFromUse, totalArea } from '../../../core/calc/coating-need.ts';
import { massFromVolume, mixedDensity, mixedVolume, volumeFromMass } from '../../../core/calc/density.ts';
import { temperatureToFinish, temperatureToLast } from '../../../core/calc/dose-inverse.ts';
import { dryFilmFrom, theoreticalCoverage, wetFilmFor } from '../../../core/calc/film-build.ts';
import { filmCount } from '../../../core/calc/film-count.ts';
import { gaugeFitness, judgeByJobRule } from '../../../core/calc/film-job-rule.ts';
import { correctedReading, judgeNominal, readingsNeeded } from '../../../core/calc/film-nominal.ts';
import { filmStatistics } from '../../../core/calc/film-readings.ts';
import { filmLimits, judgeArea, spotMeasurement } from '../../../core/calc/film-spots.ts';
import { biotNumber, minutesToReach, temperatureAfter, timeConstant } from '../../../core/calc/heating.ts';
import { heatProperties } from '../../../core/calc/metals.ts';
import { ratioError, splitByVolume, splitByWeight, splitFill, splitMass } from '../../../core/calc/mixing.ts';
import { repair } from '../../../core/calc/mixing-repair.ts';
import { partAFor, partBFor } from '../../../core/calc/mixing-tolerance.ts';
import { piecesFromReadings, provedTime } from '../../../core/calc/part-temperature.ts';
import { mostWorthMixing } from '../../../core/calc/pot-reach.ts';
import { preStir } from '../../../core/calc/pre-stir.ts';
import { thinnerFor, thinnerShare } from '../../../core/calc/thinner.ts';
import { expectedDryFilm } from '../../../core/calc/wet-film.ts';
import { isFailed } from '../../../core/failed.ts';
import { stirLaw } from './demo-stir.ts';
import { between } from './drawn.ts';

/** A value as it would come in if nobody had checked it: past the makers, with any brand. */
const unchecked = <Q extends number>(value: number): Q => value as Q;
type Draw = <Q extends number>() => Q;

const sums: Readonly<Record<string, (n: Draw) => unknown>> = {
  splitByWeight: (n) => splitByWeight(n(), parts(n)),
  splitByVolume: (n) => splitByVolume(n(), parts(n), densities(n)),
  splitMass: (n) => splitMass(n(), { basis: 'volume', ...parts(n), densities: densities(n) }),
  splitFill: (n) => splitFill(n(), { basis: 'weight', ...parts(n), densities: densities(n) }),
  ratioError: (n) => ratioError({ basis: 'volume', ...parts(n), densities: densities(n) }, weights(n)),
  partAFor: (n) => partAFor({ basis: 'weight', ...parts(n) }, tolerance(n), n()),
  partBFor: (n) => partBFor({ basis: 'weight', ...parts(n) }, tolerance(n), n()),
  repair: (n) => repair({ basis: 'weight', ...parts(n), densities: densities(n) }, tolerance(n), weights(n), n()),
  massFromVolume: (n) => massFromVolume(n(), n()),
  volumeFromMass: (n) => volumeFromMass(n(), n()),
  mixedVolume: (n) => mixedVolume(n(), n(), densities(n)),
  mixedDensity: (n) => mixedDensity(n(), n(), densities(n)),
  thinnerFor: (n) => thinnerFor(n(), n(), n()),
  thinnerShare: (n) => thinnerShare(n(), n()),
  preStir: (n) =>
    preStir(
      [
        { partAGrams: n(), minutes: n() },
        { partAGrams: n(), minutes: n() },
      ],
      n(),
    ),
  temperatureToFinish: (n) => temperatureToFinish(stirLaw, n(), n()),
  temperatureToLast: (n) => temperatureToLast(stirLaw, n(), n()),
  wetFilmFor: (n) => wetFilmFor(n(), make(n)),
  dryFilmFrom: (n) => dryFilmFrom(n(), make(n)),
  theoreticalCoverage: (n) => theoreticalCoverage(n(), n()),
  totalArea: (n) =>
    totalArea([
      { count: n(), eachSquareMetres: n() },
      { count: n(), eachSquareMetres: n() },
    ]),
  coatingNeed: (n) => coatingNeed(n(), n(), make(n), losses(n)),
  dryFilmFromUse: (n) => dryFilmFromUse(n(), n(), make(n), losses(n)),
  mostWorthMixing: (n) => mostWorthMixing(n(), pace(n)),
  filmStatistics: (n) => filmStatistics([n(), n()]),
  spotMeasurement: (n) => spotMeasurement([n(), n(), n()]),
  filmCount: (n) => filmCount(n()),
  filmLimits: (n) => filmLimits(filmRange(n), 4),
  judgeArea: (n) => judgeArea([n(), n(), n(), n(), n()], filmRange(n), 3),
  correctedReading: (n) => correctedReading(n(), 'fine'),
  readingsNeeded: (n) => readingsNeeded(n()),
  judgeNominal: (n) => judgeNominal([n(), n()], n(), { nominalMicrometres: n(), mostMicrometres: n() }),
  gaugeFitness: (n) => gaugeFitness(filmRange(n), gauge(n), n()),
  judgeByJobRule: (n) =>
    judgeByJobRule([n(), n()], { ...filmRange(n), leastReadings: n(), judged: 'each-reading' }, gauge(n)),
  expectedDryFilm: (n) => expectedDryFilm({ wettedMicrometres: n(), dryMicrometres: n() }, make(n)),
  astmCrossCut: (n) => astmCrossCut(n()),
  isoCrossCut: (n) => isoCrossCut(n()),
  biotNumber: (n) => biotNumber(lump(n), air(n)),
  timeConstant: (n) => timeConstant(steelLump(n), air(n)),
  minutesToReach: (n) => minutesToReach(steelLump(n), air(n), n(), n()),
  temperatureAfter: (n) => temperatureAfter(steelLump(n), air(n), n(), n()),
  provedTime: (n) =>
    provedTime(
      [
        { at: n(), celsius: n() },
        { at: n(), celsius: n() },
      ],
      n(),
      n(),
    ),
  piecesFromReadings: (n) =>
    piecesFromReadings(
      [
        { at: n(), celsius: n() },
        { at: n(), celsius: n() },
      ],
      'at-most',
      n(),
    ),
};

const parts = (n: Draw) => ({ partsA: n(), partsB: n() });
const weights = (n: Draw) => ({ partAGrams: n(), partBGrams: n() }) as Parameters<typeof ratioError>[1];
const densities = (n: Draw) =>
  ({ partAKilogramsPerLitre: n(), partBKilogramsPerLitre: n() }) as Parameters<typeof mixedVolume>[2];
const tolerance = (n: Draw) => ({ under: n(), over: n() }) as Parameters<typeof partAFor>[1];
const make = (n: Draw) => ({ volumeSolids: n(), thinnerShare: n() }) as Parameters<typeof wetFilmFor>[1];
const losses = (n: Draw) =>
  ({
    transferEfficiency: n(),
    profileLitresPerSquareMetre: n(),
    hoseLitres: n(),
    gunLitres: n(),
    filterLitres: n(),
  }) as Parameters<typeof coatingNeed>[3];
const pace = (n: Draw) =>
  ({ squareMetresPerMinute: n(), litresPerSquareMetre: n(), gearLitres: n() }) as Parameters<typeof mostWorthMixing>[1];
const filmRange = (n: Draw) => ({ leastMicrometres: n(), mostMicrometres: n() }) as Parameters<typeof filmLimits>[0];
const gauge = (n: Draw) => ({ fixedMicrometres: n(), share: n() }) as Parameters<typeof gaugeFitness>[1];
const lump = (n: Draw) =>
  ({
    metal: { kilogramsPerCubicMetre: n(), wattsPerMetreKelvin: n(), joulesPerKilogramKelvin: n() },
    characteristicMetres: n(),
  }) as Parameters<typeof biotNumber>[0];
/** Where any metal would leave too few draws that are reached at all. */
const steelLump = (n: Draw) =>
  ({ metal: heatProperties.steel, characteristicMetres: n() }) as Parameters<typeof biotNumber>[0];
const air = (n: Draw) => ({ celsius: n(), wattsPerSquareMetreKelvin: n() }) as Parameters<typeof biotNumber>[1];

const aPlausibleNumber = fc.oneof(between(0.01, 1), between(1, 500));
const aWildNumber = fc.oneof(
  { weight: 6, arbitrary: aPlausibleNumber },
  { weight: 1, arbitrary: fc.double() },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      Number.NaN,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      0,
      -0,
      -1,
      5e-324,
      1.7e308,
      1e9,
      1e-3,
    ),
  },
);
const fourteen = { minLength: 14, maxLength: 14 };
/** Half the draws are plausible throughout, so that the sums themselves are reached and not only their doors. */
const aDraw = fc.oneof(fc.array(aPlausibleNumber, fourteen), fc.array(aWildNumber, fourteen));

const isRefusal = (value: unknown) => typeof value === 'object' && value !== null && isFailed(value);

function everyNumberIsFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value === 'object' && value !== null) return Object.values(value).every(everyNumberIsFinite);
  return true;
}

it.each(Object.entries(sums))('given any numbers, then %s answers or refuses', (_, sum) => {
  let answered = 0;
  let refused = 0;
  fc.assert(
    fc.property(aDraw, (numbers) => {
      let next = 0;
      const answer = sum(() => {
        const drawn = numbers[next % numbers.length] ?? 0;
        next += 1;
        return unchecked(drawn);
      });
      if (isRefusal(answer)) {
        refused += 1;
        return;
      }
      answered += 1;
      expect(everyNumberIsFinite(answer), JSON.stringify(answer)).toBe(true);
    }),
    { numRuns: 1000 },
  );
  expect(refused).toBeGreaterThan(0);
  expect(answered).toBeGreaterThan(0);
});
