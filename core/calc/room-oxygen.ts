// Inert gas let out into a room: what oxygen is left when it mixes. An estimate for a brief, never a reading: only a
// monitor knows.

import { type CubicMetres, type Percent, percent } from '../units.ts';
import { notAnAmount, notASize } from './amount.ts';
import type { Result } from './refusal.ts';

/** Dry air, per cent by volume. */
export const oxygenOfAir = percent(20.9);
/** 29 CFR 1910.146(b) and 1910.134. */
export const oxygenDeficientBelow = percent(19.5);
export const oxygenEnrichedAbove = percent(23.5);

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
