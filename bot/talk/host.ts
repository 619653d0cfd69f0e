// Takes a line from any front end and gives its answer: reads it, has it decided and recorded, words the outcome. Never
// throws: a misread is an answer, and so is a record that cannot be written, and a fault of the program's own.

import { randomUUID } from 'node:crypto';
import type { Command } from '../../core/commands.ts';
import { type Crew, type CrewFile, personIn } from '../../core/crew/crew.ts';
import type { Request } from '../../core/execute.ts';
import { type PartName, type PersonName, partStream, type StreamId } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import type { Log, Store } from '../../core/ports.ts';
import type { Shop } from '../../core/shop.ts';
import { oursAlone, Unforeseen } from '../../core/unforeseen.ts';
import type { EpochMs } from '../../core/units.ts';
import { RestsOnUnread } from '../../core/unread-event.ts';
import type { Telling } from '../cards/card-context.ts';
import { meantTap, misreadCard } from '../cards/misread-card.ts';
import { isInDoubt, movedCard } from '../cards/moved-card.ts';
import { proofCard } from '../cards/proof-cards.ts';
import { figuresFor } from '../language/figures.ts';
import { readLine, readStrictly } from '../language/read-line.ts';
import type { Reading } from '../language/reading.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import { proveRecord } from '../records/proving.ts';
import { withoutTeller } from './anonymous-near-miss.ts';
import { type Answer, answerFrom, makeAnswer } from './answer.ts';
import { answerQuestion, type Questioned } from './answer-question.ts';
import type { Delivery } from './front-end.ts';
import { lineWithPart, withBatchOf, withSessionOf } from './in-thread.ts';
import { lineKept } from './kept-lines.ts';
import { createLastCards } from './last-cards.ts';
import { lastSaid, movedLately } from './last-said.ts';
import { hearingOf, lineContext } from './line-context.ts';
import { createNewcomers, type Newcomers } from './newcomers.ts';
import { lineBroke, restsOnUnread, storeFailed } from './not-recorded.ts';
import type { Pressed } from './pressed.ts';
import { oneAnswer } from './several-answers.ts';
import { answering, type ToldNow, tellingOf } from './telling.ts';
import { type SaidAs, wordOutcome } from './word-outcome.ts';

export interface HostDeps extends Omit<Questioned, 'lastCards'> {
  readonly store: Store;
  readonly log: Log;
  readonly crew: string;
  readonly crewFile: CrewFile;
  /** Begins practice for whoever asks, and ends it. */
  readonly practising: {
    readonly begin: (delivery: Delivery, shop: Shop) => Promise<Answer>;
    readonly end: (delivery: Delivery, shop: Shop) => Promise<Answer>;
  };
}

export interface Host {
  /** The answer; `undefined` for a blank line or a comment. */
  readonly handle: (delivery: Delivery) => Promise<Answer | undefined>;
  /** How one person at this moment is told things; without a name, how the crew is. */
  readonly telling: (shop: Shop, name: PersonName | undefined) => Telling;
  /** Whether a line said at that time would be an act. Nothing is decided by it. */
  readonly isAct: (shop: Shop, text: string, at: EpochMs, about?: StreamId) => boolean;
  /** What a line would be read as, said now. Nothing is decided by it. */
  readonly reading: (delivery: Delivery) => Promise<Reading>;
  /** Whoever practises says to their own shop, not to the record. */
  readonly practises: (name: PersonName) => boolean;
  /** What was told by itself and has reached its people: they may ask back about it. */
  readonly saw: (answer: Answer) => void;
}

export function createHost(deps: HostDeps): Host {
  const { clock, log, tongues } = deps;
  const lastCards = createLastCards(deps.store, deps.crew);
  const newcomers = createNewcomers(deps.store, deps.crew);
  return {
    handle: async (delivery) => {
      // Nobody waits for what a store that fails cannot tell.
      const cards = await lastCards.of(delivery.as).catch(() => []);
      const answer = await handle({ ...deps, lastCards, newcomers }, delivery, cards);
      if (answer !== undefined) lastCards.saw(answer);
      return answer;
    },
    saw: lastCards.saw,
    practises: () => false,
    reading: async (delivery) => {
      const cards = await lastCards.of(delivery.as).catch(() => []);
      const at = delivery.saidAt ?? clock.now();
      return readIn(tongues, await deps.executor.look(), delivery.text, { ...delivery, at, cards, ...recordOf(deps) });
    },
    telling: (shop, name) => tellingOf({ tongues, now: clock.now() }, shop, name),
    isAct: (shop, text, at, about) => {
      try {
        return readIn(tongues, shop, text, { as: '', at, about }).kind === 'command';
      } catch (error) {
        log.error('not-read', { error: String(error) });
        return false;
      }
    },
  };
}

