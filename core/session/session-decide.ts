// What follows from a command about a spray session: its events, or why not.

import { DateTime } from 'luxon';
import type { CommandOf } from '../commands.ts';
import { accepted, type Deciders, type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { EventBody, NewEvent } from '../history.ts';
import {
  type BatchNumber,
  crewStream,
  type PersonName,
  type PlaceName,
  type SessionNumber,
  sessionStream,
} from '../ids.ts';
import { known } from '../known.ts';
import type { Unclear } from '../objections.ts';
import { editionOfToday } from '../rule-editions.ts';
import { judge, objectionsTo, type Rule } from '../rules.ts';
import { liveBatches, onlyOne, openSessions, type Shop, sheetFor } from '../shop.ts';
import { alarmsRung } from '../stay-out.ts';
import type { EpochMs } from '../units.ts';
import { type AckCase, ackRules } from './ack-rules.ts';
import { namedIn } from './people-named.ts';
import { placeOf } from './place-meant.ts';
import { exposedIn, isRunning, type Session, sessionAsOf } from './session.ts';
import { fanMinutesAfter } from './session-air.ts';
import { closeRules, sprayRules, stoppedRules } from './session-rules.ts';
import type { SprayCase } from './spray-case.ts';

/** Which session is meant: the one named, or the only open one that `fits`. */
export function findSession(
  shop: Shop,
  named: SessionNumber | undefined,
  fits: (session: Session) => boolean = () => true,
): Session | Failed<Unclear> {
  const of = openSessions(shop);
  const live = of.map(({ number }) => number);
  if (named === undefined) return onlyOne(of, fits) ?? failed({ code: 'which-session', live });
  return shop.sessions.get(named) ?? failed({ code: 'no-such-session', session: named, live });
}

export function decideBrief(shop: Shop, said: Said<CommandOf<'brief'>>): Decision {
  const { command, at } = said;
  const batch = batchMeant(shop, command.batch);
  if (batch !== undefined && typeof batch !== 'number') return batch;
  const sheet = (batch === undefined ? undefined : shop.batches.get(batch)?.sheet) ?? sheetFor(shop);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const named = namedIn(shop, said, [
    ...[command.sprayers, command.stays, command.out].flatMap((names) => names ?? []),
    ...(command.attendant === undefined ? [] : [command.attendant]),
  ]);
  if (named.is === 'stranger') return named.decision;
  const { asFiled } = named;
  const filed = (names: readonly PersonName[] | undefined) => [...new Set((names ?? []).map(asFiled))];
  const stays = filed(command.stays);
  const out = filed(command.out);
  // Whoever posts a brief and names nobody means to spray.
  const sprayers = command.sprayers === undefined ? [said.by] : filed(command.sprayers);
  const attendant = command.attendant === undefined ? undefined : asFiled(command.attendant);
  // What has happened is recorded as it was.
  if (attendant !== undefined && sprayers.includes(attendant) && said.stance.is !== 'happened') {
    return unclear({ code: 'watcher-sprays', person: attendant });
  }
  const session = shop.nextNumber;
  const place = placeOf(shop, command.place);
  const after = briefBefore(shop, place, at);
  const body: EventBody = {
    type: 'SessionBriefed',
    session,
    sheet,
    place,
    sprayers,
    stays,
    out,
    insideVessel: command.insideVessel === true,
    ...known({ batch, attendant, gramsPerHour: command.gramsPerHour, startsAt: command.startsAt, after }),
  };
  return accepted({ streams: [sessionStream(session), crewStream], happenedAt: at, body });
}

/** The latest brief in this booth on this day, closed by now or not. */
function briefBefore({ crew }: Shop, place: PlaceName, at: EpochMs): SessionNumber | undefined {
  const dayOf = (time: EpochMs) => DateTime.fromMillis(time, { zone: crew.zone }).toISODate();
  const numbers = crew.entries.flatMap(({ fact, happenedAt }) =>
    fact.type === 'SessionBriefed' && fact.place === place && happenedAt <= at && dayOf(happenedAt) === dayOf(at)
      ? [fact.session]
      : [],
  );
  return numbers.at(-1);
}

/** The one named, or the only live one; none yet where the mix is still to come. */
function batchMeant(shop: Shop, named: BatchNumber | undefined): BatchNumber | undefined | Decision {
  const live = liveBatches(shop).map(({ number }) => number);
  if (named === undefined) return live.length === 1 ? live[0] : undefined;
  return shop.batches.has(named) ? named : unclear({ code: 'no-such-batch', batch: named, live });
}

/** What is told of a session and never objected to. */
export const sessionActs: Deciders<'near' | 'ack' | 'fan' | 'supplied' | 'from-outside' | 'spray-off' | 'rags'> = {
  near: (shop, said) => {
    const session = findSession(shop, said.command.session);
    if (isFailed(session)) return unclear(session.failed);
    const { people, goes } = said.command;
    const named = namedIn(shop, said, people, namesOn(session));
    if (named.is === 'stranger') return named.decision;
    const placed: EventBody = { type: 'PeoplePlaced', people: [...new Set(people.map(named.asFiled))], goes };
    return accepted(sessionEvent(session, said, placed));
  },
  ack: decideAck,
  fan: (shop, said) => {
    const { session: named, running, faceMetresPerSecond } = said.command;
    // Switched off after the closing it is the fan of the session that was closed.
    const closed = running || openSessions(shop).length > 0 ? [] : fansOfClosed(shop, said.at);
    const session =
      named === undefined ? (onlyOne(closed, () => true) ?? findSession(shop, named)) : findSession(shop, named);
    if (isFailed(session)) return unclear(session.failed);
    return accepted(
      sessionEvent(session, said, { type: 'ExtractionSaid', running, ...known({ faceMetresPerSecond }) }),
    );
  },
  supplied: onSession(({ supplied }) => [{ type: 'SuppliedAirSaid', supplied }]),
  'from-outside': onSession(() => [{ type: 'SprayedFromOutside' }]),
  'spray-off': (shop, said) => {
    const session = findSession(shop, said.command.session, isRunning);
    if (isFailed(session)) return unclear(session.failed);
    if (session.spraying.length === 0) return unclear({ code: 'not-spraying', session: session.number });
    return accepted(gunStopped(shop, session, said));
  },
  rags: onSession(() => [{ type: 'WasteCanned' }]),
};

/** Of each place the last that was closed, where nobody has said since that its fan is off. */
function fansOfClosed({ sessions }: Shop, at: EpochMs): readonly Session[] {
  const byPlace = new Map<string, Session>();
  for (const session of sessions.values()) {
    const { closedAt, place } = session;
    const later = byPlace.get(place)?.closedAt ?? 0;
    if (closedAt === undefined || closedAt > at || closedAt < later) continue;
    byPlace.set(place, session);
  }
  return [...byPlace.values()].filter(({ extraction }) => extraction?.running === true);
}

function onSession<C extends CommandOf<'supplied' | 'from-outside' | 'rags'>>(
  leaves: (command: C, session: Session) => readonly EventBody[],
  fits?: (session: Session) => boolean,
): (shop: Shop, said: Said<C>) => Decision {
  return (shop, said) => {
    const session = findSession(shop, said.command.session, fits);
    if (isFailed(session)) return unclear(session.failed);
    return accepted(...leaves(said.command, session).map((body) => sessionEvent(session, said, body)));
  };
}

/** Each name by itself: the speaker's own, or others' before the speaker. */
function decideAck(shop: Shop, said: Said<CommandOf<'ack'>>): Decision {
  const session = findSession(shop, said.command.session);
  if (isFailed(session)) return unclear(session.failed);
  const { people } = said.command;
  const named = namedIn(shop, said, people ?? [], namesOn(session));
  if (named.is === 'stranger') return named.decision;
  const names: readonly PersonName[] = people === undefined ? [said.by] : [...new Set(people.map(named.asFiled))];
  const stranger = names.find((name) => !exposedIn(session).includes(name) && name !== session.attendant);
  if (stranger !== undefined) {
    const isOut = session.movedOut.includes(stranger);
    return unclear({ code: 'not-exposed', session: session.number, person: stranger, isOut });
  }
  const situations = names.map((person): AckCase => {
    const witness = person === said.by ? undefined : said.by;
    return { session: sessionAsOf(session, said.at), crew: shop.crew, person, witness, at: said.at };
  });
  return judge(shop, said, ackRules, situations, (saidWith) =>
    situations.map(({ person, witness }) => {
      const body: EventBody = { type: 'BriefAcknowledged', person, ...known({ witness }) };
      return { ...sessionEvent(session, said, body), saidWith };
    }),
  );
}

/** Everybody whom its brief names, wherever they are. */
function namesOn({ sprayers, stays, movedOut, attendant }: Session): readonly PersonName[] {
  return [...sprayers, ...stays, ...movedOut, ...(attendant === undefined ? [] : [attendant])];
}

export function decideSprayOn(shop: Shop, said: Said<CommandOf<'spray-on'>>): Decision {
  const { command } = said;
  const session = findSession(shop, command.session, (candidate) => !isRunning(candidate));
  if (isFailed(session)) return unclear(session.failed);
  const situation = sprayCase(shop, sessionAsOf(session, said.at), said.at, { place: command.place });
  const body: EventBody = { type: 'SprayStarted', place: command.place ?? session.place };
  return ruled(shop, said, session, sprayRules, situation, body);
}

export function decideClose(shop: Shop, said: Said<CommandOf<'close'>>): Decision {
  const session = findSession(shop, said.command.session);
  if (isFailed(session)) return unclear(session.failed);
  const fanMinutes = fanMinutesAfter(session, shop.crew.spray);
  const body: EventBody = { type: 'SessionClosed', ...known({ fanMinutes }) };
  return ruled(shop, said, session, closeRules, { session: sessionAsOf(session, said.at) }, body);
}

/** What it stops is told, and never refused: where it ran on with its fan off, it is recorded against that. */
export function gunStopped(shop: Shop, session: Session, said: Said): NewEvent {
  const situation = sprayCase(shop, sessionAsOf(session, said.at), said.at, {});
  const despite = objectionsTo(stoppedRules, situation, editionOfToday).map(({ code }) => code);
  return { ...sessionEvent(session, said, { type: 'SprayStopped' }), saidWith: { despite } };
}

function ruled<Case>(
  shop: Shop,
  said: Said,
  session: Session,
  rules: readonly Rule<Case>[],
  situation: Case,
  body: EventBody,
): Decision {
  return judge(shop, said, rules, [situation], (saidWith) => [{ ...sessionEvent(session, said, body), saidWith }]);
}

export function sessionEvent(session: Session, said: Said, body: EventBody): NewEvent {
  return { streams: [sessionStream(session.number)], happenedAt: said.at, body };
}

/** The session as a rule looks at it. */
export function sprayCase(
  shop: Shop,
  session: Session,
  at: SprayCase['at'],
  of: { readonly batch?: BatchNumber; readonly place?: string | undefined },
): SprayCase {
  const batch = of.batch ?? session.batch;
  return {
    session,
    settings: shop.crew.spray,
    zone: shop.crew.zone,
    alarmsRung: alarmsRung(shop.crew.alarmEntries),
    batch: batch === undefined ? undefined : shop.batches.get(batch),
    place: of.place,
    at,
  };
}

/**
 * The session under which a batch is sprayed at `at`, as it was by then: its own, else any that was open; of several the
 * latest brief.
 */
export function sessionForCoat(shop: Shop, batch: BatchNumber, at: EpochMs): Session | undefined {
  const open = [...shop.sessions.values()]
    .filter(({ briefedAt, closedAt }) => briefedAt <= at && (closedAt === undefined || at <= closedAt))
    .map((session) => sessionAsOf(session, at))
    .sort((a, b) => b.briefedAt - a.briefedAt || b.number - a.number);
  return open.find((session) => session.batch === batch || session.batch === undefined) ?? open[0];
}
