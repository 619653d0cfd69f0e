// What shall ring, when and for whom: a function of the record alone. Nothing else schedules or cancels a bell.

import { batchReminders } from '../batch/batch-reminders.ts';
import { canReminders } from '../can/can-reminders.ts';
import { vesselsFreeAt } from '../coat/vessels-free.ts';
import { type Crew, peopleLeading, peopleWithRole } from '../crew/crew.ts';
import { crewReminders } from '../crew/crew-reminders.ts';
import { onDuty, pingedFor } from '../crew/shifts.ts';
import { isFor } from '../event-readers.ts';
import { type Entry, isAct, lastSeqOf } from '../history.ts';
import {
  batchStream,
  canStream,
  crewStream,
  nounOf,
  type PersonName,
  partStream,
  placeStream,
  type StreamId,
  sessionStream,
} from '../ids.ts';
import { afterCureReminders } from '../part/after-reminders.ts';
import { heldReminders } from '../part/held-reminders.ts';
import { phaseOfPart } from '../part/part.ts';
import { partReminders } from '../part/part-reminders.ts';
import { awaitsCoat, sheetsAtHand } from '../part/surface-life.ts';
import { placeReminders } from '../place/place-reminders.ts';
import { movedMs, type Ring, type RingLog } from '../ring-log.ts';
import { sessionReminders } from '../session/session-reminders.ts';
import { standing } from '../settled.ts';
import { airLog, batchOf, byName, liveBatches, liveParts, type Shop } from '../shop.ts';
import { stayOutOf } from '../stay-out.ts';
import { type EpochMs, epochMs, minutesAfter } from '../units.ts';
import { keepsItsBells } from '../unread.ts';
import { byDueTime, numberedKey, type PlannedReminder, type Reminder } from '../wanted-reminder.ts';
import { morningReminders } from './morning-reminder.ts';
import { withQuietHours } from './quiet-hours.ts';

/**
 * The plan of every loaded stream, or of those whose bells events on `touched` can have moved; an ended stream asks for
 * nothing, so that its rows go. One that does not read whole is in no plan: its rows stay.
 */
export function planReminders(
  shop: Shop,
  touched?: ReadonlySet<StreamId>,
): ReadonlyMap<StreamId, readonly PlannedReminder[]> {
  const plan = new Map<StreamId, readonly PlannedReminder[]>();
  const nouns = new Set([...(touched ?? [])].map(nounOf));
  // Air and settings move everything; a batch or part moves itself, and whether its place and the day still matter.
  const allMove = touched === undefined || nouns.has('place') || nouns.has('crew');
  const put = (
    stream: StreamId,
    rings: RingLog,
    entries: readonly Entry[],
    reminders: () => readonly Reminder[],
    moves = false,
  ) => {
    if (!allMove && !moves && !touched.has(stream)) return;
    if (keepsItsBells(shop, stream)) return;
    plan.set(
      stream,
      reminders()
        .map((reminder) => withQuietHours(shop.crew, handedOn(shop.crew, entries, reminder)))
        .flatMap((reminder) => numbered(shop.crew, rings, entries, reminder)),
    );
  };
  for (const batch of shop.batches.values()) {
    put(batchStream(batch.number), batch.rings, batch.entries, () => batchReminders(batch, airLog(shop, batch.place)));
  }
  const leads = onDuty(shop.crew.shifts, peopleLeading(shop.crew));
  for (const can of shop.cans.values()) {
    put(canStream(can.number), can.rings, can.entries, () => canReminders(can, leads));
  }
  for (const part of shop.parts.values()) {
    const batch = batchOf(shop, part);
    const air = airLog(shop, batch?.place);
    const reminders = () => [
      ...partReminders(part, batch?.sheet, air, sheetsAtHand(shop)),
      ...afterCureReminders(part, batch?.sheet, air, leads),
    ];
    // A new batch brings a sheet, and with it perhaps a shorter life of a surface that waits.
    put(partStream(part.name), part.rings, part.entries, reminders, nouns.has('batch') && awaitsCoat(part));
  }
  for (const place of shop.places.values()) {
    const reminders = () =>
      placeReminders(place, standing(shop.crew, 'air-limit').minutes, concernedBy(shop, place.name));
    put(placeStream(place.name), place.rings, [], reminders, true);
  }
  for (const session of shop.sessions.values()) {
    const reminders = () =>
      sessionReminders(session, leads, standing(shop.crew, 'brief-ahead').minutes, {
        vesselsFreeAt: vesselsFreeAt(shop, session),
        isOut: stayOutOf(shop, session.place) !== undefined,
      });
    // Its vessels are free once a pot is over.
    put(sessionStream(session.number), session.rings, session.entries, reminders, nouns.has('batch'));
  }
  const ofCrew = () => [...crewReminders(shop.crew), ...morningReminders(shop), ...heldReminders(shop)];
  put(crewStream, shop.crew.rings, [], ofCrew, true);
  return plan;
}

