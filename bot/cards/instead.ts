// What to do first where an act is objected to, as taps: mostly an act that the can, the batch or the session has next
// anyway; else an answer to what was asked.

import { type Command, takesBatch } from '../../core/commands.ts';
import type { Request } from '../../core/execute.ts';
import type { CanNumber } from '../../core/ids.ts';
import type { Objection } from '../../core/objections.ts';
import type { Session } from '../../core/session/session.ts';
import { liveBatches, openSessions } from '../../core/shop.ts';
import { type NextActId, statusOf } from '../../core/status.ts';
import { writeLine } from '../language/write-line.ts';
import type { CardAction } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { nextTaps } from './next-taps.ts';
import { flushing, sessionTaps } from './session-lines.ts';

export function insteadTaps(t: Telling, request: Request, objections: readonly Objection[]): readonly CardAction[] {
  const taps = objections.flatMap((objection) => insteadOf(t, request, objection));
  return taps.filter((each, i) => taps.findIndex((other) => other.id === each.id) === i);
}

function insteadOf(t: Telling, { command }: Request, objection: Objection): readonly CardAction[] {
  const asked = (changed: Command) => writeLine({ command: changed, stance: { is: 'asked' } }, t.shop.crew.zone);
  switch (objection.code) {
    case 'air-needed':
      return [tap(t, 'air', 'air {air-temperature}C {humidity}%'), tap(t, 'again', asked(command))];
    case 'no-gas':
      return command.verb !== 'open'
        ? []
        : (['gas', 'whole'] as const).map((handling) => tap(t, handling, asked({ ...command, handling })));
    case 'can-doubtful':
      return ofCan(t, objection.can, ['check', 'discard']);
    case 'part-a-not-stirred':
      return objection.dueAt === undefined ? ofCan(t, objection.can, ['prestir']) : [];
    case 'b-before-a': {
      const batch = command.verb === 'weigh' && command.batch !== undefined ? `${command.batch} ` : '';
      return [tap(t, 'weigh-a', `weigh ${batch}a {part-a}g`)];
    }
    case 'caught-not-filtered': {
      const waits = liveBatches(t.shop).find(({ caught }) => caught.some(({ filteredAt }) => filteredAt === undefined));
      const batch = t.shop.batches.get(batchNamed(command) ?? waits?.number ?? 0);
      return batch === undefined
        ? []
        : nextTaps(t, statusOf.batch(t, batch).next()).filter(({ id }) => id === 'filter');
    }
    case 'cure-not-given':
      return ofPart(t, command, ['temp']);
    case 'no-brief':
    case 'brief-lapsed':
      return [tap(t, 'brief', 'brief')];
    case 'brief-not-acknowledged':
      return ofSession(t, command, ['ack', 'ack-for']);
    case 'gear-not-flushed':
    case 'rags-not-canned':
      return ofSession(t, command, flushing);
    case 'inside-vessel':
    case 'may-not-spray':
      return ofSession(t, command, ['moved-out']);
    case 'no-extraction-no-air':
    case 'fan-not-measured':
    case 'fan-too-weak': {
      const number = sessionMeant(t, command)?.number;
      return number === undefined
        ? []
        : [
            tap(t, 'fan-on', `fan ${number} on {face-velocity}mps`),
            tap(t, 'supplied-yes', `supplied ${number} yes`),
            tap(t, 'vent', `vent ${number}`),
          ];
    }
    default:
      return [];
  }
}

function ofCan(t: Telling, number: CanNumber, ids: readonly NextActId[]): readonly CardAction[] {
  const can = t.shop.cans.get(number);
  const next = can === undefined ? [] : statusOf.can(t, can).next();
  return nextTaps(
    t,
    next.filter(({ id }) => ids.includes(id)),
  );
}

/** Of one part alone: what proves one of several proves no other. */
function ofPart(t: Telling, command: Command, ids: readonly NextActId[]): readonly CardAction[] {
  const [name = '', ...others] = 'parts' in command ? command.parts : [];
  const part = others.length === 0 ? t.shop.parts.get(name) : undefined;
  const next = part === undefined ? [] : statusOf.part(t, part).next();
  return nextTaps(
    t,
    next.filter(({ id }) => ids.includes(id)),
  );
}

function ofSession(t: Telling, command: Command, ids: readonly NextActId[]): readonly CardAction[] {
  const session = sessionMeant(t, command);
  return session === undefined ? [] : sessionTaps(t, session, ids);
}

const batchNamed = (command: Command) => (takesBatch(command) ? command.batch : undefined);

/** The one named, that of the batch, or the latest brief. */
function sessionMeant(t: Telling, command: Command): Session | undefined {
  const open = openSessions(t.shop);
  const named = command.verb === 'spray-on' || command.verb === 'close' ? command.session : undefined;
  const batch = batchNamed(command);
  return (
    open.find(({ number }) => number === named) ??
    open.findLast((session) => batch !== undefined && session.batch === batch) ??
    open.at(-1)
  );
}

export function ventilationCaution(t: Telling, objections: readonly Objection[]): readonly string[] {
  const summed = objections.some(({ code }) => code.startsWith('fan-') || code === 'no-extraction-no-air');
  return summed ? [t.words.session.sumOnly, t.words.replies.caution] : [];
}
