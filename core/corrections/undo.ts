// Takes back one's own last act or amendment, until something later rests on it. Nothing is erased: the correction
// stands in the record.

import type { CommandOf } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import { type Correction, type Entry, type EventBody, isAct, type NewEvent } from '../history.ts';
import { nounOf } from '../ids.ts';
import { entriesIn, type Shop } from '../shop.ts';

/** Stands as the reason of what an undo records. */
const undoWhy = 'undo';

export function decideUndo(shop: Shop, said: Said<CommandOf<'undo'>>): Decision {
  const acts = entriesIn(shop).filter(isAct);
  const last = acts.findLast((entry) => entry.by === said.by);
  const amended = lastAmendedBy(said.by, acts);
  // A hold that followed from the amendment is undone with it, never by itself: lifting is for a lead.
  const isLast = amended?.correction.request === last?.request || (amended?.correction.seq ?? 0) > (last?.seq ?? 0);
  if (amended !== undefined && isLast) return undoAmendment(amended, acts, said);
  if (last === undefined) return unclear({ code: 'nothing-to-undo' });
  const undone = acts.filter((entry) => entry.request === last.request);
  for (const entry of undone) {
    const later = acts.find(
      (other) => other.seq > entry.seq && other.request !== entry.request && restsOn(other, entry),
    );
    if (later !== undefined) {
      return unclear({ code: 'undo-rests', by: later.by, at: later.happenedAt, type: later.fact.type });
    }
  }
  return { kind: 'accepted', events: undone.map((entry) => takingBack(entry, { kind: 'undone' }, said)) };
}

interface AmendedEntry {
  readonly entry: Entry;
  readonly correction: Correction;
}

/** A person's last amendment that still stands. */
function lastAmendedBy(by: string, acts: readonly Entry[]): AmendedEntry | undefined {
  return acts
    .flatMap((entry) => standing(entry).map((correction) => ({ entry, correction })))
    .filter(({ correction }) => correction.by === by)
    .sort((a, b) => a.correction.seq - b.correction.seq)
    .at(-1);
}

/** An entry's corrections without those that were taken back: each undo takes back the one before it. */
function standing(entry: Entry): readonly Correction[] {
  const kept: Correction[] = [];
  for (const correction of entry.corrections) {
    if (correction.why === undoWhy) kept.pop();
    else kept.push(correction);
  }
  return kept;
}

function undoAmendment({ entry, correction }: AmendedEntry, acts: readonly Entry[], said: Said): Decision {
  const newer = standing(entry).at(-1);
  if (newer !== undefined && newer.seq !== correction.seq) {
    return unclear({ code: 'undo-rests', by: newer.by, at: newer.at, type: 'Amended' });
  }
  const followed = acts.filter(({ request }) => request === correction.request);
  const later = acts.find(
    (other) => other.seq > correction.seq && restsOn(other, entry) && other.request !== correction.request,
  );
  if (later !== undefined) {
    return unclear({ code: 'undo-rests', by: later.by, at: later.happenedAt, type: later.fact.type });
  }
  const to = { kind: 'corrected' as const, fact: correction.wasFact, happenedAt: correction.wasAt };
  const holds = followed.map((hold) => takingBack(hold, { kind: 'undone' }, said));
  return { kind: 'accepted', events: [takingBack(entry, to, said), ...holds] };
}

function takingBack(entry: Entry, to: Extract<EventBody, { type: 'Amended' }>['to'], said: Said): NewEvent {
  return {
    streams: [entry.stream, ...entry.alsoUnder],
    happenedAt: said.now,
    body: { type: 'Amended', amends: entry.seq, to, why: undoWhy },
    saidWith: { despite: [] },
  };
}

/** A later act on the same batch or part rests on the earlier one; readings of a place stand each for itself. */
function restsOn(later: Entry, earlier: Entry): boolean {
  // A picture rests on nothing.
  if (later.fact.type === 'PhotoFiled') return false;
  const noun = nounOf(earlier.stream);
  if (noun === 'place' || noun === 'crew') return false;
  return later.stream === earlier.stream || later.alsoUnder.includes(earlier.stream);
}
