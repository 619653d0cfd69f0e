// By which clock a run goes: the wall's, one that runs from a named start, or one that stands until it is moved.

import { DateTime } from 'luxon';
import type { Clock } from '../../core/ports.ts';
import { epochMs } from '../../core/units.ts';
import type { Flags } from '../config/config.ts';
import { fastClock, virtualClock, wallClock } from '../time/clocks.ts';

/** Milliseconds since 1970; `undefined` where none is named, NaN where there is no such time. */
export function namedStart({ clock }: Flags, zone: string): number | undefined {
  return clock === undefined ? undefined : DateTime.fromISO(clock, { zone }).toMillis();
}

/** With a start and no speed it stands still but for `wait`. */
export function clockFrom(start: number | undefined, speed: number | undefined): Clock {
  if (speed !== undefined) return fastClock(epochMs(start ?? Date.now()), speed);
  return start === undefined ? wallClock : virtualClock(epochMs(start));
}
