// Takes a line from any front end and gives its answer: reads it, has it decided and recorded, words the outcome. Never
// throws: a misread is an answer, and so is a record that cannot be written, and a fault of the program's own.

import { randomUUID } from 'node:crypto';
import { nobody } from '../../core/crew/alarm-decide.ts';
import { type CrewFile, personIn } from '../../core/crew/crew.ts';
import type { Executor, Request } from '../../core/execute.ts';
import {
  defaultPlace,
  type PersonName,
  partStream,
  placeStream,
  type StreamId,
  sessionStream,
} from '../../core/ids.ts';
import type { Clock, Log, Store } from '../../core/ports.ts';
import type { Shop } from '../../core/shop.ts';
import { oursAlone, Unforeseen } from '../../core/unforeseen.ts';
import type { EpochMs } from '../../core/units.ts';
import { unreadIn } from '../../core/unread.ts';
import { RestsOnUnread } from '../../core/unread-event.ts';
import type { Card } from '../cards/card.ts';
import type { Telling } from '../cards/card-context.ts';
import { helpCard } from '../cards/help-card.ts';
import { misreadCard } from '../cards/misread-card.ts';
import { isInDoubt, movedCard } from '../cards/moved-card.ts';
import { nowCard } from '../cards/now-card.ts';
import { objectionCard, unclearCard } from '../cards/objection-cards.ts';
import { planCard } from '../cards/plan-card.ts';
import { proofCard } from '../cards/proof-cards.ts';
import { recordedCard } from '../cards/reply-cards.ts';
import { stockCard } from '../cards/stock-card.ts';
import { withUnread } from '../cards/unread-lines.ts';
import { hazardsCard, ventCard } from '../cards/vent-cards.ts';
import { figuresFor } from '../language/figures.ts';
import { readLine } from '../language/read-line.ts';
import type { Reading } from '../language/reading.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import { proveRecord } from '../records/proving.ts';
import type { RecordAnswers } from '../records/record-answers.ts';
import { withoutTeller } from './anonymous-near-miss.ts';
import { type Answer, answerFrom, makeAnswer } from './answer.ts';
import type { Delivery } from './front-end.ts';
import { lineWithPart, withBatchOf, withSessionOf } from './in-thread.ts';
import { hearingOf, lineContext } from './line-context.ts';
import { subjectsNamed, subjectsOf } from './message-subject.ts';
import { lineBroke, restsOnUnread, storeFailed } from './not-recorded.ts';

export interface HostNeeds {
  readonly executor: Executor;
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly crew: string;
  readonly crewFile: CrewFile;
  readonly tongues: Tongues;
  readonly recordAnswers: RecordAnswers;
}

export interface Host {
  /** The answer; `undefined` for a blank line or a comment. */
  readonly handle: (delivery: Delivery) => Promise<Answer | undefined>;
  /** How one person at this moment is told things; without a name, how the crew is. */
  readonly telling: (shop: Shop, name: PersonName | undefined) => Telling;
  /** Whether a line said at that time would be an act. Nothing is decided by it. */
  readonly isAct: (shop: Shop, text: string, at: EpochMs, about?: StreamId) => boolean;
}

