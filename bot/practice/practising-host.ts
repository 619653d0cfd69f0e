// The host as every front end uses it, with practice in front: what somebody who practises types goes to their own shop, and nothing
// of it to the record. What was pressed on a card of the shop is the shop's, and a cry is always real.

import type { Question } from '../../core/commands.ts';
import type { CrewFile } from '../../core/crew/crew.ts';
import type { Executor } from '../../core/execute.ts';
import type { PersonName } from '../../core/ids.ts';
import type { Clock, Log } from '../../core/ports.ts';
import { alarmNamed } from '../../core/session/session-commands.ts';
import {
  practiceEndedCard,
  practiceSaidCard,
  type Unmarked,
  unmarked,
  whichRecordCard,
} from '../cards/practice-card.ts';
import type { Reading } from '../language/reading.ts';
import type { Tongues, Words } from '../language/tongues/tongues.ts';
import { waitSaid } from '../language/wait-said.ts';
import { type Answer, makeAnswer } from '../talk/answer.ts';
import type { Delivery } from '../talk/front-end.ts';
import type { Host } from '../talk/host.ts';
import { hearingOf } from '../talk/line-context.ts';
import { lineBroke } from '../talk/not-recorded.ts';
import type { Practice, Practices } from './practices.ts';
import type { Practising } from './practising.ts';

export interface PractisingHostDeps {
  readonly host: Host;
  readonly practices: Practices;
  readonly practising: Practising;
  readonly executor: Pick<Executor, 'look'>;
  readonly tongues: Tongues;
  readonly log: Log;
  readonly clock: Clock;
  readonly crewFile: CrewFile;
}

/** So many deliveries are known again, of practices that are over too. */
const answeredKept = 200;

export function practisingHost(deps: PractisingHostDeps): Host {
  const { host, practices } = deps;
  const answered = new Map<string, Answer>();
  const keep = (id: string, answer: Answer): void => {
    answered.set(id, answer);
    const [oldest] = answered.keys();
    if (answered.size > answeredKept && oldest !== undefined) answered.delete(oldest);
  };
  return {
    ...host,
    practises: (name) => practices.of(name) !== undefined,
    saw: (answer) => {
      host.saw(answer);
      for (const name of answer.to) noteBell(practices.of(name), answer);
    },
    handle: async (delivery) => {
      const { as, id } = delivery;
      const line = unmarked(delivery.text);
      const mayBe = line.of !== 'unsaid' || practices.of(as) !== undefined || practices.endedFor(as) !== undefined;
      if (!mayBe) return host.handle(delivery);
      const before = id === undefined ? undefined : answered.get(id);
      if (before !== undefined) return before;
      const answer = await handledAnyway(deps, { ...delivery, text: line.text }, line.of);
      if (id !== undefined && answer !== undefined) keep(id, answer);
      return answer;
    },
  };
}

/** As many as are told at once. */
const bellsTold = 3;

function noteBell(practice: Practice | undefined, { key, card }: Answer): void {
  if (practice === undefined || key === null) return;
  practice.rang = [...new Set([...practice.rang, card.title])].slice(-bellsTold);
}

/** Whatever breaks in it: nothing is recorded. */
async function handledAnyway(
  deps: PractisingHostDeps,
  said: Delivery,
  of: Unmarked['of'],
): Promise<Answer | undefined> {
  const reading = await readingOf(deps, said);
  // Where the record of the shop cannot be read, it says so itself.
  if (reading === undefined) return deps.host.handle(said);
  try {
    return await handle(deps, said, of, reading);
  } catch (error) {
    deps.log.error('practice-broke', { in: said.in, error: String(error) });
    return lineBroke(said, deps, deps.clock.now());
  }
}

/** `of`: what its mark says. */
async function handle(
  deps: PractisingHostDeps,
  said: Delivery,
  of: Unmarked['of'],
  reading: Reading,
): Promise<Answer | undefined> {
  const { host, practices, practising } = deps;
  const { as } = said;
  const practice = practices.of(as);
  const forShop = async () => withLine(deps, await host.handle(said), as, practice && ((words) => words.real));
  if (isCry(reading)) return cried(deps, said);
  // A card of the shop says what it does, and does it; what begins anew is as likely meant for practice.
  const onShopCard = of === 'unsaid' && said.pressed !== undefined;
  if (of === 'shop' || (onShopCard && (practice === undefined || !startsAnew(reading)))) return forShop();
  if (practice === undefined) return over(deps, said, reading, of);
  const shop = await deps.executor.look();
  if (shop.crew.alarms.length > 0) {
    practices.end(as);
    if (of === 'unsaid') return withLine(deps, await host.handle(said), as, (words) => words.alarmOn);
    return practising.told(said, (telling) => practiceSaidCard(telling, 'notNow'), shop);
  }
  if (onShopCard || (of === 'unsaid' && said.about !== undefined)) {
    return practising.told(said, (telling) => whichRecordCard(telling, said.text), shop);
  }
  return inPractice(deps, practice, said, reading);
}

