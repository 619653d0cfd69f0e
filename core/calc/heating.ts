// How a part warms in an oven, as one lump: an estimate until a reading on the part says otherwise. Holds only where
// the metal evens out faster than the air warms it (Biot number below 0.1); else it is refused. Source of the sums:
// Incropera, Fundamentals of Heat and Mass Transfer, ch. 5.

import { isFailed } from '../failed.ts';
import { type Celsius, celsius, type Metres, type Millimetres, type Minutes, metres, minutes } from '../units.ts';
import type { HeatProperties } from './metals.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** The highest Biot number of the lumped sum, itself excluded. */
export const biotLimit = 0.1;

/**
 * Heat passing from air to metal. The least certain input of all: fit it from one thermocouple run a rack. From memory,
 * no source: 5 to 10 in still air, 10 to 25 in a gentle fan, 25 to 60 in a strong one; the low end is the cautious one.
 */
export interface OvenAir {
  readonly celsius: Celsius;
  readonly wattsPerSquareMetreKelvin: number;
}

export interface Lump {
  readonly metal: HeatProperties;
  /** Volume over heated surface: half the wall of a plate heated on both faces, all of it on one. */
  readonly characteristicMetres: Metres;
}

/** The lump that a wall of so much metal makes. */
export function lumpOfWall(metal: HeatProperties, wall: Millimetres, heatedFaces: 1 | 2): Lump {
  return { metal, characteristicMetres: metres(wall / 1000 / heatedFaces) };
}

/** Bi = h Lc / k, no unit. */
export function biotNumber(lump: Lump, air: OvenAir): Result<number> {
  return (
    refuseLump(lump) ??
    refuseAir(air) ??
    (air.wattsPerSquareMetreKelvin * lump.characteristicMetres) / lump.metal.wattsPerMetreKelvin
  );
}

/** tau = rho cp Lc / h: after one of it the part has come 63 % of the way. Refuses a Biot number from 0.1. */
export function timeConstant(lump: Lump, air: OvenAir): Result<Minutes> {
  const biot = biotNumber(lump, air);
  if (isFailed(biot)) return biot;
  if (biot >= biotLimit) return { failed: 'does-not-apply', what: 'Biot number', given: biot, limit: biotLimit };
  const { kilogramsPerCubicMetre, joulesPerKilogramKelvin } = lump.metal;
  const seconds =
    (kilogramsPerCubicMetre * joulesPerKilogramKelvin * lump.characteristicMetres) / air.wattsPerSquareMetreKelvin;
  return minutes(seconds / 60);
}

/** Degrees. Nearer to the air's temperature no thermometer tells, and the logarithm has no end. */
const nearestToAir = 1e-6;

/**
 * Minutes from `start` to `target` in that air, warming or cooling; 0 where they are the same. Refuses a target at or
 * beyond the air's own temperature, or away from it: it is never reached.
 */
export function minutesToReach(lump: Lump, air: OvenAir, start: Celsius, target: Celsius): Result<Minutes> {
  const refused = refuseTemperature('start', start) ?? refuseTemperature('target', target);
  if (refused !== undefined) return refused;
  const tau = timeConstant(lump, air);
  if (isFailed(tau)) return tau;
  if (target === start) return minutes(0);
  const beyond = target > start ? air.celsius - target : target - air.celsius;
  if (beyond < nearestToAir) return { failed: 'never-reached', what: 'target', given: target, limit: air.celsius };
  return minutes(tau * Math.log((air.celsius - start) / (air.celsius - target)));
}

/** What a part read at two times in the same air. */
export interface TwoReadings {
  readonly earlier: Celsius;
  readonly later: Celsius;
  readonly apart: Minutes;
}

/**
 * Minutes from the later of two readings to `target`, by the pace between them: the same lumped law with the time constant
 * that they show, whatever metal, wall or fan. Refuses readings that came no nearer to the air.
 */
export function minutesToReachByPace(
  { earlier, later, apart }: TwoReadings,
  air: Celsius,
  target: Celsius,
): Result<Minutes> {
  const refused =
    refuseTemperature('earlier reading', earlier) ??
    refuseTemperature('later reading', later) ??
    refuseTemperature('target', target) ??
    outOfRange('between the readings', apart, 1e-6, 366 * 24 * 60);
  if (refused !== undefined) return refused;
  const came = Math.log((air - earlier) / (air - later));
  if (earlier >= air || !(came > 0))
    return { failed: 'does-not-apply', what: 'pace of warming', given: later, limit: earlier };
  if (later >= target) return minutes(0);
  if (air - target < nearestToAir) return { failed: 'never-reached', what: 'target', given: target, limit: air };
  return minutes((apart / came) * Math.log((air - later) / (air - target)));
}

/** The part's temperature after so long in that air. */
export function temperatureAfter(lump: Lump, air: OvenAir, start: Celsius, elapsed: Minutes): Result<Celsius> {
  const refused = refuseTemperature('start', start) ?? outOfRange('elapsed', elapsed, 0, 366 * 24 * 60);
  if (refused !== undefined) return refused;
  const tau = timeConstant(lump, air);
  if (isFailed(tau)) return tau;
  return celsius(air.celsius - (air.celsius - start) * Math.exp(-elapsed / tau));
}

function refuseAir(air: OvenAir): Refusal | undefined {
  return (
    refuseTemperature('air', air.celsius) ??
    outOfRange('heat transfer, W/(m2 K)', air.wattsPerSquareMetreKelvin, 0.1, 100_000)
  );
}

function refuseLump({ metal, characteristicMetres }: Lump): Refusal | undefined {
  return (
    outOfRange('volume over surface, m', characteristicMetres, 1e-6, 10) ??
    outOfRange('metal density', metal.kilogramsPerCubicMetre, 100, 25_000) ??
    outOfRange('metal conductivity', metal.wattsPerMetreKelvin, 0.01, 5000) ??
    outOfRange('metal heat capacity', metal.joulesPerKilogramKelvin, 10, 10_000)
  );
}

function refuseTemperature(what: string, temperature: Celsius): Refusal | undefined {
  return outOfRange(what, temperature, -200, 2000);
}
