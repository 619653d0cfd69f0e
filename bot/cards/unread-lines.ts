// What is said of events that do not read any more: which, and what follows for whoever works on.

import { nameIn, nounOf } from '../../core/ids.ts';
import { isUnreadAct, type UnreadEvent } from '../../core/unread-event.ts';
import type { Words } from '../language/tongues/tongues.ts';
import { type Card, makeCard } from './card.ts';

/** A record that has broken in a hundred places is no longer told event by event. */
const mostTold = 5;

export function unreadLines({ replies }: Words, events: readonly UnreadEvent[]): readonly string[] {
  const told = events
    .slice(0, mostTold)
    .map((event) => `${replies.unread(event.seq, event.type, event.stream)} ${followsFrom(replies, event)}`);
  return events.length > mostTold ? [...told, replies.unreadMore(events.length - mostTold)] : told;
}

function followsFrom({ unreadFollows }: Words['replies'], event: UnreadEvent): string {
  if (!isUnreadAct(event)) return unreadFollows.bell;
  switch (nounOf(event.stream)) {
    case 'place':
      return unreadFollows.place(nameIn(event.stream));
    case 'crew':
      return unreadFollows.crew;
    case 'batch':
    case 'can':
    case 'part':
    case 'session':
    case 'instrument':
      return unreadFollows.rest(event.stream);
  }
}

/** The card with what it lacks, where it lacks anything. */
export function withUnread(words: Words, card: Card, events: readonly UnreadEvent[]): Card {
  return events.length === 0 ? card : { ...card, lines: [...unreadLines(words, events), ...card.lines] };
}

/** For whoever leads: said once. */
export function unreadCard(words: Words, events: readonly UnreadEvent[], ping: readonly string[]): Card {
  return makeCard(words.replies.unreadTitle, 'stop', {
    lines: [...unreadLines(words, events), words.replies.unreadProve],
    ping,
  });
}