/** With the cards that each was given. */
type Handling = HostDeps & Questioned & { readonly newcomers: Newcomers };

/** `cards`: told to whoever speaks, newest first; `saidAs`: the strict line of an act that was said in other words, with others. */
async function handle(
  deps: Handling,
  given: Delivery,
  cards: readonly Answer[],
  saidAs?: string,
): Promise<Answer | undefined> {
  const { executor, clock, log, crewFile, tongues } = deps;
  const { id = randomUUID() } = given;
  const now = clock.now();
  const told = { tongues, now, before: cards };
  const heard: { meant?: Meant; crew?: Crew } = {};
  let delivery = { ...given, id };
  try {
    delivery = { ...delivery, text: await lineKept(deps, given.text) };
    const said = await executor.execute(
      { id, now, lately: movedLately(cards, given.as, now) },
      (shop) => {
        heard.crew = shop.crew;
        heard.meant = meaningOf(deps, told, { ...delivery, cards }, shop);
        return heard.meant.is === 'act' ? heard.meant.request : undefined;
      },
      (request, outcome) => {
        const by = withoutTeller(delivery, request.command);
        const as = heard.meant?.is === 'act' ? heard.meant.as : {};
        return JSON.stringify(wordOutcome(told, by, request, outcome, { ...as, ...known({ takenAs: saidAs }) }));
      },
    );
    if (said === undefined) return heard.meant?.is === 'words' ? await heard.meant.answer() : undefined;
    const answer = answerFrom(said);
    // What is kept of a near miss does not even name its delivery.
    return { ...answer, in: answer.in === '' ? delivery.in : answer.in };
  } catch (error) {
    log.error('not-recorded', { in: delivery.in, error: String(error) });
    // The record may be what fails: then the crew is as its file begins it.
    const spoken = { crewFile: heard.crew ?? crewFile, tongues };
    if (error instanceof RestsOnUnread) return restsOnUnread(delivery, spoken, clock.now(), error);
    const onlyWords = heard.meant?.is === 'words';
    if (onlyWords || error instanceof Unforeseen) return lineBroke(delivery, spoken, clock.now());
    return (await provedAnyway(deps, delivery)) ?? storeFailed(delivery, spoken, clock.now());
  }
}

/** An act, or what is answered without one. */
type Meant =
  | { readonly is: 'act'; readonly request: Request; readonly as: SaidAs }
  | { readonly is: 'words'; readonly answer: () => Answer | undefined | Promise<Answer | undefined> };

function meaningOf(
  deps: Handling,
  told: ToldNow,
  delivery: Delivery & Pick<Speaking, 'cards'> & { readonly id: string },
  shop: Shop,
): Meant {
  const { now } = told;
  const at = delivery.saidAt ?? now;
  const reading = readIn(deps.tongues, shop, delivery.text, { ...delivery, at, ...recordOf(deps) });
  if (reading.kind !== 'command') return { is: 'words', answer: () => offered(deps, told, delivery, reading, shop) };
  const { stance } = reading;
  const command = withSessionOf(delivery.about, withBatchOf(delivery.about, reading.command));
  const { pressed } = delivery;
  if (pressed !== undefined && isInDoubt(pressed, command, stance)) {
    return { is: 'words', answer: () => askedBack(told, delivery, pressed, command, shop) };
  }
  const { id, as: by } = withoutTeller(delivery, command);
  const { takenAs, unread } = reading;
  const as = known({ takenAs, unread });
  return { is: 'act', request: { id, by, now, command, at: reading.at ?? at, stance }, as };
}

/** With the offer to lead whoever is new. */
async function offered(
  deps: Handling,
  told: ToldNow,
  delivery: Delivery,
  reading: Exclude<Reading, { kind: 'command' }>,
  shop: Shop,
): Promise<Answer | undefined> {
  const answer = await inWords(deps, told, delivery, reading, shop);
  return answer && deps.newcomers.offering(tellingOf(told, shop, delivery.as), delivery.as, reading, answer);
}

