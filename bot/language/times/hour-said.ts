// An hour in words: `las cuatro y media`, `las 8 menos cuarto`. Nobody says so of a clock with twenty-four hours: without its part
// of the day it is one of two, and where both may be meant it is asked which.

import { DateTime } from 'luxon';
import type { Hearing } from '../hearing.ts';
import type { Fault, LineContext } from '../reading.ts';
import type { Token } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { inPartOfDay, partOfDayAt } from './part-of-day.ts';
import { type NoSuchTime, readTimeOfDay } from './time-typed.ts';
import type { TimeOfDay } from './wall-clock.ts';

export interface HourSaid {
  readonly time: TimeOfDay | NoSuchTime;
  /** Index of the token after it. */
  readonly to: number;
  /** Whether its half of the day is left open. */
  readonly isEither: boolean;
}

/** The hour that begins at token `at`; `undefined` where it is in figures alone. */
export function hourSaid(tokens: readonly Token[], at: number, hearing: Hearing): HourSaid | undefined {
  const text = (index: number) => withoutAccents(tokens[index]?.text.toLowerCase() ?? '');
  const past = hearing.pastHour.get(`${text(at + 1)} ${text(at + 2)}`);
  const named = hearing.numbers.get(text(at));
  const hour = named ?? (past === undefined ? undefined : hourIn(text(at)));
  if (hour === undefined || !Number.isInteger(hour)) return undefined;
  const next = past === undefined ? at + 1 : at + 3;
  const part = partOfDayAt(tokens, next, hearing);
  const time = shifted({ hour, minute: 0, second: 0, millisecond: 0 }, past ?? 0);
  if (part === undefined) return { time, to: next, isEither: hour <= 12 };
  // `la una menos cuarto de la tarde`: a part of the day has its hours from 1 to 12.
  const onTwelve = time.hour === 0 ? { ...time, hour: 12 } : time;
  return { time: inPartOfDay(onTwelve, part.part), to: part.to, isEither: false };
}

function hourIn(text: string): number | undefined {
  const time = readTimeOfDay(text);
  return time === undefined || time === 'no-such-time' || time.minute !== 0 ? undefined : time.hour;
}

const minutesADay = 24 * 60;

function shifted({ hour, minute, ...rest }: TimeOfDay, byMinutes: number): TimeOfDay {
  const all = (hour * 60 + minute + byMinutes + minutesADay) % minutesADay;
  return { ...rest, hour: Math.floor(all / 60), minute: all % 60 };
}

/** The other half of the day. */
export const otherHalf = (time: TimeOfDay): TimeOfDay => ({ ...time, hour: (time.hour + 12) % 24 });

/** Which of them it was, each as the speaker's country says it. `from`: where `a las` stands. */
export function halfAsked(
  tokens: readonly Token[],
  from: number,
  to: number,
  times: readonly TimeOfDay[],
  context: Pick<LineContext, 'hearing' | 'country'>,
): Fault {
  const said = tokens.slice(from, to);
  const [start, end] = [said[0]?.start ?? 0, said.at(-1)?.end ?? 0];
  const text = said.map((token) => token.text).join(' ');
  return {
    failed: 'ambiguous-time',
    token: { text, start, end },
    couldBe: times.map((time) => atClock(time, context)),
  };
}

/** `a la 1:00`, `a las 13:00`; where the clock has twelve hours `a la 1:00 p.m.` */
export function atClock(
  { hour, minute }: Pick<TimeOfDay, 'hour' | 'minute'>,
  { hearing, country }: Pick<LineContext, 'hearing' | 'country'>,
): string {
  const clock = country.clock(DateTime.fromObject({ hour, minute }, { zone: 'utc', locale: country.locale }));
  const said = hearing.times.find(({ atHour }) => atHour !== undefined);
  const at = Number.parseInt(clock, 10) === 1 ? said?.atOne : said?.atHour;
  return `${at?.join(' ') ?? 'at'} ${clock}`;
}
