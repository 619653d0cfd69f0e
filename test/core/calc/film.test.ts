// Film readings as numbers, a job's own rule for thin films, and the comb in a wet film. The published acceptance rules
// have their own tests among the standards.

import { describe, expect, it } from 'vitest';
import { astmCrossCut, isoCrossCut } from '../../../core/calc/adhesion.ts';
import { filmCount } from '../../../core/calc/film-count.ts';
import { type GaugeError, gaugeFitness, type JobFilmRule, judgeByJobRule } from '../../../core/calc/film-job-rule.ts';
import { correctedReading, judgeNominal, readingsNeeded } from '../../../core/calc/film-nominal.ts';
import { filmStatistics, isAbove, isBelow } from '../../../core/calc/film-readings.ts';
import { filmLimits, judgeArea, spotMeasurement } from '../../../core/calc/film-spots.ts';
import { expectedDryFilm } from '../../../core/calc/wet-film.ts';
import { fraction, type Micrometres, micrometres, percent, squareMetres } from '../../../core/units.ts';

const um = (...films: readonly number[]): readonly Micrometres[] => films.map(micrometres);

describe('statistics of film readings', () => {
  it('given 12, 14, 13, 17 um, then mean 14, deviation 2.160, variation 15.4 %', () => {
    expect(filmStatistics(um(12, 14, 13, 17))).toEqual({
      count: 4,
      meanMicrometres: 14,
      lowestMicrometres: 12,
      highestMicrometres: 17,
      // Squares 4 + 0 + 1 + 9 = 14, over 3 readings of freedom.
      standardDeviationMicrometres: Math.sqrt(14 / 3),
      variation: Math.sqrt(14 / 3) / 14,
    });
  });

  it('given one reading, then it has no deviation; given none, then nothing is said', () => {
    expect(filmStatistics(um(12))).toMatchObject({
      count: 1,
      standardDeviationMicrometres: undefined,
      variation: undefined,
    });
    expect(filmStatistics([])).toEqual({ failed: 'does-not-apply', what: 'film readings', given: 0, limit: 1 });
  });

  it('given two readings, then they have a deviation: 10 and 14 um, 2.83', () => {
    expect(filmStatistics(um(10, 14))).toMatchObject({ standardDeviationMicrometres: Math.sqrt(8) });
  });

  it('given a mean at or below zero, then a variation would say nothing', () => {
    expect(filmStatistics(um(-1, 1))).toMatchObject({ meanMicrometres: 0, variation: undefined });
  });

  it('given a reading that no gauge shows, then it is refused, and the ends are not', () => {
    expect(filmStatistics(um(-1001))).toMatchObject({ failed: 'out-of-range', what: 'film reading' });
    expect(filmStatistics(um(100_001))).toMatchObject({ what: 'film reading' });
    expect(filmStatistics(um(-1000, 100_000))).toMatchObject({ count: 2 });
  });

  it('given a limit, then only what differs by more than a rounding lies beyond it', () => {
    expect([isBelow(10, 10), isBelow(10 - 1e-12, 10), isBelow(9.999, 10)]).toEqual([false, false, true]);
    expect([isAbove(10, 10), isAbove(10 + 1e-12, 10), isAbove(10.001, 10)]).toEqual([false, false, true]);
  });
});

/** An invented job: 8 to 16 um of a clear coat, five readings. */
const thin: JobFilmRule = {
  leastMicrometres: micrometres(8),
  mostMicrometres: micrometres(16),
  leastReadings: 5,
  judged: 'each-reading',
};
const fine: GaugeError = { fixedMicrometres: micrometres(0.5), share: fraction(0.02) };
const coarse: GaugeError = { fixedMicrometres: micrometres(1.5), share: fraction(0.03) };

