// A can's last day as labels print it: a day, or a month for its last day (`2026-12`, `12/2026`, `December 2026`).

import { DateTime } from 'luxon';
import { isFailed } from '../../../core/failed.ts';
import type { Fault } from '../reading.ts';
import type { Token } from '../typed/token.ts';
import { type DateTyped, dateTypedFrom, monthNamed, type OnLine } from './date-typed.ts';

const monthShape = /^(\d{4})-(\d{1,2})$/;
const monthFirst = /^(\d{1,2})[/-](\d{4})$/;

/** The last day that begins at token `from`; `undefined` where none does. It is to come, so that its year must be said. */
export function lastDayOf(tokens: readonly Token[], from: number, typed: OnLine): DateTyped | Fault | undefined {
  const token = tokens[from];
  const next = tokens[from + 1];
  if (token === undefined) return undefined;
  const day = dateTypedFrom(tokens, from, typed);
  if (day !== undefined) return isFailed(day) || day.hasYear ? day : undefined;
  const yearFirst = monthShape.exec(token.text);
  const together = monthFirst.exec(token.text);
  if (yearFirst !== null) return monthsEnd(token, Number(yearFirst[1]), Number(yearFirst[2]), from + 1);
  if (together !== null) return monthsEnd(token, Number(together[2]), Number(together[1]), from + 1);
  if (next === undefined || !/^\d{4}$/.test(next.text)) return undefined;
  const month = monthNamed(token.text, typed.context.country);
  if (month !== undefined) return monthsEnd(token, Number(next.text), month, from + 2);
  // The reader of numbers takes `12/2026` apart.
  const isApart = token.kind === 'number' && next.kind === 'number' && next.start === token.end + 1;
  return isApart ? monthsEnd(token, Number(next.text), Number(token.text), from + 2) : undefined;
}

function monthsEnd(token: Token, year: number, month: number, to: number): DateTyped | Fault {
  const date = DateTime.utc(year, month).endOf('month');
  const isReal = month >= 1 && month <= 12 && date.isValid;
  return isReal ? { date: date.toISODate(), hasYear: true, to } : { failed: 'impossible', token };
}
