// What rang within a stretch of time, and when it was heard: answered by name, or by going on with the work.

import { type Entry, isAct } from '../history.ts';
import { crewStream } from '../ids.ts';
import type { Ring } from '../ring-log.ts';
import { nounsIn, type Shop } from '../shop.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { isWithin, type Span } from './span.ts';

export interface RingHeard {
  readonly key: string;
  readonly ring: Ring;
  /** `undefined`: by nobody. */
  readonly heardAt: EpochMs | undefined;
}

/** Without the crew's own: those are lists, and nobody answers a list. */
export function ringsHeard(shop: Shop, span: Pick<Span, 'from' | 'to'>): readonly RingHeard[] {
  const nouns = nounsIn(shop).filter(({ stream }) => stream !== crewStream);
  return nouns.flatMap(({ noun }) => {
    const acts = noun.entries.filter(isAct);
    return [...noun.rings].flatMap(([key, list]) =>
      list.filter((ring) => isWithin(span, ring.rangAt)).map((ring) => ({ key, ring, heardAt: heardAt(ring, acts) })),
    );
  });
}

/** Any later act on the same thing counts, at the time at which it was told. */
function heardAt(ring: Ring, acts: readonly Entry[]): EpochMs | undefined {
  const acted = acts.filter(({ seq }) => seq > ring.seq).sort((a, b) => a.seq - b.seq)[0]?.recordedAt;
  const named = ring.answered?.at;
  if (named === undefined || acted === undefined) return named ?? acted;
  return epochMs(Math.min(named, acted));
}
