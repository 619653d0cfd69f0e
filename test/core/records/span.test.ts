// Stretches of whole local days.

import { describe, expect, it } from 'vitest';
import type { SpanAsked } from '../../../core/records/record-questions.ts';
import { daysOf, spanOf } from '../../../core/records/span.ts';
import { epochMs } from '../../../core/units.ts';

/** A Thursday. */
const thursday = epochMs(Date.UTC(2026, 2, 5, 10));
const dates = (asked: SpanAsked, zone = 'UTC') => {
  const span = spanOf(asked, thursday, zone);
  return span && `${span.first} ${span.last}`;
};

describe('stretches of days', () => {
  it.each([
    ['the week begins on Monday', { kind: 'week', which: 'this' }, '2026-03-02 2026-03-08'],
    ['the week before', { kind: 'week', which: 'last' }, '2026-02-23 2026-03-01'],
    ['the month', { kind: 'month', which: 'this' }, '2026-03-01 2026-03-31'],
    ['the month before', { kind: 'month', which: 'last' }, '2026-02-01 2026-02-28'],
    ['the twelve months that end today', { kind: 'year' }, '2025-03-06 2026-03-05'],
    ['a range holds both its days', { kind: 'range', from: '2026-03-01', to: '2026-03-02' }, '2026-03-01 2026-03-02'],
  ] as const)('given a Thursday, then %s', (_, asked, expected) => {
    expect(dates(asked)).toBe(expected);
  });

  it('given days that the calendar does not have, or the wrong way round, then there is no such stretch', () => {
    expect(dates({ kind: 'range', from: '2026-02-30', to: '2026-03-02' })).toBeUndefined();
    expect(dates({ kind: 'range', from: '2026-03-02', to: '2026-03-01' })).toBeUndefined();
  });

  it('given the week in which Madrid puts its clocks forward, then it has seven days and 167 hours', () => {
    const span = spanOf({ kind: 'range', from: '2026-03-23', to: '2026-03-29' }, thursday, 'Europe/Madrid');
    expect(span && (span.to - span.from) / 3_600_000).toBe(167);
    expect(span && daysOf(span, 'Europe/Madrid').map(({ first }) => first)).toHaveLength(7);
  });
});
