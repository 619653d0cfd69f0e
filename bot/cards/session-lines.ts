// What stands on a session's cards: who sprays and who is near, what was said of the air and by whom, what was not said.

import { peopleLeading } from '../../core/crew/crew.ts';
import { localDay } from '../../core/crew/local-day.ts';
import type { PersonName } from '../../core/ids.ts';
import { asksDiisocyanateTraining } from '../../core/session/people-rules.ts';
import { exposedIn, flushState, type Session, unacknowledged } from '../../core/session/session.ts';
import { qualifications, sessionGears } from '../../core/session/session-commands.ts';
import { watchersOf } from '../../core/session/session-reminders.ts';
import type { SessionPhase } from '../../core/session/session-status.ts';
import { assessmentFor, isStanding } from '../../core/session/supplied-air-rules.ts';
import { type NextActId, statusOf } from '../../core/status.ts';
import type { OpenTask } from '../language/tongues/english/session.ts';
import type { CardAction } from './card.ts';
import type { Telling } from './card-context.ts';
import { nextTaps } from './next-taps.ts';

export function peopleLines(telling: Telling, session: Session): readonly string[] {
  const words = telling.words.session;
  const { sprayers, stays, movedOut, attendant, fromOutside } = session;
  const watchers = watchersOf(session, peopleLeading(telling.shop.crew));
  return [
    words.sprays(sprayers, telling.figures),
    ...(fromOutside === undefined ? [] : [words.saidFromOutside(fromOutside.by, fromOutside.at, telling.figures)]),
    ...(stays.length === 0 ? [] : [words.stays(stays, telling.figures)]),
    ...(movedOut.length === 0 ? [] : [words.movedOut(movedOut, telling.figures)]),
    ...(stays.length + movedOut.length === 0 ? [words.nobodyNear] : []),
    attendant === undefined ? words.noAttendant(watchers, telling.figures) : words.attendant(attendant),
  ];
}

/** What was said, by whom and when; what was not said, as such. */
export function airLines(
  telling: Telling,
  { extraction, suppliedAir }: Pick<Session, 'extraction' | 'suppliedAir'>,
): readonly string[] {
  const words = telling.words.session;
  const fan =
    extraction === undefined
      ? words.extractionNotSaid
      : extraction.running
        ? words.extractionOn(extraction.faceMetresPerSecond, extraction.by, extraction.at, telling.figures)
        : words.extractionOff(extraction.by, extraction.at, telling.figures);
  const air =
    suppliedAir === undefined
      ? words.suppliedNotSaid
      : words.supplied(suppliedAir.supplied, suppliedAir.by, suppliedAir.at, telling.figures);
  return [fan, air];
}

/** What breathing it may do, by the sheet; and on what it rests where nobody said that there is supplied air. */
export function breathingLines(telling: Telling, session: Session): readonly string[] {
  const words = telling.words.session;
  const { sheet, suppliedAir } = session;
  const { spray: settings, zone } = telling.shop.crew;
  const assessment = assessmentFor({ session, settings, at: telling.now });
  const rests =
    suppliedAir?.supplied !== true && assessment !== undefined && isStanding(assessment, { zone, at: telling.now });
  return [
    ...(sheet.sensitisers === undefined
      ? [words.sensitisersOpen]
      : sheet.sensitisers.named.length === 0
        ? []
        : [words.sensitisers(sheet.sensitisers.named, telling.figures)]),
    ...(asksDiisocyanateTraining(session, settings) ? [telling.words.law.diisocyanates] : []),
    ...(rests ? [words.restsOn(assessment, sheet.name, telling.figures)] : []),
  ];
}

export function acknowledgedLines(telling: Telling, session: Session): readonly string[] {
  const words = telling.words.session;
  const left = unacknowledged(session);
  return [
    ...session.acknowledged.map(({ person, at, witness }) => words.acknowledged(person, at, witness, telling.figures)),
    left.length > 0 ? words.notAcknowledged(left, telling.figures) : words.allAcknowledged,
  ];
}

/** Fit test, medical and training of everybody exposed: what is past its date, and what nobody has dated. */
export function dateLines(telling: Telling, session: Session): readonly string[] {
  const words = telling.words.session;
  const today = localDay(telling.shop.crew.zone, telling.now);
  const datesOf = (person: PersonName) => telling.shop.crew.spray.dates.get(person) ?? {};
  const exposed = exposedIn(session);
  const past = exposed.flatMap((person) =>
    qualifications.flatMap((what) => {
      const until = datesOf(person)[what];
      return until !== undefined && until < today ? [words.outOfDate(person, what, until, telling.figures)] : [];
    }),
  );
  // Whoever lacks the same dates stands in one line.
  const unknownOf = (person: PersonName) => qualifications.filter((what) => datesOf(person)[what] === undefined);
  const undated = exposed.flatMap((person, i) => {
    const alike = exposed.filter((other) => unknownOf(other).join() === unknownOf(person).join());
    if (unknownOf(person).length === 0 || exposed.indexOf(alike[0] ?? '') !== i) return [];
    return [words.undated(telling.figures.list(alike), unknownOf(person), telling.figures)];
  });
  return [...past, ...undated];
}

export function hasPastDate(telling: Telling, session: Session): boolean {
  const today = localDay(telling.shop.crew.zone, telling.now);
  return exposedIn(session).some((person) =>
    Object.values(telling.shop.crew.spray.dates.get(person) ?? {}).some((until) => until < today),
  );
}

export function sessionState({ words: { page, session: words } }: Telling, phase: SessionPhase): string {
  switch (phase.is) {
    case 'closed':
      return words.closed;
    case 'sprays':
      return page.sprays;
    case 'briefed':
      return page.briefed;
    case 'still':
      return page.gunStill;
  }
}

/** Once the gun has come to rest. */
export const flushing: readonly NextActId[] = ['flush-step', 'flush', 'vessels', 'rags'];

/** What comes next, or of that only these. */
export function sessionTaps(telling: Telling, session: Session, ids?: readonly NextActId[]): readonly CardAction[] {
  return nextTaps(telling, statusOf.session(telling, session).next(), ids);
}

export function stillOpen(session: Session): readonly OpenTask[] {
  return [
    ...sessionGears.filter((gear) => !flushState(session, gear).done),
    ...(session.spraying.length > 0 && session.rags === undefined ? (['rags'] as const) : []),
  ];
}
