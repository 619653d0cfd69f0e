// The crew's clocks on the wall: the local day of an instant, and when an hour comes next, of the day's card, of the morning's
// list, of the end of quiet hours.

import { DateTime } from 'luxon';
import { type EpochMs, epochMs } from '../units.ts';

/** ISO, `2026-03-02`. */
export function localDay(zone: string, at: EpochMs, daysBefore = 0): string {
  return DateTime.fromMillis(at, { zone }).minus({ days: daysBefore }).toISODate() ?? '';
}

export interface NextHour {
  readonly at: EpochMs;
  /** The local date of it, ISO. */
  readonly date: string;
}

/**
 * From `from` until it comes it stays the next: kept, since every act plans it and a wall clock is slow to ask. One for each
 * zone and hour that the crews have.
 */
const standing = new Map<string, NextHour & { readonly from: EpochMs }>();

/** After `after`, not at it. An hour that the clocks leave out comes an hour later on that day. */
export function nextHour(after: EpochMs, zone: string, hour: number): NextHour {
  const name = `${zone} ${hour}`;
  const known = standing.get(name);
  if (known !== undefined && known.from <= after && after < known.at) return known;
  const day = DateTime.fromMillis(after, { zone }).startOf('day');
  const [today, tomorrow] = [day, day.plus({ days: 1 })].map((each) => each.set({ hour }));
  const next = today !== undefined && today.toMillis() > after ? today : (tomorrow ?? day);
  const found = { from: after, at: epochMs(next.toMillis()), date: next.toISODate() ?? '' };
  standing.set(name, found);
  return found;
}
