// Inert gas over a can of Part A: how much to let in for an oxygen target, and what is left after so much.

import { isFailed } from '../failed.ts';
import { type Litres, type LitresPerMinute, litres, type Minutes, minutes, type Percent, percent } from '../units.ts';
import { notAnAmount, notASize } from './amount.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** Oxygen in air, per cent by volume: 29 CFR 1910.134 and 1910.146 count from 20.9. */
export const oxygenInAir = percent(20.9);
export const cleanGas = percent(0);

export interface Purge {
  readonly headspace: Litres;
  /** Oxygen before, per cent by volume; of air 20.9. */
  readonly from: Percent;
  /** Oxygen in the gas itself; of a clean cylinder none. */
  readonly gasOxygen: Percent;
}

/**
 * Gas that a well-mixed headspace needs for an oxygen target: V = Vh ln((C0 - Cp) / (Ct - Cp)). Gas that streams
 * straight out again does not mix: more is needed then. Refuses a target that the gas itself does not reach.
 */
export function purgeVolume(purge: Purge, target: Percent): Result<Litres> {
  const refusal = notAPurge(purge) ?? outOfRange('oxygen-target', target, 0, 100);
  if (refusal !== undefined) return refusal;
  const { headspace, from, gasOxygen } = purge;
  if (target >= from) return litres(0);
  if (target <= gasOxygen) return { failed: 'never-reached', what: 'oxygen-target', given: target, limit: gasOxygen };
  const needed = headspace * Math.log((from - gasOxygen) / (target - gasOxygen));
  return notAnAmount('purge-gas', needed) ?? litres(needed);
}

/** Oxygen left in a well-mixed headspace after so much gas. */
export function oxygenAfterPurge(purge: Purge, gas: Litres): Result<Percent> {
  const refusal = notAPurge(purge) ?? notAnAmount('purge-gas', gas);
  if (refusal !== undefined) return refusal;
  const { headspace, from, gasOxygen } = purge;
  return percent(gasOxygen + (from - gasOxygen) * Math.exp(-gas / headspace));
}

/** How long the gas must run at a flow. */
export function purgeTime(purge: Purge, target: Percent, flow: LitresPerMinute): Result<Minutes> {
  const refusal = notASize('gas-flow', flow);
  if (refusal !== undefined) return refusal;
  const volume = purgeVolume(purge, target);
  return isFailed(volume) ? volume : minutes(volume / flow);
}

function notAPurge({ headspace, from, gasOxygen }: Purge): Refusal | undefined {
  return (
    notASize('headspace', headspace) ??
    outOfRange('oxygen', from, 0, 100) ??
    outOfRange('oxygen-in-gas', gasOxygen, 0, from)
  );
}
