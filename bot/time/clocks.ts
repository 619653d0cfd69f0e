// The clocks that a front end may run by: the wall's, one that only moves when it is told, one that runs faster.

import type { Clock } from '../../core/ports.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';

export const wallClock: Clock = { now: () => epochMs(Date.now()) };

export interface VirtualClock extends Clock {
  /** Never back. */
  readonly moveTo: (at: EpochMs) => void;
}

export function virtualClock(start: EpochMs): VirtualClock {
  let at = start;
  return {
    now: () => at,
    moveTo: (to) => {
      if (to > at) at = to;
    },
  };
}

export function isMovable(clock: Clock): clock is VirtualClock {
  return 'moveTo' in clock;
}

/** Runs by itself, so many times faster than the wall's. */
export function fastClock(start: EpochMs, speed: number): Clock {
  const began = Date.now();
  return { now: () => epochMs(start + Math.round((Date.now() - began) * speed)) };
}