function inWords(
  deps: Handling,
  told: ToldNow,
  delivery: Delivery,
  reading: Exclude<Reading, { kind: 'command' }>,
  shop: Shop,
): Answer | undefined | Promise<Answer> {
  switch (reading.kind) {
    case 'silence':
      return undefined;
    case 'misread': {
      const card = misreadCard(tellingOf(told, shop, delivery.as), reading.misread, delivery.as);
      return answering(told, delivery, shop, { kind: 'misread', code: reading.misread.code, recorded: false, card });
    }
    case 'several':
      return eachInTurn(deps, told, delivery, reading.lines, shop);
    case 'question': {
      const { question } = reading;
      if (question.ask === 'practice') return deps.practising.begin(delivery, shop);
      if (question.ask === 'practice-off') return deps.practising.end(delivery, shop);
      return answerQuestion(deps, delivery, { ...reading, question }, shop);
    }
  }
}

/** Each under a name of its own, so that the same delivery is the same acts; from the first that is not recorded on none. */
async function eachInTurn(
  deps: Handling,
  told: ToldNow,
  delivery: Delivery,
  lines: readonly string[],
  shop: Shop,
): Promise<Answer> {
  const answers: Answer[] = [];
  for (const [i, text] of lines.entries()) {
    const answer = await handle(deps, { ...delivery, id: `${delivery.id}+${i}`, text }, [], text);
    if (answer !== undefined) answers.push(answer);
    if (answer?.recorded !== true) break;
  }
  const telling = tellingOf(told, shop, delivery.as);
  const waiting = lines.slice(answers.length).map((line, i) => meantTap(telling, line, i));
  return (
    oneAnswer(answers, waiting) ?? lineBroke(delivery, { crewFile: deps.crewFile, tongues: deps.tongues }, told.now)
  );
}

/** Pressed on a card that had moved. */
function askedBack(told: ToldNow, delivery: Delivery, pressed: Pressed, command: Command, shop: Shop): Answer {
  const card = movedCard(tellingOf(told, shop, delivery.as), pressed, command, delivery.text);
  // What it says of its parts may be over, too, by the time it is tapped.
  const moved = command.verb === 'release' ? command.parts.map(partStream) : [];
  return answering(told, delivery, shop, { kind: 'misread', code: 'card-moved', recorded: false, card, moved });
}

/** Who says it, when, and under what. */
interface Speaking {
  readonly as: PersonName;
  readonly at: EpochMs;
  readonly about?: StreamId | undefined;
  /** Told to whoever says it, newest first. */
  readonly cards?: readonly Answer[];
  readonly partsEver?: () => readonly PartName[];
}

const recordOf = ({ store, crew }: HostDeps) => ({ partsEver: () => store.archive.partsEver(crew) });

function readIn(tongues: Tongues, shop: Shop, text: string, { as, at, about, cards = [], ...more }: Speaking): Reading {
  return oursAlone('reading', () => {
    const last = () => lastSaid(cards, { shop, as, at, about });
    const context = lineContext(tongues, shop, as, at, { last, ...more });
    const named = about === undefined ? undefined : lineWithPart(text, readStrictly(text, context), about, shop);
    return readLine(named ?? text, context);
  });
}

/** A record that cannot be read any more can still be proved: that is when it is asked for. */
async function provedAnyway(deps: HostDeps, delivery: Delivery): Promise<Answer | undefined> {
  const { store, crew, crewFile, tongues, log } = deps;
  const now = deps.clock.now();
  const { zone } = crewFile;
  try {
    const { language, units } = personIn(crewFile, delivery.as);
    const profile = tongues.profileOf(language, units);
    const reading = readLine(delivery.text, {
      hearing: hearingOf(tongues, crewFile, delivery.as),
      country: profile,
      ...{ now, zone, sheetIds: [], batches: [], parts: [], places: [] },
    });
    if (reading.kind !== 'question' || reading.question.ask !== 'verify') return undefined;
    const figures = figuresFor({ profile, units, zone, now });
    const card = proofCard(
      { words: tongues.wordsIn(language, units), figures },
      await proveRecord(store.archive, crew, reading.question.hash),
    );
    const head = { at: figures.iso(now), in: delivery.in, as: delivery.as, to: [delivery.as], key: null };
    return makeAnswer({ ...head, kind: 'reply', code: null, recorded: false, card });
  } catch (error) {
    log.error('not-proved', { error: String(error) });
    return undefined;
  }
}
