// Dry-film readings as numbers: their statistics, and the comparison with a limit that all acceptance rules share.

import { type Fraction, fraction, type Micrometres, micrometres } from '../units.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

export interface FilmStatistics {
  readonly count: number;
  readonly meanMicrometres: Micrometres;
  readonly lowestMicrometres: Micrometres;
  readonly highestMicrometres: Micrometres;
  /** Of the sample (divided by count - 1); `undefined` for a single reading. */
  readonly standardDeviationMicrometres: Micrometres | undefined;
  /** Standard deviation over mean; `undefined` where there is none. */
  readonly variation: number | undefined;
}

/** Refuses no readings, and a reading that no gauge shows. */
export function filmStatistics(readings: readonly Micrometres[]): Result<FilmStatistics> {
  const refused = refuseReadings(readings);
  if (refused !== undefined) return refused;
  const mean = meanOf(readings);
  const deviation = deviationOf(readings, mean);
  return {
    count: readings.length,
    meanMicrometres: micrometres(mean),
    lowestMicrometres: micrometres(Math.min(...readings)),
    highestMicrometres: micrometres(Math.max(...readings)),
    standardDeviationMicrometres: deviation === undefined ? undefined : micrometres(deviation),
    variation: deviation === undefined || mean <= 0 ? undefined : deviation / mean,
  };
}

/** Gauges show a little below zero on bare metal, and corrected readings may; past ten centimetres a unit is wrong. */
export function refuseReadings(readings: readonly Micrometres[]): Refusal | undefined {
  if (readings.length === 0) return { failed: 'does-not-apply', what: 'film readings', given: 0, limit: 1 };
  for (const reading of readings) {
    const refused = outOfRange('film reading', reading, -1000, 100_000);
    if (refused !== undefined) return refused;
  }
  return undefined;
}

export function meanOf(readings: readonly Micrometres[]): number {
  return readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
}

function deviationOf(readings: readonly Micrometres[], mean: number): number | undefined {
  if (readings.length < 2) return undefined;
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  return Math.sqrt(squares / (readings.length - 1));
}

/** 6.4 mil is 80 % of 8 mil, whatever binary fractions make of it: far finer than any gauge. */
const roundingMicrometres = 1e-9;

export const isBelow = (value: number, limit: number): boolean => value < limit - roundingMicrometres;
export const isAbove = (value: number, limit: number): boolean => value > limit + roundingMicrometres;

/** A share of a film, such as the 80 % of a rule. */
export const shareOf = (film: Micrometres, share: Fraction): Micrometres => micrometres(film * share);

export const eightyPerCent: Fraction = fraction(0.8);
