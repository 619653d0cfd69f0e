// What rests on an act: what went on from it on the same batch, can, part or session; what was judged by a reading, or
// whose clock ran by it; who took over what was handed over.

import { type FactFor, isFor } from '../event-readers.ts';
import type { Entry, Fact } from '../history.ts';
import { nameIn, nounOf, numberIn, type StreamId } from '../ids.ts';
import { batchOf, type Shop } from '../shop.ts';

/** A later act on the same batch or part goes on from the earlier one; readings of a place stand each for itself. */
export function goesOnFrom(later: Entry, earlier: Entry): boolean {
  if (isFor('aside', later.fact)) return false;
  // What was said of the crew and concerns a pot, such as that it heats, stands under the pot.
  const home = [earlier.stream, ...earlier.alsoUnder].find((stream) => !standsAlone(stream));
  return home !== undefined && (later.stream === home || later.alsoUnder.includes(home));
}

const standsAlone = (stream: StreamId): boolean => nounOf(stream) === 'place' || nounOf(stream) === 'crew';

/**
 * Of `acts` those that rest on `taken`, though nobody goes on from it in the order in which they were recorded: what
 * happened after an act that was said late, what a reading was taken for, a takeover, a countersign.
 */
export function restingOn(shop: Shop, acts: readonly Entry[], taken: readonly Entry[]): readonly Entry[] {
  const going = new Set(taken.map(({ seq }) => seq));
  const others = acts.filter(({ seq }) => !going.has(seq));
  return others.filter((other) => taken.some((entry) => rests(shop, others, other, entry)));
}

function rests(shop: Shop, others: readonly Entry[], other: Entry, entry: Entry): boolean {
  const { fact } = entry;
  if (isFor('place', fact)) {
    const isThere = nameIn(entry.stream) === placeOf(shop, other);
    return isThere && isJudgedBy(fact, other.fact) && serves(others, entry, other);
  }
  if (fact.type === 'HandedOver') {
    return other.fact.type === 'TakenOver' && other.by === fact.to && other.seq > entry.seq;
  }
  if (fact.type === 'FirstShiftBegun') {
    return other.fact.type === 'FirstShiftCountersigned' && other.fact.person === entry.by && other.seq > entry.seq;
  }
  // What was recorded later goes on from it, by whomever; what was recorded before it, where it happened after.
  return (other.seq > entry.seq || other.happenedAt > entry.happenedAt) && goesOnFrom(other, entry);
}

/** By the air a pot's clocks, a coat, a cure in the room; by the steel a coat; by a night's lowest a cure too. */
function isJudgedBy(reading: FactFor<'place'>, fact: Fact): boolean {
  switch (reading.type) {
    case 'AirRead':
      return isFor('air', fact);
    case 'SurfaceRead':
      return isFor('steel', fact);
    case 'LowestRead':
      return isFor('night', fact);
    case 'GasRead':
      return isFor('begins', fact);
  }
}

/** From the reading on, until the next of its kind at that place. */
function serves(others: readonly Entry[], reading: Entry, act: Entry): boolean {
  if (act.happenedAt < reading.happenedAt) return false;
  return !others.some(
    (next) =>
      next.stream === reading.stream &&
      next.fact.type === reading.fact.type &&
      next.happenedAt > reading.happenedAt &&
      next.happenedAt <= act.happenedAt,
  );
}

/** Where it was done: a part is where the batch of its last coat is. */
function placeOf(shop: Shop, { stream, fact }: Entry): string | undefined {
  if (fact.type === 'BatchOpened') return fact.place;
  if (fact.type === 'CoatApplied') return shop.batches.get(fact.batch)?.place;
  if (nounOf(stream) === 'batch') return shop.batches.get(numberIn(stream))?.place;
  const part = shop.parts.get(nameIn(stream));
  return part && batchOf(shop, part)?.place;
}
