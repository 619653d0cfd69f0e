// What a question asks of one thing, of the people, of the cans or of the sheet: a card each, the answer in its title.

import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import type { PersonName } from '../../../core/ids.ts';
import type { Topic } from '../../../core/verbs/topics.ts';
import type { Card } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { canTopics } from './can-topics.ts';
import { crewTopics } from './crew-topics.ts';
import { lackingCard } from './lacking-card.ts';
import { mixTopics } from './mix-topics.ts';
import { partTopics } from './part-topics.ts';
import { ringTopics } from './rings-asked.ts';
import { sessionTopics } from './session-topics.ts';
import { sheetTopics } from './sheet-topics.ts';
import { standingCard } from './standing-of.ts';
import type { TopicAsked, TopicCards } from './topic-asked.ts';

const topicCards: TopicCards<Topic> = {
  ...crewTopics,
  ...ringTopics,
  ...sessionTopics,
  ...partTopics,
  lacking: lackingCard,
  ...canTopics,
  ...mixTopics,
  ...sheetTopics,
  standing: standingCard,
};

export const topicCard = (telling: Telling, asked: TopicAsked, things: readonly ThingMeant[], by: PersonName): Card =>
  topicCards[asked.topic]({ telling, asked, things, by });
