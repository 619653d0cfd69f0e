// What to do first where spraying is objected to, or closing its session: an answer to what nobody knows, or what the session has
// next anyway.

import { type Command, type CommandOf, takesBatch } from '../../core/commands.ts';
import type { Objection } from '../../core/objections.ts';
import type { Session } from '../../core/session/session.ts';
import { openSessions } from '../../core/shop.ts';
import type { NextActId } from '../../core/status.ts';
import { breathingTap } from './breathing-air-card.ts';
import type { CardAction } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { confinedTaps } from './confined-lines.ts';
import { datedTap, dateTaps, nearTaps } from './people-asked.ts';
import { flushing, sessionTaps } from './session-lines.ts';

export function insteadOfSpraying(telling: Telling, command: Command, objection: Objection): readonly CardAction[] {
  switch (objection.code) {
    case 'no-brief':
    case 'brief-lapsed':
      return [tap(telling, 'brief', 'brief')];
    case 'brief-not-acknowledged':
      return ofSession(telling, command, ['ack', 'ack-for']);
    case 'gear-not-flushed':
    case 'rags-not-canned':
      return ofSession(telling, command, flushing);
    case 'inside-vessel': {
      const session = sessionMeant(telling, command);
      return [
        ...ofSession(telling, command, ['moved-out']),
        ...(session === undefined ? [] : confinedTaps(telling, session.number)),
      ];
    }
    case 'confined-place':
      return confinedTaps(telling, objection.session ?? coatFrom(command), objection.place);
    case 'not-qualified':
      return [
        ...ofSession(telling, command, ['moved-out']),
        ...objection.ranOut.slice(0, 1).map(({ person, what }) => datedTap(telling, person, what)),
      ];
    case 'breathing-air-not-fit':
    case 'breathing-air-unchecked':
      return [breathingTap(telling)];
    case 'near-not-named': {
      const session = sessionMeant(telling, command);
      return session === undefined ? [] : nearTaps(telling, session);
    }
    case 'dates-not-known':
      return [...dateTaps(telling, objection.undated), ...ofSession(telling, command, ['moved-out'])];
    case 'supplied-air-or-none':
      return ofSession(telling, command, ['supplied-yes', 'moved-out', 'fan-on']).concat(
        objection.air === 'none' ? [tap(telling, 'supplied-yes', `supplied ${objection.session} yes`)] : [],
      );
    case 'no-assessment':
      return [
        tap(telling, 'supplied-yes', `supplied ${objection.session} yes`),
        tap(
          telling,
          'assess',
          `assess ${objection.sheet} in ${objection.place} spray without-supplied-air until {until-day}`,
        ),
      ];
    case 'air-not-summed':
      return objection.because.is === 'rate-unknown' ? [tap(telling, 'brief', 'brief')] : [];
    case 'may-not-spray':
      return ofSession(telling, command, ['moved-out']);
    case 'no-extraction-no-air':
    case 'fan-not-measured':
    case 'fan-too-weak': {
      const number = sessionMeant(telling, command)?.number;
      return number === undefined
        ? []
        : [
            tap(telling, 'fan-on', `fan ${number} on {face-velocity}mps`),
            tap(telling, 'supplied-yes', `supplied ${number} yes`),
            tap(telling, 'vent', `vent ${number}`),
          ];
    }
    default:
      return [];
  }
}

function ofSession(telling: Telling, command: Command, ids: readonly NextActId[]): readonly CardAction[] {
  const session = sessionMeant(telling, command);
  return session === undefined ? [] : sessionTaps(telling, session, ids);
}

/** The one named, that of the batch, or the latest brief. */
function sessionMeant(telling: Telling, command: Command): Session | undefined {
  const open = openSessions(telling.shop);
  const named = command.verb === 'spray-on' || command.verb === 'close' ? command.session : undefined;
  const batch = takesBatch(command) ? command.batch : undefined;
  return (
    open.find(({ number }) => number === named) ??
    open.findLast((session) => batch !== undefined && session.batch === batch) ??
    open.at(-1)
  );
}

const coatFrom = (command: Command): CommandOf<'coat'> | undefined => (command.verb === 'coat' ? command : undefined);
