import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Crew, foldCrew } from '../../../core/crew/crew.ts';
import { digestWishes } from '../../../core/crew/digest-reminder.ts';
import { standingDigest } from '../../../core/reminders/standing-digest.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew } from '../given.ts';

/** The clocks go forward on 8 March 2026 in Chicago, on 29 March in Oslo, and back in autumn. */
const springAndAutumn = [Date.UTC(2026, 2, 7), Date.UTC(2026, 2, 28), Date.UTC(2026, 9, 24), Date.UTC(2026, 9, 31)];
const halfHour = 30 * 60_000;

const act = fc.record({
  zone: fc.constantFrom('UTC', 'America/Chicago', 'Europe/Oslo', 'Australia/Lord_Howe'),
  digestHour: fc.integer({ min: 0, max: 23 }),
  /** Mostly a little later than the act before, at times earlier: another writer's clock. */
  laterMs: fc.oneof(fc.integer({ min: 0, max: 40 * halfHour }), fc.integer({ min: -2 * halfHour, max: 0 })),
  newSettings: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
});

it('given acts in any order of zones and hours, then the digest that stands is the one that each asks for', () => {
  let stood = 0;
  fc.assert(
    fc.property(fc.constantFrom(...springAndAutumn), fc.array(act, { maxLength: 60 }), (start, acts) => {
      let at = start;
      let crew: Crew = foldCrew(demoCrew, [], undefined);
      for (const { zone, digestHour, laterMs, newSettings } of acts) {
        at += laterMs;
        crew = { ...crew, lastActedAt: epochMs(at), ...(newSettings ? { zone, digestHour } : {}) };
        const before = standingDigest(crew);
        expect(before).toEqual(digestWishes(crew));
        if (standingDigest({ ...crew }) === before) stood += 1;
      }
    }),
    { numRuns: 60 },
  );
  expect(stood).toBeGreaterThan(100);
});

it('given another lead or supervisor, then the digest is for whoever that is now', () => {
  const crew = { ...foldCrew(demoCrew, [], epochMs(Date.UTC(2026, 2, 2, 8))) };
  expect(standingDigest(crew)[0]?.to).toEqual(['rosa']);
  const people = demoCrew.people.filter(({ role }) => role !== 'supervisor');
  expect(standingDigest({ ...crew, people })[0]?.to).toEqual(['omar']);
});
