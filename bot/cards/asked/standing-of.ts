// How a thing stands, where a question was understood as one and what it asks for was not: it says so, and what may be asked of it.

import { makeBoard } from '../board.ts';
import { type Card, type CardAction, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { howLongCard } from './how-long-card.ts';
import { nameOfThing } from './things-told.ts';
import type { OfTopic } from './topic-asked.ts';
import { whereIsCard } from './where-is-card.ts';

const mostTold = 8;

export function standingCard({ telling, things }: OfTopic): Card {
  const { topics, asked } = telling.words;
  const [thing] = things;
  if (thing === undefined) {
    const all = makeBoard(telling).items.map(({ name, phase }) => asked.titled(name, phase));
    const [first = asked.nothingWaits, ...others] = all;
    return makeCard(first, 'plain', { lines: [topics.onlyStanding, ...others.slice(0, mostTold)] });
  }
  const card =
    thing.is === 'person' || thing.is === 'place'
      ? whereIsCard(telling, things)
      : howLongCard(telling, undefined, things);
  return { ...card, lines: [topics.onlyStanding, ...card.lines], actions: askTaps(telling, nameOfThing(thing)) };
}

/** Each only asks. */
function askTaps({ words: { topics } }: Telling, name: string): readonly CardAction[] {
  const asks = ['how-long', 'who-did', 'where-is'] as const;
  return asks.map((ask) => ({ id: ask, label: topics.ask[ask], line: `${ask} ${name}` }));
}
