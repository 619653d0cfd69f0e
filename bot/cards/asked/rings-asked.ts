// What rang last: whoever hears a bell asks what it was for. With the times, the latest first.

import { ringsHeard } from '../../../core/records/rings-heard.ts';
import { minutes, minutesAfter } from '../../../core/units.ts';
import { makeCard } from '../card.ts';
import { ringLabel } from '../ring-label.ts';
import type { TopicCards } from './topic-asked.ts';

/** A shift: what rang yesterday nobody asks about. */
const askedWithin = minutes(12 * 60);
const mostRings = 4;

export const ringTopics: TopicCards<'last-ring'> = {
  'last-ring': ({ telling }) => {
    const { topics } = telling.words;
    const { shop, now, figures } = telling;
    const span = { from: minutesAfter(now, minutes(-askedWithin)), to: minutesAfter(now, minutes(1)) };
    const heard = ringsHeard(shop, span).toSorted((one, other) => other.ring.rangAt - one.ring.rangAt);
    const [last, ...before] = heard.map(({ key, ring }) =>
      topics.rang(figures.timeDown(ring.rangAt), ringLabel(telling, key)),
    );
    if (last === undefined) return makeCard(topics.nothingRang, 'plain');
    return makeCard(last, 'plain', { lines: before.slice(0, mostRings) });
  },
};
