// What to do in place of an act that the spray programme objects to, as taps; and the caution where air was summed.

import type { Objection } from '../../core/objections.ts';
import { openSessions } from '../../core/shop.ts';
import type { CardAction } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { flushTaps, sessionTaps } from './session-lines.ts';

export function sessionInstead(t: Telling, objections: readonly Objection[]): readonly CardAction[] {
  const taps = objections.flatMap((objection) => insteadOf(t, objection));
  return taps.filter((each, i) => taps.findIndex((other) => other.id === each.id) === i);
}

function insteadOf(t: Telling, objection: Objection): readonly CardAction[] {
  switch (objection.code) {
    case 'no-brief':
    case 'brief-lapsed':
      return [tap(t, 'brief', 'brief')];
    case 'brief-not-acknowledged':
      return [tap(t, 'ack', `ack ${objection.session}`), tap(t, 'ack-for', `ack ${objection.session} {people}`)];
    case 'no-extraction-no-air':
    case 'fan-not-measured':
    case 'fan-too-weak': {
      const [session] = openSessions(t.shop).slice(-1);
      if (session === undefined) return [];
      const { number } = session;
      return [
        tap(t, 'fan-on', `fan ${number} on {face-velocity}mps`),
        tap(t, 'supplied-yes', `supplied ${number} yes`),
        tap(t, 'vent', `vent ${number}`),
      ];
    }
    case 'gear-not-flushed':
    case 'rags-not-canned': {
      const [session] = openSessions(t.shop).slice(-1);
      return session === undefined ? [] : flushTaps(t, session);
    }
    case 'inside-vessel':
    case 'may-not-spray':
      return openSessions(t.shop)
        .slice(-1)
        .flatMap((session) => sessionTaps(t, session).filter(({ id }) => id === 'moved-out'));
    default:
      return [];
  }
}

export function ventilationCaution(t: Telling, objections: readonly Objection[]): readonly string[] {
  const summed = objections.some(({ code }) => code.startsWith('fan-') || code === 'no-extraction-no-air');
  return summed ? [t.words.session.sumOnly, t.words.replies.caution] : [];
}
