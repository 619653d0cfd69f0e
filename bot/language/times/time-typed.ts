// Times of day and dates as typed, still without a day or a zone: `9:40`, `9.40`, `9,40`, `0940`, `9h40`, `9`, `9:40 h`, `9:40pm`,
// `2026-03-02`, `2026-03-02T09:40`.

import { type CalendarDay, isRealDay, type TimeOfDay } from './wall-clock.ts';

/** Shaped as a time of day or a date but there is none such: 25:00, 13pm, 9:4, 2026-02-30. */
export type NoSuchTime = 'no-such-time';

const separated = /^(\d{1,2})[:.,h](\d{2})(?::(\d{2}))?(?: ?(?:([ap])\.?m?|h(?:rs?|o[a-z]{3,4})?))?$/i;
const hourOnly = /^(\d{1,2})(?: ?h(?:rs?|o[a-z]{3,4})?)?(?: ?([ap])\.?m?)?$/i;
const together = /^(\d{1,2})(\d{2})(?: ?([ap])\.?m?)?$/i;
const resemblesTime =
  /^\d{1,4}([:.h]\d*)?([:.]\d*)?(?: ?[ap]\.?m?)?$|^\d{1,2}(?:[:.h]\d\d)? ?h(?:rs?|o[a-z]{3,4})?$|^\d{1,2},\d\d$/i;
const date = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const dateAndTime = /^(\d{4}-\d{1,2}-\d{1,2})t(\d{2}):(\d{2})(?::(\d{2})(?:\.(\d{1,3}))?)?(z|[+-]\d{2}:\d{2})?$/i;
const named: ReadonlyMap<string, TimeOfDay> = new Map([
  ['noon', { hour: 12, minute: 0, second: 0, millisecond: 0 }],
  ['midnight', { hour: 0, minute: 0, second: 0, millisecond: 0 }],
]);

export function readTimeOfDay(text: string): TimeOfDay | NoSuchTime | undefined {
  const word = named.get(text.toLowerCase());
  if (word !== undefined) return word;
  if (!resemblesTime.test(text)) return undefined;
  const parts = separated.exec(text);
  if (parts !== null) return timeOfDay(parts[1], parts[2], parts[3], parts[4]);
  const hours = hourOnly.exec(text);
  if (hours !== null) return timeOfDay(hours[1], '0', undefined, hours[2]);
  const four = together.exec(text);
  return four === null ? 'no-such-time' : timeOfDay(four[1], four[2], undefined, four[3]);
}

export function readDate(text: string): CalendarDay | NoSuchTime | undefined {
  const parts = date.exec(text);
  if (parts === null) return undefined;
  const day = { year: Number(parts[1]), month: Number(parts[2]), day: Number(parts[3]) };
  return isRealDay(day) ? day : 'no-such-time';
}

export interface DateAndTime {
  readonly day: CalendarDay;
  readonly time: TimeOfDay;
  /** Minutes ahead of universal time, where the line says so. */
  readonly offsetMinutes?: number;
}

export function readDateAndTime(text: string): DateAndTime | NoSuchTime | undefined {
  const parts = dateAndTime.exec(text);
  if (parts === null) return undefined;
  const day = readDate(parts[1] ?? '');
  const time = timeOfDay(parts[2], parts[3], parts[4], undefined, parts[5]);
  if (day === undefined || day === 'no-such-time' || time === 'no-such-time') return 'no-such-time';
  const offset = parts[6];
  return offset === undefined ? { day, time } : { day, time, offsetMinutes: offsetFrom(offset) };
}

function offsetFrom(text: string): number {
  if (text.toLowerCase() === 'z') return 0;
  const size = Number(text.slice(1, 3)) * 60 + Number(text.slice(4, 6));
  return text.startsWith('-') ? -size : size;
}

function timeOfDay(
  hours: string | undefined,
  minutes: string | undefined,
  seconds: string | undefined,
  half: string | undefined,
  thousandths = '0',
): TimeOfDay | NoSuchTime {
  const typed = Number(hours);
  const minute = Number(minutes);
  const second = Number(seconds ?? '0');
  if (minute > 59 || second > 59) return 'no-such-time';
  const millisecond = Number(thousandths.padEnd(3, '0'));
  if (half === undefined) return typed > 23 ? 'no-such-time' : { hour: typed, minute, second, millisecond };
  // 12 am is midnight and 12 pm is noon.
  if (typed < 1 || typed > 12) return 'no-such-time';
  const hour = (typed % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  return { hour, minute, second, millisecond };
}
