// A can's last day as labels print it: a day, or a month for its last day (`2026-12`, `12/2026`, `December 2026`, `12/26`).

import { DateTime } from 'luxon';
import { isFailed } from '../../../core/failed.ts';
import type { Fault } from '../reading.ts';
import type { Span, Token } from '../typed/token.ts';
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

/** `12/26`, `dec 26` behind the word for it: a label's month with its short year. Of a year that no can has, it is asked. */
export function lastDayShort(tokens: readonly Token[], from: number, typed: OnLine): DateTyped | Fault | undefined {
  const { line, context } = typed;
  const start = tokens[from]?.start ?? line.length;
  const [text = '', said = '', by = '', last = ''] = shortYear.exec(line.slice(start)) ?? [];
  const inFigures = /^\d/.test(said);
  const month = inFigures ? Number(said) : monthNamed(said, context.country);
  if (text === '' || month === undefined || (inFigures && !/[/-]/.test(by))) return undefined;
  const whole = { text, start, end: start + text.length };
  const to = tokens.filter((token) => token.start < whole.end).length;
  const today = DateTime.fromMillis(context.now, { zone: context.zone });
  const year = 2000 + Number(last);
  if (year >= today.year - longestPast && year <= today.year + longestKept) return monthsEnd(whole, year, month, to);
  const days = inFigures
    ? [[month, Number(last)] as const, [Number(last), month] as const]
    : [[month, Number(last)] as const];
  const couldBe = days.flatMap(([of, day]) => {
    const next = [today.year, today.year + 1].map((each) => DateTime.utc(each, of, day));
    const first = next.find((each) => each.isValid && each.toISODate() >= today.toFormat('yyyy-MM-dd'));
    return first === undefined ? [] : [context.country.dateTyped(first.setLocale(context.country.locale))];
  });
  if (couldBe.length === 0) return { failed: 'impossible', token: whole };
  const tries = couldBe.map((each) => line.slice(0, whole.start) + each + line.slice(whole.end));
  return { failed: 'ambiguous-time', token: whole, couldBe: [...new Set(couldBe)], tries };
}

const shortYear = /^(\p{L}{3,}|\d{1,2})\.?(\s*[/-]\s*|\s+(?:de\s+)?)['’]?(\d\d)(?![\p{L}\d]|[/.,-]\d)/u;

/** In years: how long ago a can that somebody opens may have run out, and how long one is kept. */
const longestPast = 5;
const longestKept = 15;

function monthsEnd(token: Span, year: number, month: number, to: number): DateTyped | Fault {
  const date = DateTime.utc(year, month).endOf('month');
  const isReal = month >= 1 && month <= 12 && date.isValid;
  return isReal ? { date: date.toISODate(), hasYear: true, to } : { failed: 'impossible', token };
}
