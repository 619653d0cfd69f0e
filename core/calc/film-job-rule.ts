// A job's own rule for a film too thin for the usual ones, and whether the gauge can tell at all: a gauge that errs by
// two micrometres cannot judge a band of three.

import { type Fraction, type Micrometres, micrometres } from '../units.ts';
import { meanOf, refuseReadings } from './film-readings.ts';
import { type FilmRange, refuseRange } from './film-spots.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** As gauge makers state it: so many micrometres, or a share of the reading, whichever is more. */
export interface GaugeError {
  readonly fixedMicrometres: Micrometres;
  readonly share: Fraction;
}

export interface JobFilmRule extends FilmRange {
  readonly leastReadings: number;
  /** Whether each reading must lie within, or only their mean. */
  readonly judged: 'each-reading' | 'mean';
}

export interface GaugeFitness {
  /** The error at the top of the band, where it is largest. */
  readonly errorMicrometres: Micrometres;
  readonly halfBandMicrometres: Micrometres;
  readonly canTell: boolean;
}

/**
 * The gauge's error against half the band of any rule. `allowedShare` is how much of it the error may take: a quarter
 * is common practice in metrology (no source here).
 */
export function gaugeFitness(range: FilmRange, gauge: GaugeError, allowedShare: Fraction): Result<GaugeFitness> {
  const refused = refuseRange(range) ?? refuseGauge(gauge) ?? outOfRange('allowed share', allowedShare, 0, 1);
  if (refused !== undefined) return refused;
  const error = errorAt(range.mostMicrometres, gauge);
  const halfBand = (range.mostMicrometres - range.leastMicrometres) / 2;
  return {
    errorMicrometres: micrometres(error),
    halfBandMicrometres: micrometres(halfBand),
    canTell: error <= halfBand * allowedShare,
  };
}

export interface JobFilmVerdict {
  /** `cannot-tell`: with the gauge's error it may lie on either side of a limit. Not an acceptance. */
  readonly verdict: 'within' | 'outside' | 'cannot-tell' | 'too-few-readings';
  readonly meanMicrometres: Micrometres;
  /** Readings (or the mean) that are beyond a limit for certain, and those that may be. */
  readonly outside: readonly Micrometres[];
  readonly doubtful: readonly Micrometres[];
}

/** Within only where the whole of each reading's error lies within; outside only where the whole lies outside. */
export function judgeByJobRule(
  readings: readonly Micrometres[],
  rule: JobFilmRule,
  gauge: GaugeError,
): Result<JobFilmVerdict> {
  const refused = refuseReadings(readings) ?? refuseRule(rule) ?? refuseGauge(gauge);
  if (refused !== undefined) return refused;
  const mean = micrometres(meanOf(readings));
  const judged = rule.judged === 'mean' ? [mean] : readings;
  const outside = judged.filter((film) => {
    const error = errorAt(film, gauge);
    return film + error < rule.leastMicrometres || film - error > rule.mostMicrometres;
  });
  const doubtful = judged.filter((film) => {
    const error = errorAt(film, gauge);
    const within = film - error >= rule.leastMicrometres && film + error <= rule.mostMicrometres;
    return !within && !outside.includes(film);
  });
  return { verdict: verdictOf(readings, rule, outside, doubtful), meanMicrometres: mean, outside, doubtful };
}

function verdictOf(
  readings: readonly Micrometres[],
  rule: JobFilmRule,
  outside: readonly Micrometres[],
  doubtful: readonly Micrometres[],
): JobFilmVerdict['verdict'] {
  if (outside.length > 0) return 'outside';
  if (readings.length < rule.leastReadings) return 'too-few-readings';
  return doubtful.length > 0 ? 'cannot-tell' : 'within';
}

function errorAt(film: Micrometres, gauge: GaugeError): number {
  return Math.max(gauge.fixedMicrometres, Math.abs(film) * gauge.share);
}

function refuseRule(rule: JobFilmRule): Refusal | undefined {
  return refuseRange(rule) ?? outOfRange('readings asked for', rule.leastReadings, 1, 10_000);
}

function refuseGauge(gauge: GaugeError): Refusal | undefined {
  return (
    outOfRange('gauge error', gauge.fixedMicrometres, 0, 100_000) ?? outOfRange('gauge error share', gauge.share, 0, 1)
  );
}