describe('a job with its own rule for a thin film', () => {
  it('given a band of 4 um either way, then a gauge good to 0.5 um can tell and one of 1.5 cannot', () => {
    expect(gaugeFitness(thin, fine, fraction(0.25))).toEqual({
      errorMicrometres: 0.5,
      halfBandMicrometres: 4,
      canTell: true,
    });
    expect(gaugeFitness(thin, coarse, fraction(0.25))).toMatchObject({ errorMicrometres: 1.5, canTell: false });
  });

  it('given an error of just the allowed share, then it can tell', () => {
    const quarter = { fixedMicrometres: micrometres(1), share: fraction(0) };
    expect(gaugeFitness(thin, quarter, fraction(0.25))).toMatchObject({ canTell: true });
  });

  it('given an error as a share of the reading, then the top of the band decides', () => {
    const tenth = { fixedMicrometres: micrometres(0.5), share: fraction(0.1) };
    expect(gaugeFitness(thin, tenth, fraction(0.25))).toMatchObject({ errorMicrometres: 1.6, canTell: false });
  });

  it('given five readings well within, then within', () => {
    expect(judgeByJobRule(um(9, 10, 12, 14, 15), thin, fine)).toEqual({
      verdict: 'within',
      meanMicrometres: 12,
      outside: [],
      doubtful: [],
    });
  });

  it('given a reading whose error reaches past a limit, then nobody can tell', () => {
    expect(judgeByJobRule(um(8.4, 10, 12, 14, 15), thin, fine)).toMatchObject({
      verdict: 'cannot-tell',
      doubtful: [8.4],
    });
    expect(judgeByJobRule(um(7.6, 10, 12, 14, 15.8), thin, fine)).toMatchObject({
      verdict: 'cannot-tell',
      outside: [],
      doubtful: [7.6, 15.8],
    });
  });

  it('given an error that ends just at a limit, then within; and a reading that far past it may still be within', () => {
    expect(judgeByJobRule(um(8.5, 10, 12, 14, 15.5), thin, fine)).toMatchObject({ verdict: 'within' });
    expect(judgeByJobRule(um(7.5, 10, 12, 14, 16.5), thin, fine)).toMatchObject({
      verdict: 'cannot-tell',
      outside: [],
    });
  });

  it('given a reading past a limit by more than the error, then outside, however few there are', () => {
    expect(judgeByJobRule(um(7.4, 12), thin, fine)).toMatchObject({ verdict: 'outside', outside: [7.4], doubtful: [] });
    expect(judgeByJobRule(um(12, 16.6), thin, fine)).toMatchObject({ verdict: 'outside', outside: [16.6] });
  });

  it('given four readings where five are asked for, then they are too few', () => {
    expect(judgeByJobRule(um(9, 10, 12, 14), thin, fine)).toMatchObject({ verdict: 'too-few-readings' });
  });

  it('given a rule for the mean, then a single low reading does not decide', () => {
    const byMean: JobFilmRule = { ...thin, judged: 'mean' };
    expect(judgeByJobRule(um(7, 13, 13, 13, 14), byMean, fine)).toMatchObject({
      verdict: 'within',
      meanMicrometres: 12,
    });
    expect(judgeByJobRule(um(7, 7, 7, 7, 7), byMean, fine)).toMatchObject({ verdict: 'outside', outside: [7] });
  });

  it('given a rule or a gauge that cannot be, then each is refused by name', () => {
    expect(judgeByJobRule([], thin, fine)).toMatchObject({ what: 'film readings' });
    expect(judgeByJobRule(um(9), { ...thin, leastMicrometres: micrometres(0) }, fine)).toMatchObject({
      what: 'least film',
    });
    expect(judgeByJobRule(um(9), { ...thin, mostMicrometres: micrometres(7) }, fine)).toMatchObject({
      what: 'most film',
    });
    expect(judgeByJobRule(um(9), { ...thin, leastReadings: 0 }, fine)).toMatchObject({ what: 'readings asked for' });
    expect(judgeByJobRule(um(9), thin, { ...fine, fixedMicrometres: micrometres(-1) })).toMatchObject({
      what: 'gauge error',
    });
    expect(judgeByJobRule(um(9), { ...thin, leastReadings: 10_001 }, fine)).toMatchObject({
      what: 'readings asked for',
    });
    expect(gaugeFitness(thin, { ...fine, fixedMicrometres: micrometres(100_001) }, fraction(0.25))).toMatchObject({
      what: 'gauge error',
    });
  });
});

