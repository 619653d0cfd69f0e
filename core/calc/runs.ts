// Stretches in which something ran or stood open, in order of time; the last may still go on.

import type { EpochMs } from '../units.ts';
import type { Run } from './clock.ts';

export function isOn(runs: readonly Run[]): boolean {
  const last = runs.at(-1);
  return last !== undefined && last.to === undefined;
}

/** Nothing begins a second time while it goes on. */
export function begun(runs: readonly Run[], at: EpochMs): readonly Run[] {
  return isOn(runs) ? runs : [...runs, { from: at, to: undefined }];
}

export function ended(runs: readonly Run[], at: EpochMs): readonly Run[] {
  return runs.map((run) => (run.to === undefined ? { from: run.from, to: at } : run));
}
