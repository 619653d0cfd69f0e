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
  sessionCard,
  sprayOffCard,
  sprayOnCard,
} from './session-cards.ts';
import { stillOpen } from './session-lines.ts';

export function sessionReply(
  t: Telling,
  command: CommandOf<keyof typeof sessionVerbs>,
  outcome: Recorded,
  by: PersonName,
): Card {
  const words = t.words.session;
  switch (command.verb) {
    case 'brief':
      return onSession((it) => briefCard(t, it));
    case 'near':
      return onSession((it) => placedCard(t, it, words.near(command.people, command.goes, t.f), command.people));
    case 'ack':
      return onSession((it) => sessionCard(t, it, words.read));
    case 'fan':
      return onSession((it) => fanCard(t, it, words.extraction));
    case 'supplied':
      return onSession((it) => sessionCard(t, it, words.suppliedAir));
    case 'spray-on':
      return onSession((it) => sprayOnCard(t, it));
    case 'spray-off':
      return onSession((it) => sprayOffCard(t, it));
    case 'flush':
      return onSession((it) => {
        const card = flushedCard(t, it, command.gear);
        if (command.solvent === undefined) return card;
        return {
          ...card,
          title: words.titled(it.number, words.flushStep(command.gear, command.solvent)),
        };
      });
    case 'rags':
      return onSession((it) => {
        const open = stillOpen(it);
        return sessionCard(t, it, words.ragsIn, open.length === 0 ? [] : [words.stillToDo(open, t.f)]);
      });
    case 'close':
      return onSession((it) => closedCard(t, it));
    case 'fit':
    case 'medical':
    case 'training':
      return qualifiedCard(t, outcome, command);
    case 'near-miss':
      return nearMissCard(t, command, by);
    case 'eyes':
    case 'spill':
    case 'fire':
    case 'down':
    case 'hot':
      return alarmCard(t, command, outcome, by);
    case 'bell':
      return bellCard(t, outcome);
    default: {
      const never: never = command;
      return never;
    }
  }

  function onSession(make: (session: Session) => Card): Card {
    const stream = outcome.envelopes.map((envelope) => envelope.stream).find((each) => each.startsWith('session/'));
    const session = stream === undefined ? undefined : outcome.shop.sessions.get(numberIn(stream));
    return session === undefined ? makeCard(t.words.replies.settled, 'plain') : make(session);
  }
}
