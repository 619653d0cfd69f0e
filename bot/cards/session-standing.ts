// How a spray session stands: its brief, with what was said and done since, and what can be tapped now. The card that a
// chat platform keeps as the session's one message and changes in place.

import { type Fact, isAct } from '../../core/history.ts';
import { sessionStream } from '../../core/ids.ts';
import type { Session } from '../../core/session/session.ts';
import { sessionPhase } from '../../core/session/session-status.ts';
import { unreadUnder } from '../../core/unread.ts';
import { makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { briefCard } from './session-cards.ts';
import { sessionState } from './session-lines.ts';
import type { Standing } from './standing-card.ts';
import { unreadLines } from './unread-lines.ts';

/** What the brief's own lines say, with who and when. */
const inTheBrief: readonly Fact['type'][] = [
  'SessionBriefed',
  'PeoplePlaced',
  'BriefAcknowledged',
  'ExtractionSaid',
  'SuppliedAirSaid',
];

/** The newest acts shown; the thread and the record have them all. */
const actsShown = 6;

export function sessionStanding(telling: Telling, session: Session): Standing {
  const { chat, session: words } = telling.words;
  const phase = sessionPhase(session);
  const live = phase.is !== 'closed';
  const brief = briefCard(telling, session);
  const acts = session.entries.filter((entry) => isAct(entry) && !inTheBrief.includes(entry.fact.type));
  const shown = acts.slice(-actsShown);
  const card = makeCard(words.titled(session.number, sessionState(telling, phase)), live ? brief.tone : 'plain', {
    facts: brief.facts,
    lines: [
      ...unreadLines(telling.words, unreadUnder(telling.shop, sessionStream(session.number))),
      ...(shown.length < acts.length ? [chat.earlierActs(acts.length - shown.length)] : []),
      ...shown.map(({ happenedAt, by, fact }) =>
        chat.act(happenedAt, by, telling.words.fact(fact, telling.figures), telling.figures),
      ),
      ...brief.lines,
    ],
    hazards: brief.hazards,
    actions: live ? brief.actions : [],
    fields: brief.fields,
  });
  return { card, live, parts: [] };
}
