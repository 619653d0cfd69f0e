// A coat that was told of another part or another pot than it was put on, or came from. It lies under both, so that it is
// taken back there and told where it belongs: at its time, by whoever told it, with what it was told of first.

import { findBatch } from '../batch/batch-decide.ts';
import type { Said } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { Entry, Fact, FactOf, NewEvent } from '../history.ts';
import { batchStream, nounOf, type PersonName, partStream } from '../ids.ts';
import type { Unclear } from '../objections.ts';
import { livePartNames, type Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';

type CoatTold = FactOf<'CoatApplied'>;

/** `undefined`: it stays where it is. */
export function movedCoat(was: Entry, fact: Fact): CoatTold | undefined {
  if (was.fact.type !== 'CoatApplied' || fact.type !== 'CoatApplied') return undefined;
  return fact.part === was.fact.part && fact.batch === was.fact.batch ? undefined : fact;
}

/** Under the part and the pot that are right now; `by`: whoever told it stays who did it. */
export function coatThere(
  shop: Shop,
  was: Entry & { readonly fact: CoatTold },
  moved: CoatTold,
  { at, by, why }: { readonly at: EpochMs; readonly by: PersonName; readonly why: string },
): NewEvent | Failed<Unclear> {
  if (!shop.parts.has(moved.part)) {
    return failed({ code: 'no-such-part', part: moved.part, live: livePartNames(shop) });
  }
  const batch = findBatch(shop, moved.batch, () => true);
  if (isFailed(batch)) return batch;
  const { part, batch: from } = was.fact;
  return coatTold(was, { ...moved, toldOf: { part, batch: from, why } }, { at, by });
}

/** What an undo of such a correction tells again: the coat where it was told first. */
export function coatBack(was: Entry, { by }: Said): readonly NewEvent[] {
  const { fact, happenedAt: at } = was;
  if (fact.type !== 'CoatApplied' || fact.toldOf === undefined) return [];
  const { toldOf, ...coat } = fact;
  const { part, batch } = toldOf;
  return [coatTold(was, { ...coat, part, batch }, { at, by })];
}

/** In the same sessions; whoever told it first stays who put it on. */
function coatTold(was: Entry, coat: CoatTold, { at, by }: { readonly at: EpochMs; readonly by: PersonName }): NewEvent {
  const sessions = was.alsoUnder.filter((stream) => nounOf(stream) === 'session');
  return {
    streams: [partStream(coat.part), batchStream(coat.batch), ...sessions],
    happenedAt: at,
    body: { ...coat, ...(was.by !== by && coat.appliedBy === undefined && { appliedBy: was.by }) },
    saidWith: was.saidWith,
  };
}
