// Begins and ends practice, and answers for it in its own name: what the host says where somebody asks for practice, and what stands
// in front of the host for whoever is in it.

import type { Executor } from '../../core/execute.ts';
import type { Clock } from '../../core/ports.ts';
import type { Shop } from '../../core/shop.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';
import { type Card, makeCard } from '../cards/card.ts';
import { type Telling, withLinesShown } from '../cards/card-context.ts';
import {
  nextBellFor,
  type PracticeSaid,
  practiceBegunCard,
  practiceCard,
  practiceOverCard,
  practiceSaidCard,
} from '../cards/practice-card.ts';
import { misreadCodes } from '../language/reading.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import type { Wait } from '../language/wait-said.ts';
import { type Answer, makeAnswer } from '../talk/answer.ts';
import type { Delivery } from '../talk/front-end.ts';
import { oneAnswer } from '../talk/several-answers.ts';
import { tellingOf } from '../talk/telling.ts';
import { practiceCrew, practiceStart } from './practice-crew.ts';
import type { OpenPracticeShop } from './practice-shop.ts';
import { noteAnswer, type Practice, type Practices, practised } from './practices.ts';

export interface PractisingDeps {
  readonly practices: Practices;
  readonly open: OpenPracticeShop;
  readonly executor: Pick<Executor, 'look'>;
  readonly clock: Clock;
  readonly tongues: Tongues;
}

export interface Practising {
  readonly begin: (delivery: Delivery, shop: Shop) => Promise<Answer>;
  readonly end: (delivery: Delivery, shop: Shop) => Promise<Answer>;
  /** One line in it. */
  readonly say: (practice: Practice, delivery: Delivery) => Promise<Answer | undefined>;
  readonly wait: (practice: Practice, delivery: Delivery, wait: Wait) => Promise<Answer>;
  /** Told in it, with nothing done. */
  readonly refuse: (practice: Practice, delivery: Delivery, what: PracticeSaid) => Promise<Answer>;
  /** In the words of the shop. */
  readonly told: (delivery: Delivery, card: (telling: Telling) => Card, shop?: Shop) => Promise<Answer>;
}

export function createPractising(deps: PractisingDeps): Practising {
  const { practices, open, clock } = deps;
  const told: Practising['told'] = async (delivery, card, shop) => {
    const telling = tellingOf(
      { tongues: deps.tongues, now: clock.now() },
      shop ?? (await deps.executor.look()),
      delivery.as,
    );
    return answerOf(telling, delivery, withLinesShown(telling, card(telling)));
  };
  const saidAlone = (delivery: Delivery, what: PracticeSaid, shop: Shop) =>
    told(delivery, (telling) => practiceSaidCard(telling, what), shop);

  return {
    told,
    begin: async (delivery, shop) => {
      const { as } = delivery;
      const running = practices.of(as);
      if (running !== undefined) return begun(deps, running, delivery, false);
      if (shop.crew.alarms.length > 0) return saidAlone(delivery, 'notNow', shop);
      const crewFile = practiceCrew(shop.crew, as);
      const practice = practices.begin(as, () => open(crewFile, practiceStart(clock.now(), crewFile.zone)));
      return practice === undefined ? saidAlone(delivery, 'noMark', shop) : begun(deps, practice, delivery, true);
    },
    end: async (delivery, shop) => {
      const practice = practices.of(delivery.as);
      if (practice === undefined) return saidAlone(delivery, 'none', shop);
      const done = await practised(practice);
      practices.end(delivery.as);
      return told(delivery, (telling) => practiceOverCard(telling, done), shop);
    },
    say: async (practice, delivery) => {
      const answer = await practice.shop.host.handle(inPractice(delivery));
      if (answer === undefined) return undefined;
      practice.lines += 1;
      return markedAnswer(deps, practice, delivery, answer);
    },
    refuse: (practice, delivery, what) =>
      markedAnswer(deps, practice, delivery, undefined, (telling) => practiceSaidCard(telling, what)),
    wait: async (practice, delivery, wait) => {
      practice.lines += 1;
      return waited(deps, practice, delivery, wait);
    },
  };
}

