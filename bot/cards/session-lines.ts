// What stands on a session's cards: who sprays and who is near, what was said of the air and by whom, what was not said.

import { peopleWithRole } from '../../core/crew/crew.ts';
import type { PersonName } from '../../core/ids.ts';
import { localDate } from '../../core/records/day.ts';
import { exposedIn, flushState, type Session, unacknowledged } from '../../core/session/session.ts';
import { qualifications } from '../../core/session/session-commands.ts';
import { watchersOf } from '../../core/session/session-reminders.ts';
import type { CardAction } from './card.ts';
import { type Telling, tap } from './card-context.ts';

export function peopleLines(t: Telling, session: Session): readonly string[] {
  const words = t.words.session;
  const { sprayers, stays, movedOut, attendant } = session;
  const watchers = watchersOf(session, peopleWithRole(t.shop.crew, 'lead'));
  return [
    words.sprays(t.f.list(sprayers)),
    ...(stays.length === 0 ? [] : [words.stays(t.f.list(stays))]),
    ...(movedOut.length === 0 ? [] : [words.movedOut(t.f.list(movedOut))]),
    ...(stays.length + movedOut.length === 0 ? [words.nobodyNear] : []),
    attendant === undefined ? words.noAttendant(t.f.list(watchers)) : words.attendant(attendant),
  ];
}

/** What was said, by whom and when; what was not said, as such. */
export function airLines(t: Telling, { extraction, suppliedAir }: Session): readonly string[] {
  const words = t.words.session;
  const time = (at: Parameters<typeof t.f.timeDown>[0]) => t.f.timeDown(at);
  const fan =
    extraction === undefined
      ? words.extractionNotSaid
      : extraction.running
        ? words.extractionOn(
            extraction.faceMetresPerSecond === undefined
              ? words.notMeasured
              : t.f.speed(extraction.faceMetresPerSecond),
            extraction.by,
            time(extraction.at),
          )
        : words.extractionOff(extraction.by, time(extraction.at));
  const air =
    suppliedAir === undefined
      ? words.suppliedNotSaid
      : words.supplied(suppliedAir.supplied, suppliedAir.by, time(suppliedAir.at));
  return [fan, air];
}

export function acknowledgedLines(t: Telling, session: Session): readonly string[] {
  const words = t.words.session;
  const left = unacknowledged(session);
  return [
    ...session.acknowledged.map(({ person, at, witness }) => words.acknowledged(person, t.f.timeDown(at), witness)),
    left.length > 0 ? words.notAcknowledged(t.f.list(left)) : words.allAcknowledged,
  ];
}

/** Fit test, medical and training of everybody exposed: what is past its date, and what nobody has dated. */
export function dateLines(t: Telling, session: Session): readonly string[] {
  const words = t.words.session;
  const today = localDate(t.now, t.shop.crew.zone);
  const datesOf = (person: PersonName) => t.shop.crew.spray.dates.get(person) ?? {};
  return exposedIn(session).flatMap((person) => {
    const dates = datesOf(person);
    const past = qualifications.flatMap((what) => {
      const until = dates[what];
      return until !== undefined && until < today ? [words.outOfDate(person, words.qualifications[what], until)] : [];
    });
    const unknown = qualifications
      .filter((what) => dates[what] === undefined)
      .map((what) => words.qualifications[what]);
    return [...past, ...(unknown.length === 0 ? [] : [words.undated(person, t.f.list(unknown))])];
  });
}

export function hasPastDate(t: Telling, session: Session): boolean {
  const today = localDate(t.now, t.shop.crew.zone);
  return exposedIn(session).some((person) =>
    Object.values(t.shop.crew.spray.dates.get(person) ?? {}).some((until) => until < today),
  );
}

/** What this session allows next, as taps. */
export function sessionTaps(t: Telling, session: Session): readonly CardAction[] {
  const { number } = session;
  if (session.closedAt !== undefined) return [tap(t, 'brief', 'brief')];
  const running = session.spraying.at(-1)?.to === undefined && session.spraying.length > 0;
  if (running) return [tap(t, 'spray-off', `spray off ${number}`)];
  const open = unacknowledged(session).length > 0;
  const before = session.spraying.length === 0;
  return [
    ...(open ? [tap(t, 'ack', `ack ${number}`), tap(t, 'ack-for', `ack ${number} {people}`)] : []),
    ...(before && session.extraction === undefined
      ? [
          tap(t, 'fan-on', `fan ${number} on {face-velocity}mps`),
          tap(t, 'fan-unmeasured', `fan ${number} on`),
          tap(t, 'fan-off', `fan ${number} off`),
        ]
      : []),
    ...(before && session.suppliedAir === undefined
      ? [tap(t, 'supplied-yes', `supplied ${number} yes`), tap(t, 'supplied-no', `supplied ${number} no`)]
      : []),
    ...(before ? [tap(t, 'moved-out', `near ${number} {people} out`)] : []),
    ...(before ? [] : flushTaps(t, session)),
    ...(open ? [] : [tap(t, 'spray-on', `spray on ${number}`)]),
    ...(before || stillOpen(t, session).length > 0 ? [] : [tap(t, 'close', `close ${number}`)]),
  ];
}

/** The next solvent of the sheet's sequence; the whole where the sheet gives none. */
export function flushTaps(t: Telling, session: Session): readonly CardAction[] {
  const { number } = session;
  const gun = flushState(session, 'gun');
  const [next] = gun.left;
  return [
    ...(gun.done || next === undefined
      ? []
      : [
          {
            id: 'flush-step',
            label: `${t.words.buttons['flush-step']} ${t.words.names.solvent(next)}`,
            line: `flush ${number} gun ${next} {flush-volume}mL`,
          },
        ]),
    ...(gun.done ? [] : [tap(t, 'flush', `flush ${number} gun`)]),
    ...(flushState(session, 'vessels').done ? [] : [tap(t, 'vessels', `flush ${number} vessels`)]),
    ...(session.rags === undefined && session.spraying.length > 0 ? [tap(t, 'rags', `rags ${number}`)] : []),
  ];
}

export function stillOpen(t: Telling, session: Session): readonly string[] {
  const { todo } = t.words.session;
  return [
    ...(flushState(session, 'gun').done ? [] : [todo.gun]),
    ...(flushState(session, 'vessels').done ? [] : [todo.vessels]),
    ...(session.spraying.length > 0 && session.rags === undefined ? [todo.rags] : []),
  ];
}
