// What rang on a stream and who answered: part of every noun's state, so that the plan knows which ring comes next.

import type { Entry } from './history.ts';
import type { PersonName } from './ids.ts';
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

/** Below a second a due time has not moved: sums over other pieces differ in their last binary digit. */
export const movedMs = 1000;

export function foldRings(entries: readonly Entry[]): RingLog {
  const log = new Map<string, Ring[]>();
  for (const { seq, fact, happenedAt, by } of entries) {
    if (fact.type === 'Rang') {
      const rings = log.get(fact.key) ?? [];
      rings.push({
        seq,
        ring: fact.ring,
        dueAt: fact.dueAt,
        rangAt: happenedAt,
        to: fact.to,
        possibleRepeat: fact.possibleRepeat,
        answered: undefined,
        snoozed: undefined,
      });
      log.set(fact.key, rings);
    } else if (fact.type === 'RingAnswered') {
      const rings = log.get(fact.key) ?? [];
      const answered = { at: happenedAt, by };
      log.set(
        fact.key,
        rings.map((ring) => (ring.answered === undefined ? { ...ring, answered } : ring)),
      );
    } else if (fact.type === 'RingSnoozed') {
      const rings = log.get(fact.key) ?? [];
      const last = rings.at(-1);
      if (last === undefined) continue;
      log.set(fact.key, [...rings.slice(0, -1), { ...last, snoozed: { until: fact.until, by } }]);
    }
  }
  return log;
}
