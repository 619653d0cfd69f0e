// The rules of a session asked again over what has happened.

import { before } from '../as-it-stands.ts';
import { isFor } from '../event-readers.ts';
import type { Entry } from '../history.ts';
import { nounOf, numberIn } from '../ids.ts';
import type { Objection } from '../objections.ts';
import { objectionsTo } from '../rules.ts';
import type { Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';
import { ackRules } from './ack-rules.ts';
import { cleaningRules } from './cleaning-rules.ts';
import { firstFlush, foldSession, newcomerTo, type Session, sprayedBy } from './session.ts';
import { sprayCase } from './session-decide.ts';
import { closeRules, coatUnderBriefRules, sprayRules, stoppedRules } from './session-rules.ts';

/** `vesselsFreeAt`: when the first of its pots is over. */
export function againstSession(
  shop: Shop,
  session: Session,
  entry: Entry,
  vesselsFreeAt: EpochMs | undefined,
): readonly Objection[] {
  const { fact } = entry;
  if (!isFor('session-rules', fact)) return [];
  const found = sessionBefore(session, entry);
  switch (fact.type) {
    case 'SprayStarted':
      return objectionsTo(sprayRules, sprayCase(shop, found, entry.happenedAt, { place: fact.place }), entry.edition);
    case 'SprayStopped':
      return objectionsTo(stoppedRules, sprayCase(shop, found, entry.happenedAt, {}), entry.edition);
    case 'BriefAcknowledged': {
      const { person, witness } = fact;
      const said = { session: found, crew: shop.crew, person, witness, at: entry.happenedAt };
      return objectionsTo(ackRules, said, entry.edition);
    }
    case 'GearFlushed': {
      const first = firstFlush(found, fact.gear, entry.happenedAt, vesselsFreeAt);
      return objectionsTo(cleaningRules, { first }, entry.edition);
    }
    case 'SessionClosed':
      return objectionsTo(closeRules, { session: found }, entry.edition);
  }
}

/** What the brief said to a coat: of the session under which it is filed, or of none. */
export function againstCoatUnderBrief(shop: Shop, entry: Entry): readonly Objection[] {
  const { fact, happenedAt: at } = entry;
  if (fact.type !== 'CoatApplied') return [];
  const stream = entry.alsoUnder.find((other) => nounOf(other) === 'session');
  const session = stream === undefined ? undefined : shop.sessions.get(numberIn(stream));
  // A session that is not loaded tells nothing: no deviation is made of it.
  if (stream !== undefined && session === undefined) return [];
  const found = session && sessionBefore(session, entry);
  const sprayer = entry.edition < 6 ? undefined : fact.appliedBy;
  const spray = found && sprayCase(shop, sprayedBy(found, sprayer), at, { batch: fact.batch, place: fact.place });
  const newcomer = newcomerTo(found, sprayer);
  const within = {
    part: fact.part,
    place: fact.place ?? shop.batches.get(fact.batch)?.place,
    fromOutside: fact.fromOutside,
  };
  const situation = { method: fact.method, settings: shop.crew.spray, at, spray, newcomer, within };
  return objectionsTo(coatUnderBriefRules, situation, entry.edition);
}

function sessionBefore(session: Session, entry: Entry): Session {
  return foldSession(before(session.entries, entry)) ?? session;
}
