// What rang on a stream and who answered: part of every noun's state, so that the plan knows which ring comes next.

import { type FactFor, isFor } from './event-readers.ts';
import type { Entry } from './history.ts';
import { batchStream, canStream, type PersonName, partStream, type StreamId, sessionStream } from './ids.ts';
import { isOwnKey } from './own-key.ts';
import type { EpochMs } from './units.ts';

export interface Ring {
  /** Of its event: what was recorded after it has heard it, if only in the same minute. */
  readonly seq: number;
  readonly ring: number;
  readonly dueAt: EpochMs;
  readonly rangAt: EpochMs;
  readonly to: readonly PersonName[];
  readonly possibleRepeat: boolean;
  readonly answered: { readonly at: EpochMs; readonly by: PersonName } | undefined;
  readonly snoozed: { readonly until: EpochMs; readonly by: PersonName } | undefined;
}

/** Rings by key, each list in order. */
export type RingLog = ReadonlyMap<string, readonly Ring[]>;

const thatEnd = {
  batch: (name: string) => batchStream(Number(name)),
  can: (name: string) => canStream(Number(name)),
  session: (name: string) => sessionStream(Number(name)),
  part: partStream,
} as const;

/** Where a ring of this key is recorded, as far as that may have ended since. */
export function streamOfRing(key = ''): readonly StreamId[] {
  const [noun = '', name = ''] = key.split('/');
  return isOwnKey(thatEnd, noun) ? [thatEnd[noun](name)] : [];
}

/** Below a second a due time has not moved: sums over other pieces differ in their last binary digit. */
export const movedMs = 1000;

/** `before`: what rang before these entries. */
export function foldRings(entries: readonly Entry[], before?: RingLog): RingLog {
  const log = new Map(before);
  for (const entry of entries) {
    const { fact } = entry;
    if (isFor('rings', fact)) log.set(fact.key, withFact(log.get(fact.key) ?? [], fact, entry));
  }
  return log;
}

function withFact(rings: readonly Ring[], fact: FactFor<'rings'>, { seq, happenedAt: at, by }: Entry): readonly Ring[] {
  switch (fact.type) {
    case 'Rang': {
      const { ring, dueAt, to, possibleRepeat } = fact;
      return [...rings, { seq, ring, dueAt, rangAt: at, to, possibleRepeat, answered: undefined, snoozed: undefined }];
    }
    case 'RingAnswered':
      return rings.map((ring) => (ring.answered === undefined ? { ...ring, answered: { at, by } } : ring));
    case 'RingSnoozed':
      return rings.map((ring, i) => (i === rings.length - 1 ? { ...ring, snoozed: { until: fact.until, by } } : ring));
  }
}
