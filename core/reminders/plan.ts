// What shall ring, when and for whom: a function of the record alone. Nothing else schedules or cancels a bell.

import { batchWishes } from '../batch/batch-reminders.ts';
import { isAct } from '../corrections/undo.ts';
import { type Crew, peopleWithRole } from '../crew/crew.ts';
import { digestWishes } from '../crew/digest-reminder.ts';
import type { Entry } from '../history.ts';
import { batchStream, crewStream, nounOf, type PersonName, partStream, placeStream, type StreamId } from '../ids.ts';
import { phaseOfPart } from '../part/part.ts';
import { batchOf } from '../part/part-decide.ts';
import { partWishes } from '../part/part-reminders.ts';
import { placeWishes } from '../place/place-reminders.ts';
import { airLog, liveBatches, liveParts, type Shop } from '../shop.ts';
import { type EpochMs, epochMs, minutesAfter } from '../units.ts';
import type { RingLog } from './ring-log.ts';
import { movedMs, numberedKey, type PlannedReminder, type Wish } from './wish.ts';

/**
 * The plan of every loaded stream, or of those whose bells events on `touched` can have moved; an ended stream wishes for
 * nothing, so that its rows go.
 */
export function planReminders(
  shop: Shop,
  touched?: ReadonlySet<StreamId>,
): ReadonlyMap<StreamId, readonly PlannedReminder[]> {
  const plan = new Map<StreamId, readonly PlannedReminder[]>();
  const put = (stream: StreamId, rings: RingLog, entries: readonly Entry[], wishes: () => readonly Wish[]) => {
    if (touched !== undefined && !canMove(stream, touched)) return;
    plan.set(
      stream,
      wishes().flatMap((wish) => numbered(shop.crew, rings, lastActAt(entries), wish)),
    );
  };
  for (const batch of shop.batches.values()) {
    put(batchStream(batch.number), batch.rings, batch.entries, () => batchWishes(batch, airLog(shop, batch.place)));
  }
  for (const part of shop.parts.values()) {
    const batch = batchOf(shop, part);
    const wishes = () => partWishes(part, batch?.sheet, airLog(shop, batch?.place));
    put(partStream(part.name), part.rings, part.entries, wishes);
  }
  for (const place of shop.places.values()) {
    const wishes = () => placeWishes(place, shop.crew.airLimitMinutes, concernedBy(shop, place.name));
    put(placeStream(place.name), place.rings, [], wishes);
  }
  put(crewStream, shop.crew.rings, [], () => digestWishes(shop.crew));
  return plan;
}

/** Air and settings move everything; a batch or part moves itself, and whether its place and the day still matter. */
function canMove(stream: StreamId, touched: ReadonlySet<StreamId>): boolean {
  const noun = nounOf(stream);
  if (noun === 'place' || noun === 'crew' || touched.has(stream)) return true;
  return [...touched].some((moved) => nounOf(moved) === 'place' || nounOf(moved) === 'crew');
}

/** Whose clocks run by a place's air: pots that are not empty, films that flash off or cure in the room. */
function concernedBy(shop: Shop, place: string): readonly PersonName[] {
  const mixers = liveBatches(shop)
    .filter((batch) => batch.place === place && batch.weighing !== undefined && batch.thickened === undefined)
    .map((batch) => batch.openedBy);
  const coaters = liveParts(shop)
    .filter((part) => {
      const phase = phaseOfPart(part);
      return phase.is === 'curing' && phase.cure.way === 'room' && batchOf(shop, part)?.place === place;
    })
    .flatMap((part) => part.coats.at(-1)?.by ?? []);
  return [...new Set([...mixers, ...coaters])];
}

function lastActAt(entries: readonly Entry[]): number {
  return Math.max(0, ...entries.filter(isAct).map((entry) => entry.recordedAt));
}

const wholeMs = (at: number): EpochMs => epochMs(Math.round(at));

/** Rings once for its due time; again when that has moved later; on to others while a critical one goes unheard. */
function numbered(crew: Crew, log: RingLog, actedAt: number, wish: Wish): readonly PlannedReminder[] {
  const rings = log.get(wish.key) ?? [];
  const last = rings.at(-1);
  const next = rings.length + 1;
  const planned = (change: Partial<Wish>): readonly PlannedReminder[] => [
    // Whole milliseconds: a tenth of a minute is not one in binary.
    {
      ...wish,
      ...change,
      dueAt: wholeMs(change.dueAt ?? wish.dueAt),
      ring: next,
      numberedKey: numberedKey(wish.key, next),
    },
  ];
  if (last === undefined || wish.dueAt > last.rangAt + movedMs) return planned({});
  const heard = last.answered !== undefined || actedAt > last.rangAt;
  if (!wish.critical || heard) return [];
  const unheard = rings.filter((ring) => ring.rangAt >= wish.dueAt).length;
  const to = unheard === 1 ? peopleWithRole(crew, 'lead') : unheard === 2 ? peopleWithRole(crew, 'supervisor') : [];
  return to.length === 0 ? [] : planned({ to, dueAt: minutesAfter(last.rangAt, crew.escalationMinutes) });
}
