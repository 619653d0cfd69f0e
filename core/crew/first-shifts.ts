// Who is in their first shift: led through it step by step, until a lead countersigns it or it is left.

import { type FactFor, isFor } from '../event-readers.ts';
import type { Entry } from '../history.ts';
import type { PersonName } from '../ids.ts';
import type { EpochMs } from '../units.ts';

export interface FirstShift {
  readonly at: EpochMs;
  /** Of its beginning: what was recorded later belongs to it. */
  readonly seq: number;
}

export type FirstShifts = ReadonlyMap<PersonName, FirstShift>;

export function foldFirstShifts(entries: readonly Entry[]): FirstShifts {
  return entries.reduce<FirstShifts>((on, entry) => {
    const { fact } = entry;
    return isFor('first-shift', fact) ? withFact(on, fact, entry) : on;
  }, new Map());
}

function withFact(on: FirstShifts, fact: FactFor<'first-shift'>, { by, happenedAt: at, seq }: Entry): FirstShifts {
  switch (fact.type) {
    case 'FirstShiftBegun':
      return on.has(by) ? on : new Map([...on, [by, { at, seq }]]);
    case 'FirstShiftCountersigned':
    case 'FirstShiftLeft':
      return new Map([...on].filter(([name]) => name !== fact.person));
  }
}
