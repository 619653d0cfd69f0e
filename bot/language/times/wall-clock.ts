// From what a wall clock shows to the instant, in the shop's zone, and back. Where clocks are set back an hour shows
// twice: the earlier instant is taken. It ends a pot life or a recoat window sooner; a time to come can never come of it.
// Where they are set forward an hour never shows: whoever reads a typed time asks about it.

import { DateTime, IANAZone } from 'luxon';
import { type EpochMs, epochMs } from '../../../core/units.ts';

export interface CalendarDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

export interface TimeOfDay {
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
  readonly millisecond: number;
}

const msPerMinute = 60_000;
const msPerDay = 86_400_000;

/** Where the wall clock skips this: the instants either side that may have been meant, earlier first. */
export function instantOf(day: CalendarDay, time: TimeOfDay, zone: string): EpochMs | readonly EpochMs[] {
  const { around, showing } = instantsOf(shownMs(day, time), zone);
  return showing[0] ?? around;
}

/** As it would be typed on that day; with its date where it falls on another. */
export function typedOn(day: CalendarDay, at: EpochMs, zone: string): string {
  const local = DateTime.fromMillis(at, { zone });
  return local.day === day.day ? local.toFormat('HH:mm') : isoLocal(at, zone);
}

/** True where the wall clock shows this twice. */
export function isShownTwice(at: EpochMs, zone: string): boolean {
  return instantsOf(at + offsetMinutes(at, zone) * msPerMinute, zone).showing.length > 1;
}

export function dayOf(at: EpochMs, zone: string): CalendarDay {
  const shown = new Date(at + offsetMinutes(at, zone) * msPerMinute);
  return { year: shown.getUTCFullYear(), month: shown.getUTCMonth() + 1, day: shown.getUTCDate() };
}

/** `2026-03-02T09:40`, seconds only where they are not zero, the offset only where the hour shows twice. */
export function isoLocal(at: EpochMs, zone: string): string {
  const format = { suppressSeconds: true, suppressMilliseconds: true, includeOffset: isShownTwice(at, zone) };
  return DateTime.fromMillis(at, { zone }).toISO(format) ?? '';
}

export function dayBefore(date: CalendarDay): CalendarDay {
  const { year, month, day } = DateTime.utc(date.year, date.month, date.day).minus({ days: 1 });
  return { year, month, day };
}

export function dayAfter(date: CalendarDay): CalendarDay {
  const { year, month, day } = DateTime.utc(date.year, date.month, date.day).plus({ days: 1 });
  return { year, month, day };
}

/** Refuses 2026-02-30, and years before anybody could type into this. */
export function isRealDay(day: CalendarDay): boolean {
  return day.year >= 2000 && DateTime.utc(day.year, day.month, day.day).isValid;
}

export function shownMs(day: CalendarDay, time: TimeOfDay): number {
  return Date.UTC(day.year, day.month - 1, day.day, time.hour, time.minute, time.second, time.millisecond);
}

/** No zone has changed its clock but at a quarter of an hour since anybody could type into this. */
const quarterHourMs = 900_000;
const mostKept = 500;
const offsets = new Map<string, Map<number, number>>();

/** A line is tried with a dozen times of the same day, and each is asked of the zone's rules. */
function offsetMinutes(at: number, zone: string): number {
  const quarter = Math.floor(at / quarterHourMs);
  const known = offsets.get(zone)?.get(quarter);
  if (known !== undefined) return known;
  const offset = IANAZone.create(zone).offset(quarter * quarterHourMs);
  const kept = offsets.get(zone);
  if (kept === undefined || kept.size > mostKept) offsets.set(zone, new Map([[quarter, offset]]));
  else kept.set(quarter, offset);
  return offset;
}

interface Instants {
  /** Earlier first, as the clock goes before and after a change. */
  readonly around: readonly EpochMs[];
  /** Those of them at which the wall clock does show it. */
  readonly showing: readonly EpochMs[];
}

/** No zone changes its clock twice within two days, so a day either side brackets the change. */
function instantsOf(shown: number, zone: string): Instants {
  const before = offsetMinutes(shown - msPerDay, zone);
  const after = offsetMinutes(shown + msPerDay, zone);
  const offsets = before === after ? [before] : [Math.max(before, after), Math.min(before, after)];
  const around = offsets.map((offset) => epochMs(shown - offset * msPerMinute));
  return { around, showing: around.filter((at) => at + offsetMinutes(at, zone) * msPerMinute === shown) };
}
