// The same cure by another schedule: by an energy that the sheet states, or by the rule of ten, which is a habit of the
// trade and holds only near by. One rule of ten is not one energy: doubling every 10 degC means 48 kJ/mol near room
// temperature and 82 kJ/mol near 105 degC.

import {
  type Celsius,
  celsiusSpread,
  type KilojoulesPerMole,
  kelvinFromCelsius,
  kilojoulesPerMole,
  type Minutes,
  minutes,
} from '../units.ts';
import { gasConstant, type TemperatureRange } from './rate-law.ts';
import { isRefused, outOfRange, type Refusal, type Result } from './refusal.ts';

export interface Schedule {
  readonly minutes: Minutes;
  readonly celsius: Celsius;
}

/** A sheet's activation energy, and the temperatures for which the sheet states it. */
export interface StatedEnergy {
  readonly activation: KilojoulesPerMole;
  readonly range: TemperatureRange;
}

/**
 * Furthest jump by the rule of ten. The published cases reach 37 degC (23 to 60), where it still agrees with a common
 * energy within a few per cent; from ambient to oven (23 to 120) it is out by a factor of three and more.
 */
export const furthestByRuleOfTen = celsiusSpread(40);

/** k2/k1 = exp(Ea/R (1/T1 - 1/T2)), T in kelvin (Arrhenius). */
export function rateRatio(activation: KilojoulesPerMole, from: Celsius, to: Celsius): Result<number> {
  return (
    refuseEnergy(activation) ??
    refuseTemperature('from', from) ??
    refuseTemperature('to', to) ??
    Math.exp(((activation * 1000) / gasConstant) * (1 / kelvinFromCelsius(from) - 1 / kelvinFromCelsius(to)))
  );
}

/** How long at `to` cures as much as the schedule; refuses temperatures for which the sheet states no energy. */
export function equivalentByEnergy(energy: StatedEnergy, schedule: Schedule, to: Celsius): Result<Minutes> {
  const { lowestCelsius, highestCelsius } = energy.range;
  const refused =
    refuseMinutes(schedule.minutes) ??
    outOfRange('schedule temperature', schedule.celsius, lowestCelsius, highestCelsius) ??
    outOfRange('other temperature', to, lowestCelsius, highestCelsius);
  if (refused !== undefined) return refused;
  const ratio = rateRatio(energy.activation, schedule.celsius, to);
  if (isRefused(ratio)) return ratio;
  const found = schedule.minutes / ratio;
  return outOfRange('equivalent minutes', found, 0, longestMinutes) ?? minutes(found);
}

/** The same by t2 = t1 / factor^((T2 - T1)/10); refuses a jump past `furthestByRuleOfTen`. */
export function equivalentByRuleOfTen(factorPerTenDegrees: number, schedule: Schedule, to: Celsius): Result<Minutes> {
  const refused =
    refuseMinutes(schedule.minutes) ??
    refuseTemperature('schedule temperature', schedule.celsius) ??
    refuseTemperature('other temperature', to) ??
    refuseFactor(factorPerTenDegrees);
  if (refused !== undefined) return refused;
  const jump = to - schedule.celsius;
  if (Math.abs(jump) > furthestByRuleOfTen) {
    return { refused: 'too-far', what: 'rule of ten', given: jump, furthest: furthestByRuleOfTen };
  }
  return minutes(schedule.minutes / factorPerTenDegrees ** (jump / 10));
}

/** The energy that a factor per 10 degC means from `lower` to ten above: R ln(Q10) T1 T2 / (T2 - T1). */
export function energyFromFactor(factorPerTenDegrees: number, lower: Celsius): Result<KilojoulesPerMole> {
  const refused = refuseFactor(factorPerTenDegrees) ?? refuseTemperature('temperature', lower);
  if (refused !== undefined) return refused;
  const cool = kelvinFromCelsius(lower);
  return kilojoulesPerMole((gasConstant * Math.log(factorPerTenDegrees) * cool * (cool + 10)) / 10 / 1000);
}

/** A hundred years: a time that no schedule has, and no clock overflows. */
const longestMinutes = 100 * 366 * 24 * 60;

function refuseMinutes(duration: Minutes): Refusal | undefined {
  return outOfRange('schedule minutes', duration, 0, longestMinutes);
}

/** From the coldest yard to where an organic film chars. */
function refuseTemperature(what: string, temperature: Celsius): Refusal | undefined {
  return outOfRange(what, temperature, -60, 600);
}

/** Below 1 a warmer room would be slower; above 10 it is a typing slip. */
function refuseFactor(factorPerTenDegrees: number): Refusal | undefined {
  return outOfRange('factor per 10 degC', factorPerTenDegrees, 1, 10);
}

function refuseEnergy(activation: KilojoulesPerMole): Refusal | undefined {
  return outOfRange('activation energy', activation, 0, 400);
}
