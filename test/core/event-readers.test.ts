// A new event names every place that must decide on it; what no row names stays silent on purpose.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { allowed } from '../../core/allowed.ts';
import { verbRows, verbs } from '../../core/commands.ts';
import { isFor, type Reader, readersOf } from '../../core/event-readers.ts';
import { Fact } from '../../core/history.ts';

/** Where each reader decides. */
const places: Readonly<Record<Reader, string>> = {
  opening: 'core/shop-memory.ts',
  batch: 'core/batch/batch.ts',
  can: 'core/can/can.ts',
  part: 'core/part/part.ts',
  place: 'core/place/place.ts',
  session: 'core/session/session.ts',
  shifts: 'core/crew/shifts.ts',
  'first-shift': 'core/crew/first-shifts.ts',
  rings: 'core/ring-log.ts',
  alarms: 'core/crew/open-alarms.ts',
  begins: 'core/crew/alarm-rules.ts',
  crew: 'core/crew/crew.ts',
  spraying: 'core/crew/spray-settled.ts',
  'batch-rules': 'core/records/deviations.ts',
  'can-rules': 'core/records/material-deviations.ts',
  'part-rules': 'core/records/deviations.ts',
  'session-rules': 'core/session/session-deviations.ts',
  air: 'core/corrections/rests-on.ts',
  night: 'core/corrections/rests-on.ts',
  steel: 'core/corrections/rests-on.ts',
  rewrites: 'core/records/holds-that-follow.ts',
  clock: 'core/reminders/plan.ts',
  aside: 'core/corrections/rests-on.ts',
  period: 'core/records/stretch.ts',
  ledger: 'core/records/solvent-ledger.ts',
  timeline: 'core/records/timeline.ts',
  export: 'core/records/export-rows.ts',
};

function typesIn(schema: { readonly options?: readonly unknown[]; readonly shape?: unknown }): readonly string[] {
  if (schema.options !== undefined) return schema.options.flatMap((option) => typesIn(option as typeof schema));
  const { type } = schema.shape as { readonly type: { readonly values: ReadonlySet<string> } };
  return [...type.values];
}

describe('who reads which event', () => {
  it('given a verb that rules may object to, then the event that it leaves is asked again by them', () => {
    const unasked = verbs.filter((verb) => {
      const leaves = verbRows[verb].options?.leaves;
      const readers = Object.entries(readersOf).find(([type]) => type === leaves?.type)?.[1] ?? [];
      return allowed[verb] !== undefined && leaves !== undefined && !readers.some((reader) => /-rules$/.test(reader));
    });
    expect(unasked).toEqual([]);
  });

  it('has a row for every event that there is, and none besides', () => {
    // Several kinds of test leave the same one.
    expect(Object.keys(readersOf).sort()).toEqual([...new Set(typesIn(Fact))].sort());
  });

  it('is asked by each reader, whose cases then leave nothing to a default', () => {
    for (const [reader, file] of Object.entries(places)) {
      const source = readFileSync(file, 'utf8');
      expect(source, reader).toMatch(new RegExp(`isFor\\('${reader}', (?:\\w+\\.)?(?:fact|body)\\)`));
      expect(source, file).not.toMatch(/^ *default:/m);
    }
  });

  it('passes on what a row names, and nothing else', () => {
    expect(isFor('place', { type: 'LidOff' })).toBe(false);
    expect(isFor('can', { type: 'LidOff' })).toBe(true);
  });
});