export function createHost({ executor, store, clock, log, crew, crewFile, tongues, recordAnswers }: HostNeeds): Host {
  function telling(shop: Shop, name: PersonName | undefined): Telling {
    const { language, units } = personIn(shop.crew, name ?? '');
    const now = clock.now();
    return {
      words: tongues.wordsIn(language, units),
      f: figuresFor({ profile: tongues.profileOf(language, units), units, zone: shop.crew.zone, now }),
      shop,
      now,
    };
  }

  async function handle(delivery: Delivery): Promise<Answer | undefined> {
    /** The record could be read, and nothing was to be written. */
    let onlyWords = false;
    try {
      const before = delivery.id === undefined ? undefined : await executor.answerBefore(delivery.id);
      if (before !== undefined) return answerFrom(before);
      const shop = await executor.look();
      const reading = readIn(shop, delivery.text, delivery.as, delivery.saidAt ?? clock.now(), delivery.about);
      onlyWords = reading.kind !== 'command';
      return await answerTo(delivery, reading, shop);
    } catch (error) {
      log.error('not-recorded', { in: delivery.in, error: String(error) });
      const { now } = clock;
      const spoken = { crewFile, tongues };
      if (error instanceof RestsOnUnread) return restsOnUnread(delivery, spoken, now(), error);
      if (onlyWords || error instanceof Unforeseen) return lineBroke(delivery, spoken, now());
      return (await provedAnyway(delivery)) ?? storeFailed(delivery, spoken, now());
    }
  }

  function readIn(shop: Shop, text: string, as: PersonName, at: EpochMs, about: StreamId | undefined): Reading {
    return oursAlone('reading', () => {
      const context = lineContext(tongues, shop, as, at);
      const read = readLine(text, context);
      const named = lineWithPart(text, read, about, shop);
      return named === undefined ? read : readLine(named, context);
    });
  }

  /** A record that cannot be read any more can still be proved: that is when it is asked for. */
  async function provedAnyway(delivery: Delivery): Promise<Answer | undefined> {
    const now = clock.now();
    const { zone } = crewFile;
    try {
      const reading = readLine(delivery.text, {
        hearing: hearingOf(tongues, crewFile, delivery.as),
        ...{ now, zone, sheetIds: [], batches: [], parts: [], places: [] },
      });
      if (reading.kind !== 'question' || reading.question.ask !== 'verify') return undefined;
      const { language, units } = personIn(crewFile, delivery.as);
      const f = figuresFor({ profile: tongues.profileOf(language, units), units, zone, now });
      const card = proofCard(
        { words: tongues.wordsIn(language, units), f },
        await proveRecord(store.archive, crew, reading.question.hash),
      );
      const head = { at: f.iso(now), in: delivery.in, as: delivery.as, to: [delivery.as], key: null };
      return makeAnswer({ ...head, kind: 'reply', code: null, recorded: false, card });
    } catch (error) {
      log.error('not-proved', { error: String(error) });
      return undefined;
    }
  }

  async function answerTo(delivery: Delivery, reading: Reading, shop: Shop): Promise<Answer | undefined> {
    switch (reading.kind) {
      case 'silence':
        return undefined;
      case 'misread': {
        const card = misreadCard(telling(shop, delivery.as), reading.misread);
        return answering(delivery, shop, { kind: 'misread', code: reading.misread.code, recorded: false, card });
      }
      case 'question':
        return answerQuestion(delivery, reading, shop);
      case 'command': {
        const now = clock.now();
        const { stance } = reading;
        const command = withSessionOf(delivery.about, withBatchOf(delivery.about, reading.command));
        const { pressed } = delivery;
        if (pressed !== undefined && isInDoubt(pressed, command, stance)) {
          const card = movedCard(telling(shop, delivery.as), pressed, command, delivery.text);
          // What it says of its parts may be over, too, by the time it is tapped.
          const moved = command.verb === 'release' ? command.parts.map(partStream) : [];
          return answering(delivery, shop, { kind: 'misread', code: 'card-moved', recorded: false, card, moved });
        }
        const from = withoutTeller(delivery, command);
        const request = {
          id: from.id ?? randomUUID(),
          by: from.as,
          now,
          command,
          at: reading.at ?? delivery.saidAt ?? now,
          stance,
        };
        const answer = answerFrom(await executor.execute(request, (asked, outcome) => word(from, asked, outcome)));
        // What is kept of it does not even name its delivery.
        return { ...answer, in: answer.in === '' ? delivery.in : answer.in };
      }
    }
  }

  /** Words an outcome inside the write path, so that the same delivery gets the same answer for ever. */
  function word(
    delivery: Delivery,
    request: Request,
    outcome: Parameters<Parameters<Executor['execute']>[1]>[1],
  ): string {
    const { shop } = outcome;
    switch (outcome.kind) {
      case 'recorded': {
        const cards = toldBothWays(shop, delivery.as, (t) => recordedCard(t, request, outcome));
        const moved = [...new Set(outcome.envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]))];
        const about = subjectsOf(shop, moved);
        return JSON.stringify(
          answering(delivery, shop, { kind: 'reply', code: null, recorded: true, ...cards, about, moved }),
        );
      }
      case 'objected': {
        const cards = toldBothWays(shop, delivery.as, (t) => objectionCard(t, request, outcome));
        const code = outcome.objections[0]?.code ?? null;
        const about = subjectsNamed(shop, request.command);
        return JSON.stringify(answering(delivery, shop, { kind: 'objection', code, recorded: false, ...cards, about }));
      }
      case 'unclear': {
        const card = unclearCard(telling(shop, delivery.as), request, outcome.unclear);
        const { code } = outcome.unclear;
        return JSON.stringify(answering(delivery, shop, { kind: 'misread', code, recorded: false, card }));
      }
    }
  }

  /** As whoever said it is told things, and as the crew is where that differs. */
  function toldBothWays(shop: Shop, name: PersonName, made: (t: Telling) => Card): Pick<Answer, 'card' | 'forAll'> {
    const [person, all] = [personIn(shop.crew, name), personIn(shop.crew, '')];
    const card = made(telling(shop, name));
    const isSame = person.language === all.language && person.units === all.units;
    return isSame ? { card } : { card, forAll: made(telling(shop, undefined)) };
  }

  async function answerQuestion(
    delivery: Delivery,
    { question, line }: Extract<Reading, { kind: 'question' }>,
    shop: Shop,
  ): Promise<Answer> {
    const t = telling(shop, delivery.as);
    const worded = (card: Card) => answering(delivery, shop, { kind: 'reply', code: null, recorded: false, card });
    // Of what was loaded for it, too: an answer must not pass for whole.
    const reply = async (card: Card) => worded(withUnread(t.words, card, unreadIn(await executor.look())));
    switch (question.ask) {
      case 'help':
        return worded(helpCard(t, question.verb));
      case 'now': {
        const everywhere = await executor.look([placeStream(defaultPlace)]);
        return reply(nowCard({ ...t, shop: everywhere }, delivery.as));
      }
      case 'stock':
        return reply(stockCard(t));
      case 'plan': {
        const names = question.parts.flatMap((part) => ('part' in part ? [partStream(part.part)] : []));
        const named = await executor.look([placeStream(defaultPlace), ...names]);
        return reply(planCard({ ...t, shop: named }, question, line));
      }
      case 'vent': {
        const { asked } = question;
        const named = asked.of === 'session' && asked.session !== undefined ? [sessionStream(asked.session)] : [];
        return reply(ventCard({ ...t, shop: await executor.look(named) }, question));
      }
      case 'hazards':
        return worded(hazardsCard(t, question.work));
      case 'day':
        return reply(await recordAnswers.day(t, question.day));
      case 'week':
      case 'month':
      case 'from':
      case 'trace':
      case 'find':
      case 'traveller':
      case 'export':
      case 'voc':
      case 'verify':
      case 'backup':
      case 'keep': {
        const asker = { name: delivery.as, atConsole: delivery.atConsole === true };
        return reply(await recordAnswers.answer(t, question, asker));
      }
    }
  }

  function answering(
    delivery: Delivery,
    shop: Shop,
    content: Pick<Answer, 'kind' | 'code' | 'recorded' | 'card' | 'forAll' | 'about' | 'moved'>,
  ): Answer {
    const at = telling(shop, delivery.as).f.iso(clock.now());
    return makeAnswer({
      at,
      in: delivery.in,
      as: delivery.as,
      to: [...new Set([delivery.as, ...content.card.ping])].filter((name) => name !== nobody),
      key: null,
      ...content,
    });
  }

  function isAct(shop: Shop, text: string, at: EpochMs, about?: StreamId): boolean {
    try {
      return readIn(shop, text, '', at, about).kind === 'command';
    } catch (error) {
      log.error('not-read', { error: String(error) });
      return false;
    }
  }

  return { handle, telling, isAct };
}