async function readingOf({ host, log }: PractisingHostDeps, said: Delivery): Promise<Reading | undefined> {
  try {
    return await host.reading(said);
  } catch (error) {
    log.error('not-read', { error: String(error) });
    return undefined;
  }
}

/** Real, whoever says it and wherever. */
async function cried(deps: PractisingHostDeps, said: Delivery): Promise<Answer | undefined> {
  const { host, practices } = deps;
  const practised = practices.of(said.as) !== undefined;
  const answer = await host.handle(said);
  if (!practised || answer?.recorded !== true) return answer;
  practices.end(said.as);
  return withLine(deps, answer, said.as, (words) => words.cried);
}

async function inPractice(
  deps: PractisingHostDeps,
  practice: Practice,
  said: Delivery,
  reading: Reading,
): Promise<Answer | undefined> {
  const { practising, executor } = deps;
  const shop = await executor.look();
  const asked = reading.kind === 'question' ? reading.question.ask : undefined;
  if (asked === 'practice') return practising.begin(said, shop);
  if (asked === 'practice-off') return practising.end(said, shop);
  if (asked !== undefined && leavesFile.has(asked)) {
    return practising.refuse(practice, said, 'noPapers');
  }
  const wait = waitSaid(said.text, {
    hearing: hearingOf(deps.tongues, shop.crew, said.as),
    now: practice.shop.now(),
    zone: shop.crew.zone,
  });
  if (wait !== undefined) return practising.wait(practice, said, wait);
  const answer = await practising.say(practice, said);
  // What its own rules took for an alarm is one, whatever it was meant as.
  const alarms = (await practice.shop.look()).crew.alarms.filter(({ isDrill }) => !isDrill);
  if (alarms.length === 0) return answer;
  return cried(deps, said);
}

/** Said when theirs was over, or on a card of it: nothing is recorded on a guess. */
async function over(
  deps: PractisingHostDeps,
  said: Delivery,
  reading: Reading,
  of: Unmarked['of'],
): Promise<Answer | undefined> {
  const { host, practices, practising } = deps;
  const why = practices.endedFor(said.as) ?? 'left';
  practices.end(said.as);
  const asked = reading.kind === 'question' ? reading.question.ask : undefined;
  if (of === 'unsaid' && (reading.kind === 'silence' || asked === 'practice')) return host.handle(said);
  if (of === 'unsaid' && asked !== undefined && asked !== 'practice-off') {
    return withLine(deps, await host.handle(said), said.as, (words) => words.endedWhy[why]);
  }
  const mayBeReal = of === 'unsaid' && asked === undefined;
  return practising.told(said, (telling) => practiceEndedCard(telling, why, mayBeReal ? said.text : undefined));
}

const startsAnew = (reading: Reading): boolean =>
  reading.kind === 'command' && (reading.command.verb === 'air' || reading.command.verb === 'mix');

const cries: ReadonlySet<string> = new Set(['no-cry', 'which-cry']);
const ofAlarms: ReadonlySet<string> = new Set(['no-alarm', 'alarm-over']);

/** It calls people, may be meant to, or says that nobody is to be called. */
function isCry(reading: Reading): boolean {
  if (reading.kind === 'misread') return cries.has(reading.misread.code) || reading.misread.calls !== undefined;
  if (reading.kind !== 'command') return false;
  const { verb } = reading.command;
  return alarmNamed(verb) !== undefined || ofAlarms.has(verb);
}

/** They leave a file, which somebody could take for the shop's. */
const leavesFile: ReadonlySet<string> = new Set<Question['ask']>([
  'traveller',
  'export',
  'voc',
  'backup',
  'papers',
  'keep',
]);

/** For whoever practises; others read the card as it is. */
async function withLine(
  { host, executor }: PractisingHostDeps,
  answer: Answer | undefined,
  as: PersonName,
  line: ((words: Words['practice']) => string) | undefined,
): Promise<Answer | undefined> {
  if (answer === undefined || line === undefined) return answer;
  const { practice } = host.telling(await executor.look(), as).words;
  const { card, forAll = card } = answer;
  return makeAnswer({ ...answer, card: { ...card, lines: [...card.lines, line(practice)] }, forAll });
}
