// Fan figures: the flow that spraying, wiping and an oven load need, and the flow through a booth's face.

import { isFailed } from '../failed.ts';
import {
  type Celsius,
  type CubicMetres,
  type CubicMetresPerHour,
  cubicMetresPerHour,
  type Fraction,
  kelvinFromCelsius,
  type MetresPerSecond,
  type Minutes,
  minutes,
  type PartsPerMillion,
  type SquareMetres,
} from '../units.ts';
import { notAnAmount, notASize } from './amount.ts';
import { outOfRange, type Result } from './refusal.ts';
import { airForSolvents, type Evaporating, vapourOf } from './vapour.ts';

/**
 * Flow that keeps vapour below a share of the LEL while so much solvent evaporates over so long, evenly: spraying,
 * wiping, flushing. Solvent that stays in the film or the waste need not be counted; when in doubt, count it.
 */
export function flowForSolvents(
  evaporating: readonly Evaporating[],
  over: Minutes,
  share: Fraction,
): Result<CubicMetresPerHour> {
  const refusal = notASize('duration', over);
  if (refusal !== undefined) return refusal;
  const air = airForSolvents(evaporating, share);
  return isFailed(air) ? air : cubicMetresPerHour((air * 60) / over);
}

export interface AgainstLimit extends Evaporating {
  readonly limitPpm: PartsPerMillion;
}

/**
 * Flow that keeps breathing air below the limits while it evaporates, the solvents' needs added up: vapour / limit.
 * `mixing` says how many times more the room needs because fans do not mix perfectly; 1 is perfect, which no room is.
 */
export function flowForExposure(
  evaporating: readonly AgainstLimit[],
  over: Minutes,
  mixing: number,
): Result<CubicMetresPerHour> {
  const refusal = notASize('duration', over) ?? outOfRange('mixing-factor', mixing, 1, 100);
  if (refusal !== undefined) return refusal;
  let perHour = 0;
  for (const part of evaporating) {
    const vapour = vapourOf(part);
    if (isFailed(vapour)) return vapour;
    const bad = outOfRange('exposure-limit', part.limitPpm, 1e-6, 1e6);
    if (bad !== undefined) return bad;
    perHour += ((vapour * 60) / over / part.limitPpm) * 1e6;
  }
  return cubicMetresPerHour(perHour * mixing);
}

/** Flow through an opening: area times average velocity. */
export function faceFlow(area: SquareMetres, velocity: MetresPerSecond): Result<CubicMetresPerHour> {
  const refusal = notAnAmount('face-area', area) ?? notAnAmount('face-velocity', velocity);
  return refusal ?? cubicMetresPerHour(area * velocity * 3600);
}

/** The same air when it is warmer than 70 degF: what the fan on a hot stack must move. */
export function flowAtTemperature(flow: CubicMetresPerHour, air: Celsius): Result<CubicMetresPerHour> {
  const refusal = notAnAmount('flow', flow) ?? outOfRange('air-temperature', air, -45, 1000);
  return refusal ?? cubicMetresPerHour((flow * kelvinFromCelsius(air)) / (273.15 + 190 / 9));
}

/**
 * How long to run the fan before an oven or dryer is lit: four volumes of fresh air (from memory of NFPA 86), and never
 * less than the 3 minutes of 29 CFR 1910.107(j)(4)(iii)(b).
 */
export function purgeBeforeHeat(volume: CubicMetres, flow: CubicMetresPerHour): Result<Minutes> {
  const refusal = notASize('oven-volume', volume) ?? notASize('flow', flow);
  return refusal ?? minutes(Math.max(3, (4 * volume * 60) / flow));
}
