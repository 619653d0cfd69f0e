// Takes back one's own last act, until a later act rests on it. Nothing is erased: the correction stands in the record.

import type { CommandOf } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import type { Entry, NewEvent } from '../history.ts';
import { nounOf } from '../ids.ts';
import { entriesIn, type Shop } from '../shop.ts';

export function decideUndo(shop: Shop, said: Said<CommandOf<'undo'>>): Decision {
  const acts = entriesIn(shop).filter(isAct);
  const last = acts.filter((entry) => entry.by === said.by).at(-1);
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
  const events = undone.map(
    (entry): NewEvent => ({
      streams: [entry.stream, ...entry.alsoUnder],
      happenedAt: said.now,
      body: { type: 'Amended', amends: entry.seq, to: { kind: 'undone' }, why: 'undo' },
      saidWith: { despite: [] },
    }),
  );
  return { kind: 'accepted', events };
}

/** What people did, as against what rang and who heard it. */
export function isAct(entry: Entry): boolean {
  return entry.fact.type !== 'Rang' && entry.fact.type !== 'RingAnswered';
}

/** A later act on the same batch or part rests on the earlier one; readings of a place stand each for itself. */
function restsOn(later: Entry, earlier: Entry): boolean {
  const noun = nounOf(earlier.stream);
  if (noun === 'place' || noun === 'crew') return false;
  return later.stream === earlier.stream || later.alsoUnder.includes(earlier.stream);
}