describe('a comb in a wet film', () => {
  const half = { volumeSolids: fraction(0.5), thinnerShare: fraction(0) };
  const comb = (wetted: number | undefined, dry: number | undefined) => ({
    wettedMicrometres: wetted === undefined ? undefined : micrometres(wetted),
    dryMicrometres: dry === undefined ? undefined : micrometres(dry),
  });

  it('given the 50 um tooth wetted and the 75 dry, then 25 to 37.5 um of dry film', () => {
    expect(expectedDryFilm(comb(50, 75), half)).toEqual({ leastMicrometres: 25, mostMicrometres: 37.5 });
  });

  it('given the same thinned by a quarter, then 20 to 30 um', () => {
    expect(expectedDryFilm(comb(50, 75), { ...half, thinnerShare: fraction(0.25) })).toEqual({
      leastMicrometres: 20,
      mostMicrometres: 30,
    });
  });

  it('given no tooth wetted, then from nothing; given all wetted, then no upper end', () => {
    expect(expectedDryFilm(comb(undefined, 25), half)).toEqual({ leastMicrometres: 0, mostMicrometres: 12.5 });
    expect(expectedDryFilm(comb(100, undefined), half)).toEqual({ leastMicrometres: 50, mostMicrometres: undefined });
  });

  it('given no reading at all, teeth the wrong way round, or no solids, then it is refused', () => {
    expect(expectedDryFilm(comb(undefined, undefined), half)).toEqual({ failed: 'no-figure', what: 'comb' });
    expect(expectedDryFilm(comb(75, 50), half)).toMatchObject({ what: 'first dry tooth', lowest: 75 });
    expect(expectedDryFilm(comb(50, 50), half)).toEqual({ leastMicrometres: 25, mostMicrometres: 25 });
    const none = { ...half, volumeSolids: fraction(0) };
    expect(expectedDryFilm(comb(50, 75), none)).toMatchObject({ what: 'volume solids' });
    expect(expectedDryFilm(comb(undefined, 75), none)).toMatchObject({ what: 'volume solids' });
    expect(expectedDryFilm(comb(50, 100_001), half)).toMatchObject({ what: 'first dry tooth' });
  });
});

describe('acceptance rules refuse what they cannot judge', () => {
  const range = { leastMicrometres: micrometres(200), mostMicrometres: micrometres(300) };
  const rule = { nominalMicrometres: micrometres(200), mostMicrometres: micrometres(600) };

  it('given areas without extent or of a whole county, then no count is given', () => {
    expect(filmCount(squareMetres(0))).toMatchObject({ what: 'coated area' });
    expect(filmCount(squareMetres(1e6 + 1))).toMatchObject({ what: 'coated area' });
    expect(readingsNeeded(squareMetres(0))).toMatchObject({ what: 'inspection area' });
    expect(readingsNeeded(squareMetres(1e6 + 1))).toMatchObject({ what: 'inspection area' });
  });

  it('given a range upside down or a film of nothing, then it is refused', () => {
    expect(filmLimits({ ...range, mostMicrometres: micrometres(199) }, 3)).toMatchObject({ what: 'most film' });
    expect(judgeArea(um(1, 1, 1, 1, 1), { ...range, leastMicrometres: micrometres(0) }, 3)).toMatchObject({
      what: 'least film',
    });
    expect(judgeNominal(um(1), squareMetres(1), { ...rule, mostMicrometres: micrometres(199) })).toMatchObject({
      what: 'most film',
    });
    expect(judgeNominal(um(1), squareMetres(1), { ...rule, nominalMicrometres: micrometres(0) })).toMatchObject({
      what: 'nominal film',
    });
  });

  it('given no readings or impossible ones, then they are refused', () => {
    expect(judgeNominal([], squareMetres(1), rule)).toMatchObject({ failed: 'does-not-apply', what: 'film readings' });
    expect(judgeNominal(um(200), squareMetres(0), rule)).toMatchObject({ what: 'inspection area' });
    expect(judgeArea(um(200, 200, 200, 200, 100_001), range, 3)).toMatchObject({ what: 'film reading' });
    expect(spotMeasurement(um(200, 200, 100_001))).toMatchObject({ what: 'film reading' });
    expect(correctedReading(micrometres(-1001), 'fine')).toMatchObject({ what: 'film reading' });
    expect(spotMeasurement(um(200, 210, 220))).toBe(210);
  });

  it('given fewer readings than the area wants, then that is a finding', () => {
    expect(judgeNominal(um(210, 210, 210, 210), squareMetres(1), rule)).toEqual({
      accepted: false,
      meanMicrometres: 210,
      findings: [{ what: 'too-few-readings', given: 4, needed: 5 }],
    });
    expect(judgeNominal(um(210, 210, 210, 210, 210), squareMetres(1), rule)).toMatchObject({ accepted: true });
  });

  it('given a removed area below nothing or above all, then no rating', () => {
    expect(astmCrossCut(percent(-0.1))).toMatchObject({ what: 'area removed' });
    expect(isoCrossCut(percent(100.1))).toMatchObject({ what: 'area removed' });
    expect([astmCrossCut(percent(100)), isoCrossCut(percent(100))]).toEqual(['0B', 5]);
  });
});
