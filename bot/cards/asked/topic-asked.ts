// With what each card of a topic is made.

import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import type { StateQuestion } from '../../../core/commands.ts';
import type { PersonName } from '../../../core/ids.ts';
import type { Topic } from '../../../core/verbs/topics.ts';
import type { Card } from '../card.ts';
import type { Telling } from '../card-context.ts';

export type TopicAsked = Extract<StateQuestion, { ask: 'how-stands' }>;

export interface OfTopic {
  readonly telling: Telling;
  readonly asked: TopicAsked;
  readonly things: readonly ThingMeant[];
  readonly by: PersonName;
}

/** For those of one noun: each of them. */
export type TopicCards<Of extends Topic> = { readonly [T in Of]: (of: OfTopic) => Card };
