// Which card answers an act of a spray session, or a word of need.

import type { CommandOf } from '../../core/commands.ts';
import type { Recorded } from '../../core/execute.ts';
import { numberIn, type PersonName } from '../../core/ids.ts';
import type { Session } from '../../core/session/session.ts';
import type { sessionVerbs } from '../../core/verbs/session-verbs.ts';
import { alarmCard, bellCard, nearMissCard, qualifiedCard } from './alarm-cards.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import {
  briefCard,
  closedCard,
  fanCard,
  flushedCard,
  placedCard,
  ragsCard,
  sessionCard,
  sprayOffCard,
  sprayOnCard,
} from './session-cards.ts';

export function sessionReply(
  telling: Telling,
  command: CommandOf<keyof typeof sessionVerbs>,
  outcome: Recorded,
  by: PersonName,
): Card {
  const words = telling.words.session;
  switch (command.verb) {
    case 'brief':
      return onSession((session) => briefCard(telling, session));
    case 'near':
      return onSession((session) =>
        placedCard(telling, session, words.near(command.people, command.goes, telling.figures), command.people),
      );
    case 'ack':
      return onSession((session) => sessionCard(telling, session, words.read));
    case 'fan':
      return onSession((session) => fanCard(telling, session, words.extraction));
    case 'supplied':
      return onSession((session) => sessionCard(telling, session, words.suppliedAir));
    case 'spray-on':
      return onSession((session) => sprayOnCard(telling, session));
    case 'spray-off':
      return onSession((session) => sprayOffCard(telling, session));
    case 'flush':
      return onSession((session) => flushedCard(telling, session, command));
    case 'rags':
      return onSession((session) => ragsCard(telling, session));
    case 'close':
      return onSession((session) => closedCard(telling, session));
    case 'fit':
    case 'medical':
    case 'training':
      return qualifiedCard(telling, outcome, command);
    case 'near-miss':
      return nearMissCard(telling, command, by);
    case 'eyes':
    case 'spill':
    case 'fire':
    case 'down':
    case 'hot':
      return alarmCard(telling, command, outcome, by);
    case 'bell':
      return bellCard(telling, outcome);
    default: {
      const never: never = command;
      return never;
    }
  }

  function onSession(make: (session: Session) => Card): Card {
    const stream = outcome.envelopes.map((envelope) => envelope.stream).find((each) => each.startsWith('session/'));
    const session = stream === undefined ? undefined : outcome.shop.sessions.get(numberIn(stream));
    return session === undefined ? makeCard(telling.words.replies.settled, 'plain') : make(session);
  }
}
