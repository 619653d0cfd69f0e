// Inert gas let out into a room: what oxygen is left when it mixes, and how deep argon lies when it does not. An
// estimate for a brief, never a reading: only a monitor knows.

import {
  type Celsius,
  type CubicMetres,
  type KilogramsPerCubicMetre,
  kelvinFromCelsius,
  kilogramsPerCubicMetre,
  type Metres,
  metres,
  type Percent,
  percent,
  type SquareMetres,
} from '../units.ts';
import { notAnAmount, notASize } from './amount.ts';
import { outOfRange, type Result } from './refusal.ts';

/** Dry air, per cent by volume. */
export const oxygenOfAir = percent(20.9);
/** 29 CFR 1910.146(b) and 1910.134. */
export const oxygenDeficientBelow = percent(19.5);
export const oxygenEnrichedAbove = percent(23.5);

/** g/mol. */
const molarMass = { air: 28.965, argon: 39.948, nitrogen: 28.0134 } as const;
export type Gas = keyof typeof molarMass;
export type InertGas = Exclude<Gas, 'air'>;

export type OxygenBand = 'deficient' | 'normal' | 'enriched';

export function oxygenBand(oxygen: Percent): OxygenBand {
  if (oxygen < oxygenDeficientBelow) return 'deficient';
  return oxygen > oxygenEnrichedAbove ? 'enriched' : 'normal';
}

/** Well mixed, what is pushed out leaving as mixture, no fresh air: C = 20.9 exp(-v / V). */
export function oxygenAfterRelease(room: CubicMetres, gas: CubicMetres): Result<Percent> {
  const refusal = notASize('room', room) ?? notAnAmount('released-gas', gas);
  return refusal ?? percent(oxygenOfAir * Math.exp(-gas / room));
}

/**
 * Depth of a layer of unmixed gas on the floor of a room or pit, the worst that argon does. Refuses a gas that is not
 * heavier than air.
 */
export function settledDepth(gas: InertGas, released: CubicMetres, floor: SquareMetres): Result<Metres> {
  const refusal = notAnAmount('released-gas', released) ?? notASize('floor-area', floor);
  if (refusal !== undefined) return refusal;
  const heaviness = densityAgainstAir(gas);
  if (heaviness <= 1) return { refused: 'does-not-apply', what: 'gas-density', given: heaviness, limit: 1 };
  return metres(released / floor);
}

/** Ideal gas at one atmosphere. */
export function gasDensity(gas: Gas, at: Celsius): Result<KilogramsPerCubicMetre> {
  const refusal = outOfRange('temperature', at, -100, 1000);
  if (refusal !== undefined) return refusal;
  return kilogramsPerCubicMetre((101_325 * molarMass[gas]) / 1000 / (8.31446261815324 * kelvinFromCelsius(at)));
}

/** Above 1 it settles, near 1 it mixes. */
export function densityAgainstAir(gas: Gas): number {
  return molarMass[gas] / molarMass.air;
}
