// Takes a line from any front end and gives its answer: reads it, has it decided and recorded, words the outcome. Never
// throws: a misread is an answer, and so is a record that cannot be written.

import { randomUUID } from 'node:crypto';
import type { Question } from '../core/commands.ts';
import { type CrewFile, personIn } from '../core/crew/crew.ts';
import type { Executor, Request } from '../core/execute.ts';
import { type PersonName, placeStream } from '../core/ids.ts';
import type { Clock, Log, Store } from '../core/ports.ts';
import { liveBatches, liveParts, type Shop } from '../core/shop.ts';
import { type Answer, answerFrom, makeAnswer } from './answer.ts';
import { makeCard } from './cards/card.ts';
import { helpCard } from './cards/help-card.ts';
import { misreadCard } from './cards/misread-card.ts';
import { nowCard } from './cards/now-card.ts';
import { objectionCard, unclearCard } from './cards/objection-cards.ts';
import { recordedCard } from './cards/reply-cards.ts';
import type { Telling } from './cards/telling.ts';
import { tellingDay } from './day.ts';
import type { Delivery } from './front-end.ts';
import { figuresFor } from './language/figures.ts';
import { readLine } from './language/read-line.ts';
import type { Reading } from './language/reading.ts';
import { wordsIn } from './language/words/languages.ts';

export interface HostNeeds {
  readonly executor: Executor;
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly crew: string;
  readonly crewFile: CrewFile;
}

export interface Host {
  /** The answer; `undefined` for a blank line or a comment. */
  readonly handle: (delivery: Delivery) => Promise<Answer | undefined>;
  /** How one person at this moment is told things. */
  readonly telling: (shop: Shop, name: PersonName | undefined) => Telling;
}

export function createHost({ executor, store, clock, log, crew, crewFile }: HostNeeds): Host {
  function telling(shop: Shop, name: PersonName | undefined): Telling {
    const { language, units } = personIn(shop.crew, name ?? shop.crew.people[0]?.name ?? '');
    const now = clock.now();
    return { words: wordsIn(language), f: figuresFor({ language, units, zone: shop.crew.zone, now }), shop, now };
  }

  async function handle(delivery: Delivery): Promise<Answer | undefined> {
    try {
      const before = delivery.id === undefined ? undefined : await executor.answerBefore(delivery.id);
      if (before !== undefined) return answerFrom(before);
      const shop = await executor.look();
      const reading = readLine(delivery.text, lineContext(shop));
      return await answerTo(delivery, reading, shop);
    } catch (error) {
      log.error('not-recorded', { in: delivery.in, error: String(error) });
      return notRecorded(delivery);
    }
  }

  function lineContext(shop: Shop) {
    return {
      now: clock.now(),
      zone: shop.crew.zone,
      sheetIds: [...shop.shelf.keys()],
      batches: liveBatches(shop).map((batch) => batch.number),
      parts: liveParts(shop).map((part) => part.name),
      places: [...shop.places.keys()],
    };
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
        return answerQuestion(delivery, reading.question, shop);
      case 'command': {
        const now = clock.now();
        const { command, stance } = reading;
        const request = {
          id: delivery.id ?? randomUUID(),
          by: delivery.as,
          now,
          command,
          at: reading.at ?? now,
          stance,
        };
        return answerFrom(await executor.execute(request, (asked, outcome) => word(delivery, asked, outcome)));
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
    const t = telling(shop, delivery.as);
    switch (outcome.kind) {
      case 'recorded': {
        const card = recordedCard(t, request, outcome);
        return JSON.stringify(answering(delivery, shop, { kind: 'reply', code: null, recorded: true, card }));
      }
      case 'objected': {
        const card = objectionCard(t, request, outcome);
        const code = outcome.objections[0]?.code ?? null;
        return JSON.stringify(answering(delivery, shop, { kind: 'objection', code, recorded: false, card }));
      }
      case 'unclear': {
        const card = unclearCard(t, request, outcome.unclear);
        const { code } = outcome.unclear;
        return JSON.stringify(answering(delivery, shop, { kind: 'misread', code, recorded: false, card }));
      }
    }
  }

  async function answerQuestion(delivery: Delivery, question: Question, shop: Shop): Promise<Answer> {
    const t = telling(shop, delivery.as);
    const reply = (card: Answer['card']) =>
      answering(delivery, shop, { kind: 'reply', code: null, recorded: false, card });
    switch (question.ask) {
      case 'help':
        return reply(helpCard(t, question.verb));
      case 'now': {
        const everywhere = await executor.look([placeStream('room')]);
        return reply(nowCard({ ...t, shop: everywhere }));
      }
      case 'day':
        return reply(await tellingDay({ executor, store, crew }, t, question.day));
    }
  }

  function answering(
    delivery: Delivery,
    shop: Shop,
    content: Pick<Answer, 'kind' | 'code' | 'recorded' | 'card'>,
  ): Answer {
    const at = telling(shop, delivery.as).f.iso(clock.now());
    return makeAnswer({ at, in: delivery.in, as: delivery.as, to: [delivery.as], key: null, ...content });
  }

  function notRecorded(delivery: Delivery): Answer {
    const words = wordsIn(crewFile.people.find(({ name }) => name === delivery.as)?.language ?? 'en');
    const f = figuresFor({ language: 'en', units: 'metric', zone: crewFile.zone, now: clock.now() });
    const card = makeCard(words.replies.notRecorded, 'stop', {
      lines: [words.replies.storeFailed],
      actions: [{ id: 'again', label: words.buttons.again, line: delivery.text }],
    });
    const leads = crewFile.people.filter(({ role }) => role === 'lead').map(({ name }) => name);
    const to = [...new Set([delivery.as, ...leads])];
    const head = { at: f.iso(clock.now()), in: delivery.in, as: delivery.as, to, key: null };
    return makeAnswer({ ...head, kind: 'error', code: 'not-recorded', recorded: false, card });
  }

  return { handle, telling };
}