/** Everything that shall ring, the soonest first. */
export const plannedRings = (shop: Shop): readonly PlannedReminder[] =>
  [...planReminders(shop).values()].flat().sort(byDueTime);

/** Whose clocks run by a place's air: pots that are not empty, films that flash off or cure in the room. */
function concernedBy(shop: Shop, place: string): readonly PersonName[] {
  const mixers = liveBatches(shop)
    .filter((batch) => batch.place === place && batch.weighing !== undefined && batch.thickened === undefined)
    .flatMap((batch) => pingedFor(shop.crew.shifts, batch.openedBy, batch.openedAt));
  const curing = liveParts(shop).filter((part) => {
    const phase = phaseOfPart(part);
    return phase.is === 'curing' && phase.cure.way === 'room' && batchOf(shop, part)?.place === place;
  });
  const coaters = byName(curing)
    .flatMap((part) => part.coats.slice(-1))
    .flatMap((coat) => pingedFor(shop.crew.shifts, coat.by, coat.at));
  return [...new Set([...mixers, ...coaters])];
}

/** Whoever handed over since the clock began is pinged no more, and the next one is. */
function handedOn({ shifts }: Crew, entries: readonly Entry[], reminder: Reminder): Reminder {
  if (shifts.handovers.length === 0 || entries.length === 0) return reminder;
  const to = reminder.to.flatMap((person) => {
    const began = entries.findLast((entry) => entry.by === person && isFor('clock', entry.fact));
    return began === undefined ? [person] : pingedFor(shifts, person, began.happenedAt);
  });
  return { ...reminder, to: [...new Set(to)] };
}

/** Somebody acted since, and so has heard. */
function hasActedSince(entries: readonly Entry[], seq: number): boolean {
  return entries.some((entry) => lastSeqOf(entry) > seq && isAct(entry) && !isFor('aside', entry.fact));
}

const wholeMs = (at: number): EpochMs => epochMs(Math.round(at));

/** Rings once for its due time; again when that has moved later; on to others while a critical one goes unheard. */
function numbered(crew: Crew, log: RingLog, entries: readonly Entry[], reminder: Reminder): readonly PlannedReminder[] {
  const rings = log.get(reminder.key) ?? [];
  const last = rings.at(-1);
  const next = rings.length + 1;
  const planned = ({ dueAt = reminder.dueAt, to = reminder.to }): readonly PlannedReminder[] => {
    const { kind, stream, key, critical } = reminder;
    // Whole milliseconds: a tenth of a minute is not one in binary.
    return [
      { kind, stream, key, dueAt: wholeMs(dueAt), to, critical, ring: next, numberedKey: numberedKey(key, next) },
    ];
  };
  if (reminder.ring !== undefined) return fixed(rings, reminder, reminder.ring);
  if (last === undefined || reminder.dueAt > last.rangAt + movedMs) return planned({});
  if (last.answered === undefined && last.snoozed !== undefined) {
    return planned({ to: [last.snoozed.by], dueAt: last.snoozed.until });
  }
  if (!reminder.critical || last.answered !== undefined || hasActedSince(entries, last.seq)) return [];
  // A ring that was put off was heard; the count goes on with the one after it.
  const unheard = rings.filter((ring) => ring.rangAt >= reminder.dueAt && ring.snoozed === undefined).length;
  // The leads, then the supervisors; a crew without the one goes on to the other at once.
  const others = [peopleWithRole(crew, 'lead'), peopleWithRole(crew, 'supervisor')].filter(({ length }) => length > 0);
  const to = onDuty(crew.shifts, others[unheard - 1] ?? []);
  return to.length === 0 ? [] : planned({ to, dueAt: minutesAfter(last.rangAt, crew.escalationMinutes) });
}

/** A ring whose place is fixed rings once. */
function fixed(rings: readonly Ring[], reminder: Reminder, ring: number): readonly PlannedReminder[] {
  if (rings.some((rung) => rung.ring === ring)) return [];
  return [{ ...reminder, dueAt: wholeMs(reminder.dueAt), ring, numberedKey: numberedKey(reminder.key, ring) }];
}
