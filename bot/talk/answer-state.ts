// Answers how things stand: loads what the question names, finds which of it is meant, and words that for whoever asks.

import {
  type AskedFirst,
  askedFirstOf,
  isComponent,
  streamsAsked,
  type ThingMeant,
  thingsMeant,
} from '../../core/asked/things-meant.ts';
import type { StateQuestion, ThingAsked } from '../../core/commands.ts';
import type { Executor } from '../../core/execute.ts';
import { batchStream, defaultPlace, type PersonName, placeStream } from '../../core/ids.ts';
import type { Shop } from '../../core/shop.ts';
import type { Topic } from '../../core/verbs/topics.ts';
import { canICard } from '../cards/asked/can-i-card.ts';
import { howHotCard } from '../cards/asked/how-hot-card.ts';
import { howLongCard } from '../cards/asked/how-long-card.ts';
import { howMuchCard } from '../cards/asked/how-much-card.ts';
import { notFoundCard } from '../cards/asked/not-found-card.ts';
import { atRiskCard, lateCard, toDoCard } from '../cards/asked/standing-cards.ts';
import { topicCard } from '../cards/asked/topic-card.ts';
import { whereIsCard } from '../cards/asked/where-is-card.ts';
import { whoDidCard } from '../cards/asked/who-did-card.ts';
import type { Card } from '../cards/card.ts';
import type { Telling } from '../cards/card-context.ts';
import { openAlarmLines } from '../cards/open-alarm-lines.ts';
import type { RecordAnswers } from '../records/record-answers.ts';

export interface StateAsked {
  readonly question: StateQuestion;
  /** As the reader takes it. */
  readonly line: string;
  readonly by: PersonName;
}

export async function answerState(
  executor: Executor,
  { wrong }: RecordAnswers,
  telling: Telling,
  { question, line, by }: StateAsked,
): Promise<Card> {
  if (question.ask === 'went-wrong') return wrong(telling);
  const told = { ...telling, shop: await loaded(executor, question) };
  const { things, not } = thingsMeant(told.shop, thingsOf(question), askedFirst(question));
  const missing =
    question.ask === 'can-i' && question.act === 'coat' ? not.filter(({ parts }) => parts.length > 0) : not;
  const card = notFoundCard(told, question, missing) ?? answered(told, question, things, { line, by });
  // Whatever is asked: what is on of the alarms comes first.
  return { ...card, lines: [...openAlarmLines(told), ...card.lines] };
}

const thingsOf = (question: StateQuestion): readonly ThingAsked[] =>
  'of' in question && !countsParts(question) ? question.of.filter((thing) => !isComponent(thing)) : [];

/** Its number is how many. */
const countsParts = (question: StateQuestion): boolean => question.ask === 'how-stands' && question.topic === 'enough';

/** A part that is gone stands by the sheet of its pot. */
async function loaded(executor: Executor, question: StateQuestion): Promise<Shop> {
  const of = thingsOf(question);
  const named = of.flatMap((thing) => (thing.is === 'name' ? [thing.name] : []));
  const streams = [placeStream(defaultPlace), ...named.map(placeStream), ...streamsAsked(of)];
  const shop = await executor.look(streams);
  const pots = named.flatMap((name) => shop.parts.get(name)?.coats ?? []).map(({ batch }) => batchStream(batch));
  return pots.length === 0 ? shop : executor.look([...streams, ...pots]);
}

/** A bare number is a part's where this is asked of it. */
const ofParts: readonly Topic[] = [
  'coats',
  'from-batch',
  'details',
  'bears',
  'lacking',
  'on-hold',
  'to-coat',
  'sheet-cure',
];

function askedFirst(question: StateQuestion): AskedFirst {
  switch (question.ask) {
    case 'can-i':
    case 'how-long':
    case 'who-did':
      return askedFirstOf(question.act);
    case 'where-is':
    case 'how-hot':
      return 'parts';
    case 'how-much':
    case 'to-do':
    case 'what-late':
    case 'went-wrong':
    case 'at-risk':
      return 'pots';
    case 'how-stands':
      return ofParts.includes(question.topic) ? 'parts' : 'pots';
  }
}

function answered(
  telling: Telling,
  question: Exclude<StateQuestion, { ask: 'went-wrong' }>,
  things: readonly ThingMeant[],
  { line, by }: Pick<StateAsked, 'line' | 'by'>,
): Card {
  switch (question.ask) {
    case 'can-i':
      return canICard(telling, question, things, by);
    case 'how-long':
      return howLongCard(telling, question.act, things);
    case 'who-did':
      return whoDidCard(telling, question.act, things);
    case 'where-is':
      return whereIsCard(telling, things);
    case 'how-hot':
      return howHotCard(telling, things);
    case 'how-much':
      return howMuchCard(telling, question, things, line);
    case 'to-do':
      return toDoCard(telling, things, by);
    case 'what-late':
      return lateCard(telling);
    case 'at-risk':
      return atRiskCard(telling);
    case 'how-stands':
      return topicCard(telling, question, things, by);
  }
}
