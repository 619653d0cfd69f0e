// Stretches of whole local days: what `day`, `week`, `month` and a range mean at a given moment in the crew's zone.

import { DateTime } from 'luxon';
import { type EpochMs, epochMs } from '../units.ts';
import type { IsoDate, SpanAsked } from './record-questions.ts';

export interface Span {
  readonly first: IsoDate;
  /** Included. */
  readonly last: IsoDate;
  readonly from: EpochMs;
  /** Without: the first instant of the day after the last. */
  readonly to: EpochMs;
}

/** `undefined` for dates that the calendar does not have, or that stand the wrong way round. Weeks begin on Monday. */
export function spanOf(asked: SpanAsked, now: EpochMs, zone: string): Span | undefined {
  const today = DateTime.fromMillis(now, { zone }).startOf('day');
  switch (asked.kind) {
    case 'day': {
      const { day } = asked;
      if (day === 'today') return between(today, today);
      if (day === 'yesterday') return between(today.minus({ days: 1 }), today.minus({ days: 1 }));
      return between(DateTime.fromISO(day.date, { zone }), DateTime.fromISO(day.date, { zone }));
    }
    case 'week':
    case 'month': {
      const within = asked.which === 'this' ? today : today.minus({ [`${asked.kind}s`]: 1 });
      return between(within.startOf(asked.kind), within.endOf(asked.kind));
    }
    case 'range':
      return between(DateTime.fromISO(asked.from, { zone }), DateTime.fromISO(asked.to, { zone }));
    case 'year':
      return between(today.minus({ years: 1 }).plus({ days: 1 }), today);
  }
}

function between(first: DateTime, last: DateTime): Span | undefined {
  if (!first.isValid || !last.isValid || last < first) return undefined;
  return {
    first: first.toISODate() ?? '',
    last: last.toISODate() ?? '',
    from: epochMs(first.startOf('day').toMillis()),
    to: epochMs(last.startOf('day').plus({ days: 1 }).toMillis()),
  };
}

export function isWithin({ from, to }: Pick<Span, 'from' | 'to'>, at: EpochMs): boolean {
  return at >= from && at < to;
}

/** The first instants of the local days in it, and the end: edges for grouping by day. */
export function daysOf(span: Span, zone: string): readonly Span[] {
  const days: Span[] = [];
  for (let day = DateTime.fromISO(span.first, { zone }); day.toMillis() < span.to; day = day.plus({ days: 1 })) {
    const found = between(day, day);
    if (found !== undefined) days.push(found);
  }
  return days;
}
