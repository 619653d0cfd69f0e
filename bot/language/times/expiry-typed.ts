// A can's last day as labels print it: `2026-12-31`, `2026-12` or `12/2026` (the month's last day). Other orders of day
// and month can be read two ways and are asked for anew.

import { DateTime } from 'luxon';
import type { Token } from '../typed/token.ts';
import { readDate } from './time-typed.ts';

export interface LastDay {
  /** ISO. */
  readonly date: string;
  /** Index of the token after it. */
  readonly to: number;
}

const monthShape = /^(\d{4})-(\d{1,2})$/;
const monthFirst = /^(\d{1,2})[/-](\d{4})$/;

/** The last day that begins at token `from`; `undefined` where none does. */
export function lastDayOf(tokens: readonly Token[], from: number): LastDay | 'no-such-day' | undefined {
  const token = tokens[from];
  const next = tokens[from + 1];
  if (token === undefined) return undefined;
  const day = readDate(token.text);
  if (day === 'no-such-time') return 'no-such-day';
  if (day !== undefined) return { date: iso(day.year, day.month, day.day), to: from + 1 };
  const yearFirst = monthShape.exec(token.text);
  const together = monthFirst.exec(token.text);
  if (yearFirst !== null) return monthsEnd(Number(yearFirst[1]), Number(yearFirst[2]), from + 1);
  if (together !== null) return monthsEnd(Number(together[2]), Number(together[1]), from + 1);
  // The reader of numbers takes `12/2026` apart.
  const isApart = token.kind === 'number' && next?.kind === 'number' && next.start === token.end + 1;
  return isApart && /^\d{4}$/.test(next.text) ? monthsEnd(Number(next.text), Number(token.text), from + 2) : undefined;
}

function monthsEnd(year: number, month: number, to: number): LastDay | 'no-such-day' {
  if (!Number.isInteger(month) || month < 1 || month > 12) return 'no-such-day';
  const last = DateTime.utc(year, month).daysInMonth;
  return last === undefined ? 'no-such-day' : { date: iso(year, month, last), to };
}

function iso(year: number, month: number, day: number): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)}`;
}
