// What was breathed: parts per million and mass, the working day's average, mixtures, and ceilings with a peak.

import { isFailed } from '../failed.ts';
import {
  type GramsPerMole,
  type Hours,
  hours,
  type MilligramsPerCubicMetre,
  type Minutes,
  milligramsPerCubicMetre,
  minutes,
  type PartsPerMillion,
  partsPerMillion,
} from '../units.ts';
import { firstRefusal, notAnAmount, notASize } from './amount.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/**
 * Ideal gas at 25 degC and 101,325 Pa, 24.4654 L/mol. Pocket guides round it to 24.45, which gives 0.06 % more
 * milligrams.
 */
const litresPerMole = (8.31446261815324 * 298.15 * 1000) / 101_325;
const fullShift = 8;

export function milligramsFromPpm(share: PartsPerMillion, molar: GramsPerMole): Result<MilligramsPerCubicMetre> {
  const refusal = notAShare(share) ?? notAMolarMass(molar);
  return refusal ?? milligramsPerCubicMetre((share * molar) / litresPerMole);
}

export function ppmFromMilligrams(content: MilligramsPerCubicMetre, molar: GramsPerMole): Result<PartsPerMillion> {
  const refusal = notAnAmount('vapour-mass', content) ?? notAMolarMass(molar);
  return refusal ?? partsPerMillion((content * litresPerMole) / molar);
}

export interface Sampled {
  readonly ppm: PartsPerMillion;
  readonly hours: Hours;
}

export interface DayAverage {
  readonly ppm: PartsPerMillion;
  /** Hours of the eight for which nothing was handed in: the rule counts them as clean air, nobody proved it. */
  readonly unsampledHours: Hours;
}

/** E = sum(C T) / 8, 29 CFR 1910.1000(d)(1). A longer shift is still divided by eight. */
export function dayAverage(samples: readonly Sampled[]): Result<DayAverage> {
  const sampled = samples.reduce((total, sample) => total + sample.hours, 0);
  const refusal =
    firstRefusal(samples, (sample) => notAShare(sample.ppm) ?? outOfRange('hours', sample.hours, 0, 24)) ??
    outOfRange('hours', sampled, 0, 24);
  if (refusal !== undefined) return refusal;
  const exposure = samples.reduce((total, sample) => total + sample.ppm * sample.hours, 0);
  return {
    ppm: partsPerMillion(exposure / fullShift),
    unsampledHours: hours(Math.max(0, fullShift - sampled)),
  };
}

export interface AgainstLimitPpm {
  readonly ppm: PartsPerMillion;
  readonly limitPpm: PartsPerMillion;
}

/** Em = sum(C / L); above 1 the mixture passes its limit. 29 CFR 1910.1000(d)(2). */
export function mixtureIndex(parts: readonly AgainstLimitPpm[]): Result<number> {
  const refusal = firstRefusal(parts, (part) => notAShare(part.ppm) ?? notASize('exposure-limit', part.limitPpm));
  return refusal ?? parts.reduce((total, part) => total + part.ppm / part.limitPpm, 0);
}

export interface PeakLimit {
  readonly averagePpm: PartsPerMillion;
  /** Passed only within the peak's minutes. */
  readonly ceilingPpm: PartsPerMillion;
  readonly peakPpm: PartsPerMillion;
  readonly peakMinutes: Minutes;
}

export type PeakBreach = 'average' | 'ceiling-too-long' | 'peak';

export interface PeakVerdict {
  readonly average: DayAverage;
  readonly aboveCeilingMinutes: Minutes;
  readonly breaches: readonly PeakBreach[];
}

/** A day against an average with a ceiling and a peak above it: 29 CFR 1910.1000(b)(3), as for toluene. */
export function checkPeaks(limit: PeakLimit, samples: readonly Sampled[]): Result<PeakVerdict> {
  const refusal =
    notASize('average-limit', limit.averagePpm) ??
    notASize('ceiling', limit.ceilingPpm) ??
    notASize('peak', limit.peakPpm) ??
    outOfRange('peak-minutes', limit.peakMinutes, 0, 1440);
  if (refusal !== undefined) return refusal;
  const average = dayAverage(samples);
  if (isFailed(average)) return average;
  const above = samples.filter((sample) => sample.ppm > limit.ceilingPpm);
  const aboveMinutes = above.reduce((total, sample) => total + sample.hours * 60, 0);
  const breaches: PeakBreach[] = [];
  if (average.ppm > limit.averagePpm) breaches.push('average');
  // A slip of the last bit in the hours is not a minute too long.
  if (aboveMinutes > limit.peakMinutes + 1e-6) breaches.push('ceiling-too-long');
  if (above.some((sample) => sample.ppm > limit.peakPpm)) breaches.push('peak');
  return { average, aboveCeilingMinutes: minutes(aboveMinutes), breaches };
}

const notAShare = (share: PartsPerMillion): Refusal | undefined => outOfRange('ppm', share, 0, 1e6);

const notAMolarMass = (molar: GramsPerMole): Refusal | undefined => outOfRange('molar-mass', molar, 1, 1000);
