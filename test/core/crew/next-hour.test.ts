// An hour of the wall clock against every half hour of the days round a change of the clocks.

import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { nextHour } from '../../../core/crew/local-day.ts';
import { epochMs } from '../../../core/units.ts';

/** The clocks go forward on 8 March 2026 in Chicago, on 29 March in Oslo, and back in autumn: tz database. */
const springAndAutumn = [Date.UTC(2026, 2, 7), Date.UTC(2026, 2, 28), Date.UTC(2026, 9, 24), Date.UTC(2026, 9, 31)];
const zones = ['UTC', 'America/Chicago', 'Europe/Oslo', 'Australia/Lord_Howe'];
const minute = 60_000;
/** Each of these zones is whole half hours from UTC, before and after its change: no hour begins between two of them. */
const halfHour = 30 * minute;

describe('the hour that comes next', () => {
  it('given any moments in any order, then it is the first minute after each at which the wall shows that hour', () => {
    let shown = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.integer({ min: 4, max: 23 }),
        fc.constantFrom(...springAndAutumn),
        fc.array(fc.integer({ min: 0, max: 2 * 24 * 60 }), { minLength: 1, maxLength: 8 }),
        (zone, hour, start, moments) => {
          for (const moment of moments) {
            const after = epochMs(start + moment * minute);
            const { at, date } = nextHour(after, zone, hour);
            let instant = (Math.floor(after / halfHour) + 1) * halfHour;
            let wall = DateTime.fromMillis(instant, { zone });
            while (wall.hour !== hour || wall.minute !== 0) {
              instant += halfHour;
              wall = DateTime.fromMillis(instant, { zone });
            }
            expect([at, date]).toEqual([wall.toMillis(), wall.toISODate()]);
            shown += 1;
          }
        },
      ),
      { numRuns: 40 },
    );
    expect(shown).toBeGreaterThan(100);
  });

  it('given an hour that the clocks leave out, then it comes an hour later on that day, and at its own on the next', () => {
    const inOslo = (iso: string) => epochMs(DateTime.fromISO(iso, { zone: 'Europe/Oslo' }).toMillis());
    expect(nextHour(inOslo('2026-03-29T01:30'), 'Europe/Oslo', 2).at).toBe(inOslo('2026-03-29T03:00'));
    expect(nextHour(inOslo('2026-03-29T12:00'), 'Europe/Oslo', 2).at).toBe(inOslo('2026-03-30T02:00'));
    expect(nextHour(inOslo('2026-03-30T00:30'), 'Europe/Oslo', 2).at).toBe(inOslo('2026-03-30T02:00'));
  });
});
