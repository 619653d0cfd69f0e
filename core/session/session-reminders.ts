// What a session rings: the brief ahead of its time; the spell and the air, to whoever stands outside; the gun, the
// moment it comes to rest and every few minutes until it is said to be flushed, the vessels after it, once a pot is over; the
// fan at the end.

import { type PersonName, sessionStream } from '../ids.ts';
import { type EpochMs, epochMs, type Minutes, minutes, minutesAfter } from '../units.ts';
import { type Reminder, type ReminderKind, remind } from '../wanted-reminder.ts';
import { exposedIn, fanUntil, flushState, isRunning, type Session, stoppedAt, unacknowledged } from './session.ts';
import type { SessionGear } from './session-commands.ts';

/** Where the sheet gives no figure: common practice, no source. */
const usualEvery = minutes(5);
/** From the third ring on the lead hears it too. */
const ringsAlone = 3;
/** An hour of rings; nobody hears better for a thirteenth. */
const ringsClose = 12;
const laterEvery = minutes(30);

interface Around {
  /** When the first of its pots is over. */
  readonly vesselsFreeAt: EpochMs | undefined;
  /** Everybody is to stay out of its place: nobody is called in to flush. */
  readonly isOut: boolean;
}

export function sessionReminders(
  session: Session,
  leads: readonly PersonName[],
  ahead: Minutes,
  { vesselsFreeAt, isOut }: Around,
): readonly Reminder[] {
  const watchers = watchersOf(session, leads);
  if (session.closedAt !== undefined) return fanReminders(session, watchers);
  return [
    ...briefReminders(session, ahead),
    ...duringReminders(session, watchers),
    ...(isOut
      ? []
      : [
          ...flushReminders(session, 'gun', [...session.sprayers, ...watchers], leads),
          ...flushReminders(session, 'vessels', [...session.sprayers, ...watchers], leads, vesselsFreeAt),
        ]),
  ];
}

/** Nobody is asked to type inside: the attendant hears the timers, or the leads where none was named. */
export function watchersOf(session: Session, leads: readonly PersonName[]): readonly PersonName[] {
  if (session.attendant !== undefined) return [session.attendant];
  return leads.length > 0 ? leads : session.sprayers;
}

function briefReminders(session: Session, ahead: Minutes): readonly Reminder[] {
  const { startsAt, briefedAt, spraying, attendant } = session;
  if (startsAt === undefined || spraying.length > 0 || unacknowledged(session).length === 0) return [];
  const dueAt = minutesAfter(startsAt, minutes(-ahead));
  const to = [...new Set([...exposedIn(session), ...(attendant === undefined ? [] : [attendant])])];
  return dueAt <= briefedAt ? [] : [reminder(session, 'brief', dueAt, to, true)];
}

function duringReminders(session: Session, watchers: readonly PersonName[]): readonly Reminder[] {
  const first = session.spraying[0];
  const last = session.spraying.at(-1);
  const { spray } = session.sheet;
  if (first === undefined || last === undefined || spray === undefined || !isRunning(session)) return [];
  const rung = (session.rings.get(`${sessionStream(session.number)}/air-recheck`) ?? []).filter(
    ({ dueAt }) => dueAt > last.from,
  );
  const recheckAt = minutesAfter(last.from, minutes(spray.airRecheckMinutes * (rung.length + 1)));
  const endsAt = minutesAfter(first.from, spray.longestSpellMinutes);
  return [
    reminder(session, 'spell-end', endsAt, watchers, true),
    // Once the spell is over they are to stop, and that bell goes on to lead and supervisor.
    ...(recheckAt < endsAt && rung.every(({ rangAt }) => rangAt < endsAt)
      ? [reminder(session, 'air-recheck', recheckAt, watchers)]
      : []),
  ];
}

/** Each ring has its own key and number: answering one does not silence the next, only the flush does. */
function flushReminders(
  session: Session,
  gear: SessionGear,
  people: readonly PersonName[],
  leads: readonly PersonName[],
  freeAt?: EpochMs,
): readonly Reminder[] {
  const stopped = stoppedAt(session);
  if (stopped === undefined || flushState(session, gear).done) return [];
  const name = gear === 'gun' ? 'flush' : 'vessels';
  const every = session.sheet.flush?.everyMinutes ?? usualEvery;
  const prefix = `${sessionStream(session.number)}/${name}/`;
  const rung = [...session.rings].filter(([key]) => key.startsWith(prefix));
  const next = (from: EpochMs) => {
    const since = rung.flatMap(([, rings]) => rings.slice(-1)).filter(({ dueAt }) => dueAt >= from);
    const before = since.length;
    const dueAt = minutesAfter(from, rowOffset(before, every));
    // Rung late, it goes on from then: what nobody could hear is not made up for.
    const lastAt = Math.max(...since.map(({ rangAt }) => rangAt));
    const gap = minutes(rowOffset(before, every) - rowOffset(Math.max(0, before - 1), every));
    return { before, dueAt: lastAt > dueAt ? minutesAfter(epochMs(lastAt), gap) : dueAt };
  };
  const rests = next(restsFrom(session, gear, stopped, every));
  // What rang before the pot was over rings no more often for it.
  const free = freeAt === undefined ? rests : next(freeAt);
  const { before, dueAt } = free.dueAt > rests.dueAt ? free : rests;
  const to = [...new Set(before < ringsAlone ? people : [...people, ...leads])];
  const key = `${prefix}${rung.length + 1}`;
  return [{ ...reminder(session, name, dueAt, to, true), key, ring: 1 }];
}

/** The vessels have the time that the gun takes. A coat alone does not say that it was the last: so has the gun then. */
function restsFrom(session: Session, gear: SessionGear, stopped: EpochMs, every: Minutes): EpochMs {
  const saidByCoat = session.spraying.at(-1)?.from === stopped;
  return gear === 'vessels' || saidByCoat ? minutesAfter(stopped, every) : stopped;
}

function rowOffset(ring: number, every: Minutes): Minutes {
  const close = Math.min(ring, ringsClose);
  return minutes(close * every + (ring - close) * laterEvery);
}

function fanReminders(session: Session, watchers: readonly PersonName[]): readonly Reminder[] {
  const until = fanUntil(session);
  const closedBy = session.closedBy === undefined ? [] : [session.closedBy];
  if (until === undefined || session.closedAt === undefined || until <= session.closedAt) return [];
  return [reminder(session, 'fan-off', until, [...new Set([...watchers, ...closedBy])])];
}

function reminder(
  { number }: Session,
  kind: ReminderKind,
  dueAt: EpochMs,
  to: readonly PersonName[],
  critical = false,
): Reminder {
  return remind(sessionStream(number), kind, epochMs(Math.round(dueAt)), to, { critical });
}
