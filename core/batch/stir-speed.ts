// How fast the stirrer was said to turn, against what the sheet gives: a remark, and where the sheet says how much of the
// pot life air costs that is beaten in, a shorter life.

import type { EpochMs, RevolutionsPerMinute } from '../units.ts';
import type { Batch } from './batch.ts';

export interface Turning {
  readonly at: EpochMs;
  readonly revolutionsPerMinute: RevolutionsPerMinute;
}

export interface SpeedOutside extends Turning {
  readonly is: 'too-slow' | 'too-fast';
  readonly lowest: RevolutionsPerMinute;
  readonly highest: RevolutionsPerMinute;
}

/** Wherever it was told, in order of time. */
export function speedsTold({ entries }: Batch): readonly Turning[] {
  return entries.flatMap(({ fact, happenedAt: at }) => {
    const told = fact.type === 'StirrerStarted' ? fact.revolutionsPerMinute : undefined;
    return told === undefined ? [] : [{ at, revolutionsPerMinute: told }];
  });
}

/** The ends count as within. */
export function speedsOutside(batch: Batch, told = speedsTold(batch)): readonly SpeedOutside[] {
  const speed = batch.sheet.steps?.vortex?.speed;
  if (speed === undefined) return [];
  const { lowestRevolutionsPerMinute: lowest, highestRevolutionsPerMinute: highest } = speed;
  return told
    .filter(({ revolutionsPerMinute }) => revolutionsPerMinute < lowest || revolutionsPerMinute > highest)
    .map((each) => ({ ...each, is: each.revolutionsPerMinute > highest ? 'too-fast' : 'too-slow', lowest, highest }));
}