/** By its own clock, and as whoever types from anywhere. */
const inPractice = ({ text, as, in: said, id }: Delivery): Delivery => ({ text, as, in: said, id });

/** Led from the first card on, as in a first shift. */
async function begun(deps: PractisingDeps, practice: Practice, delivery: Delivery, isNew: boolean): Promise<Answer> {
  const { host } = practice.shop;
  const answer = await host.handle({ text: 'first-shift', as: delivery.as, in: delivery.in, id: undefined });
  const card = answer?.card ?? makeCard('', 'plain');
  const worded = (telling: Telling) => practiceBegunCard(telling, card, isNew);
  return markedAnswer(deps, practice, delivery, answer, worded);
}

async function waited(deps: PractisingDeps, practice: Practice, delivery: Delivery, wait: Wait): Promise<Answer> {
  const { shop } = practice;
  const { as } = delivery;
  const { practice: words } = shop.host.telling(await shop.look(), as).words;
  const bell = nextBellFor(shop.host.telling(await shop.look(), as), as);
  const until = wait.to === 'time' && (bell === undefined || wait.at < bell) ? wait.at : bell && wholeMinute(bell);
  const rung =
    until === undefined ? [] : (await shop.goOn(until)).filter(({ to, kind }) => to.includes(as) && kind !== 'digest');
  const bells = oneAnswer(rung, []);
  if (bells !== undefined) return markedAnswer(deps, practice, delivery, bells);
  const next = await shop.host.handle({ ...inPractice(delivery), text: 'next-step', id: undefined });
  const none = until === undefined ? [words.nothingRings] : [];
  return markedAnswer(deps, practice, delivery, next, undefined, none);
}

/** As its card says it: nobody does the next thing in the second in which it rings. */
const wholeMinute = (at: EpochMs): EpochMs => epochMs(Math.ceil(at / 60_000) * 60_000);

/** Marked, private, and of nothing that any front end could take for the shop's. */
async function markedAnswer(
  { tongues, clock }: PractisingDeps,
  practice: Practice,
  delivery: Delivery,
  answer: Answer | undefined,
  worded?: (telling: Telling) => Card,
  more: readonly string[] = [],
): Promise<Answer> {
  const { as } = delivery;
  const { shop, rang } = practice;
  if (answer !== undefined) await noteAnswer(practice, as, answer);
  const telling = shop.host.telling(await shop.look(), as);
  const { practice: words } = telling.words;
  const asks = answer !== undefined && answer.code !== null;
  const first = [...rang.map(words.rangMeanwhile), ...(isOfShop(answer) ? [words.askedOfShop] : []), ...more];
  const card = worded?.(telling) ?? answer?.card ?? makeCard('', 'plain');
  practice.rang = [];
  practice.lastAt = clock.now();
  const marked = practiceCard(telling, card, { name: as, asks: worded === undefined && asks, more: first });
  const own = tellingOf({ tongues, now: clock.now() }, await shop.look(), as);
  const kind = answer?.kind === 'misread' || answer?.kind === 'error' ? answer.kind : 'reply';
  return answerOf(own, delivery, marked, { kind, code: answer?.code ?? null });
}

/** It may be the shop's that was asked about or named: there is no such thing here, or another. */
function isOfShop(answer: Answer | undefined): boolean {
  if (answer?.kind === 'misread') return !misreadCodes.some((code) => code === answer.code);
  return answer?.asked !== undefined && !explains.has(answer.asked.ask);
}

/** What is true of any shop. */
const explains: ReadonlySet<string> = new Set(['help', 'what-now', 'what-is', 'why', 'plan', 'hazards']);

function answerOf(
  { figures, now }: Telling,
  { in: said, as }: Delivery,
  card: Card,
  { kind, code }: Pick<Answer, 'kind' | 'code'> = { kind: 'reply', code: null },
): Answer {
  return makeAnswer({ at: figures.iso(now), kind, in: said, as, to: [as], key: null, code, recorded: false, card });
}
