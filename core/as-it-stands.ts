// The reading of a history in which corrections stand in place, in the order in which things happened. What was corrected
// stays visible beside what replaced it.

import { isFor } from './event-readers.ts';
import type { Correction, Entry, Envelope, Fact } from './history.ts';
import type { EpochMs } from './units.ts';

/**
 * A stream's history as it now stands: corrections applied in place, what was undone left out, in the order in which
 * things happened. A batch's, can's or session's opening stays first, since everything else rests on it.
 */
export function asItStands(envelopes: readonly Envelope[]): readonly Entry[] {
  const standing = new Map<number, Entry>();
  for (const envelope of envelopes) {
    const { body } = envelope;
    if (body.type !== 'Amended') {
      standing.set(envelope.seq, asItWasSaid(envelope, body));
      continue;
    }
    const entry = standing.get(body.amends);
    if (entry === undefined) continue;
    if (body.to.kind === 'undone') standing.delete(body.amends);
    else standing.set(body.amends, corrected(entry, envelope, body.to.fact, body.to.happenedAt, body.why));
  }
  return [...standing.values()].sort(inOrder);
}

/** In which order the entries of a stream are folded. */
export function inOrder(a: Entry, b: Entry): number {
  const opens = ({ fact }: Entry) => (isFor('opening', fact) ? 0 : 1);
  return opens(a) - opens(b) || a.happenedAt - b.happenedAt || a.seq - b.seq;
}

function asItWasSaid(envelope: Envelope, fact: Fact): Entry {
  return { ...envelope, fact, corrections: [] };
}

/** The same with events that happened after all of these; `undefined` where one of them belongs further up. */
export function asItStandsWith(entries: readonly Entry[], added: readonly Envelope[]): readonly Entry[] | undefined {
  let last = entries.at(-1);
  const more: Entry[] = [];
  for (const envelope of added) {
    const { body, happenedAt } = envelope;
    const follows = last !== undefined && happenedAt >= last.happenedAt;
    if (!follows || body.type === 'Amended' || isFor('opening', body)) return undefined;
    last = asItWasSaid(envelope, body);
    more.push(last);
  }
  return [...entries, ...more];
}

/** What had happened by `at`, in the order in which it did; an opening also where it came later. */
export function asItStoodAt(entries: readonly Entry[], at: EpochMs): readonly Entry[] {
  return entries.filter(({ fact, happenedAt }) => happenedAt <= at || isFor('opening', fact));
}

/** What comes before an entry of a stream, also within the same minute. */
export function before(entries: readonly Entry[], { seq }: Entry): readonly Entry[] {
  const index = entries.findIndex((entry) => entry.seq === seq);
  return index === -1 ? entries : entries.slice(0, index);
}

function corrected(entry: Entry, by: Envelope, fact: Fact, happenedAt: EpochMs, why: string): Entry {
  const correction: Correction = {
    seq: by.seq,
    request: by.request,
    by: by.by,
    at: by.recordedAt,
    why,
    wasFact: entry.fact,
    wasAt: entry.happenedAt,
  };
  return { ...entry, fact, happenedAt, corrections: [...entry.corrections, correction] };
}
