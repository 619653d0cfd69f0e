// Answers what only reads: loads what the question names, and words it for whoever asks.

import type { Question, StateQuestion } from '../../core/commands.ts';
import type { Executor } from '../../core/execute.ts';
import { canStream, defaultPlace, partStream, placeStream, type StreamId, sessionStream } from '../../core/ids.ts';
import type { Clock } from '../../core/ports.ts';
import type { Shop } from '../../core/shop.ts';
import { unreadIn } from '../../core/unread.ts';
import { isStateQuestion } from '../../core/verbs/question-rows.ts';
import type { Card } from '../cards/card.ts';
import { withLinesShown } from '../cards/card-context.ts';
import { glossaryCard } from '../cards/glossary-card.ts';
import { guideCard } from '../cards/guide-card.ts';
import { helpCard } from '../cards/help-card.ts';
import { instrumentsCard } from '../cards/instrument-cards.ts';
import { maskAnswer } from '../cards/mask-card.ts';
import { nowCard } from '../cards/now-card.ts';
import { planCard } from '../cards/plan-card.ts';
import { purgeCard } from '../cards/purge-card.ts';
import { allLinesCard } from '../cards/session-cards.ts';
import { stockCard } from '../cards/stock-card.ts';
import { withUnread } from '../cards/unread-lines.ts';
import { ventCard } from '../cards/vent-cards.ts';
import type { Reading } from '../language/reading.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import type { RecordAnswers } from '../records/record-answers.ts';
import type { Answer } from './answer.ts';
import { answerState } from './answer-state.ts';
import type { Delivery } from './front-end.ts';
import type { LastCards } from './last-cards.ts';
import { answering, tellingOf } from './telling.ts';
import { whyAnswer } from './why-question.ts';

export interface Questioned {
  readonly executor: Executor;
  readonly clock: Clock;
  readonly tongues: Tongues;
  readonly recordAnswers: RecordAnswers;
  readonly lastCards: LastCards;
}

const plainReply = { kind: 'reply', code: null, recorded: false } as const;

/** All but what begins and ends practice. */
type Asked = Omit<Extract<Reading, { kind: 'question' }>, 'question'> & {
  readonly question: Exclude<Question, { ask: 'practice' | 'practice-off' }>;
};

export async function answerQuestion(
  deps: Questioned,
  delivery: Delivery,
  { question, line: typed, takenAs: line = typed }: Asked,
  shop: Shop,
): Promise<Answer> {
  const { executor, clock, tongues, recordAnswers } = deps;
  const told = { tongues, now: clock.now(), before: await deps.lastCards.of(delivery.as).catch(() => []) };
  const telling = tellingOf(told, shop, delivery.as);
  const worded = (said: Card) =>
    answering(told, delivery, shop, { ...plainReply, card: withLinesShown(telling, said), asked: question });
  // Of what was loaded for it, too: an answer must not pass for whole.
  const reply = async (card: Card) => worded(withUnread(telling.words, card, unreadIn(await executor.look())));
  const loaded = async (named: readonly StreamId[]) => ({ ...telling, shop: await executor.look(named) });
  if (isOfState(question))
    return reply(await answerState(executor, recordAnswers, telling, { question, line, by: delivery.as }));
  switch (question.ask) {
    case 'help':
      return worded(helpCard(telling, question, delivery.as));
    case 'now':
    case 'what-now': {
      const everywhere = await loaded([placeStream(defaultPlace)]);
      return reply((question.ask === 'now' ? nowCard : guideCard)(everywhere, delivery.as));
    }
    case 'stock':
      return reply(stockCard(telling));
    case 'instruments':
      return reply(instrumentsCard(telling));
    case 'plan':
      return reply(planCard(await loaded(streamsNamed(question)), question, line));
    case 'vent':
      return reply(ventCard(await loaded(streamsNamed(question)), question));
    case 'purge':
      return reply(purgeCard(await loaded(streamsNamed(question)), question));
    case 'mask':
    case 'cartridge':
      return reply(maskAnswer(await loaded([placeStream(defaultPlace)]), question));
    case 'hazards':
      return worded(allLinesCard(telling, question));
    case 'what-is':
      return worded(glossaryCard(telling, question.term));
    case 'why':
      return worded(await whyAnswer(deps, telling, question, delivery.as));
    case 'day':
      return reply(await recordAnswers.day(telling, question.day));
    case 'week':
    case 'month':
    case 'from':
    case 'trace':
    case 'card':
    case 'find':
    case 'traveller':
    case 'export':
    case 'voc':
    case 'exposures':
    case 'verify':
    case 'backup':
    case 'keep':
    case 'papers':
      return reply(await recordAnswers.answer(telling, question, askerOf(delivery)));
  }
}

const isOfState = (question: Question): question is StateQuestion => isStateQuestion(question.ask);

const askerOf = ({ as, atConsole }: Delivery) => ({ name: as, atConsole: atConsole === true });

function streamsNamed(question: Extract<Question, { ask: 'plan' | 'vent' | 'purge' }>): readonly StreamId[] {
  switch (question.ask) {
    case 'plan': {
      const names = question.parts.flatMap((part) => ('part' in part ? [partStream(part.part)] : []));
      return [placeStream(defaultPlace), ...names];
    }
    case 'vent': {
      const { asked } = question;
      return asked.of === 'session' && asked.session !== undefined ? [sessionStream(asked.session)] : [];
    }
    case 'purge':
      return question.asked.can === undefined ? [] : [canStream(question.asked.can)];
  }
}
