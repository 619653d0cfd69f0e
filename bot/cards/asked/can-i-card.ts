// What stands against an act, before anybody does it: each objection with the minute from which it would not stand, or that
// nothing here stands against it. It is never recorded, and no tap of it does what was asked about.

import { ruleOf } from '../../../core/allowed.ts';
import { actsLike } from '../../../core/asked/acts-like.ts';
import { type Against, type Stands, standsAgainst } from '../../../core/asked/stands-against.ts';
import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import type { Command, StateQuestion } from '../../../core/commands.ts';
import { defaultPlace, type PersonName } from '../../../core/ids.ts';
import { sprayLaws } from '../../../core/session/figure-sources.ts';
import type { EpochMs } from '../../../core/units.ts';
import { writeThing } from '../../language/write-asked.ts';
import { airFacts } from '../air-facts.ts';
import { type Card, type CardAction, type CardFact, makeCard } from '../card.ts';
import { lineOf, type Telling } from '../card-context.ts';
import { exampleHere } from '../example-here.ts';
import { nameOfThing, tapsThatAsk, thingTold } from './things-told.ts';

type CanI = Extract<StateQuestion, { ask: 'can-i' }>;

export function canICard(telling: Telling, question: CanI, things: readonly ThingMeant[], by: PersonName): Card {
  const { asked, replies, unclear } = telling.words;
  const against = standsAgainst(telling, by, actsLike(telling, question, things));
  if (against === undefined) {
    return makeCard(replies.notClear, 'warn', { lines: [asked.sayMore(exampleHere(telling, question.act))] });
  }
  if (against.is === 'unclear') {
    const lines = [unclear(against.unclear, telling.figures), replies.nothingRecorded];
    const isWhich = /^(which|no-such)-/.test(against.unclear.code);
    const title = isWhich ? replies.notClear : asked.notAsItStands(actShown(telling, question, things));
    return makeCard(title, 'warn', { lines, actions: tapsOf(telling, question, things, against.command) });
  }
  const act = actShown(telling, question, things);
  return makeCard(titleOf(telling, act, against), against.is === 'nothing' ? 'plain' : 'warn', {
    facts: [...potFacts(telling, against.command), ...airRead(telling)],
    lines: [
      ...(against.is === 'nothing' ? [] : objectionLines(telling, question, against)),
      ...askedAs(telling, against.command),
      ...(against.is === 'nothing' ? [asked.onlyByRecord] : []),
      replies.nothingRecorded,
    ],
    actions: tapsOf(telling, question, things, against.command),
  });
}

type Settled = Exclude<Against, { is: 'unclear' }>;

function titleOf({ words: { asked }, figures }: Telling, act: string, against: Settled): string {
  if (against.is === 'nothing') return asked.nothingAgainst(act);
  const ends = against.stands.map(({ until }) => until);
  const isKnown = (at: EpochMs | undefined): at is EpochMs => at !== undefined;
  const [first, ...others] = ends.filter(isKnown).toSorted((one, other) => other - one);
  return first === undefined || others.length + 1 < ends.length || against.afterwards.length > 0
    ? asked.notAsItStands(act)
    : asked.from(act, first, figures);
}

function objectionLines(
  telling: Telling,
  { act }: CanI,
  against: Extract<Against, { is: 'objections' }>,
): readonly string[] {
  const { asked, replies, objection: told } = telling.words;
  const line = ({ objection, until }: Stands): string => {
    const said = told(objection, telling.figures);
    return until === undefined ? said : asked.standsUntil(said, until, telling.figures);
  };
  const sources = new Set(against.stands.map(({ objection }) => ruleOf(act, objection.code).source));
  return [
    ...new Set(against.stands.map(line)),
    ...against.afterwards.map((objection) => asked.thenStands(told(objection, telling.figures))),
    replies.askedBy([...sources], sprayLaws[telling.shop.crew.spray.law.frame], telling.figures),
  ];
}

/** In the asker's words: the act's own, and what it is done to. */
function actShown(telling: Telling, { act, method, of }: CanI, things: readonly ThingMeant[]): string {
  const named = things.length > 0 ? things.map(nameOfThing) : of.map(writeThing);
  const line = [act, ...named, ...(method === undefined ? [] : [method])].join(' ');
  return telling.words.lineShown(line, telling.figures);
}

/** Which pot and which way were taken, where the question left them out. */
function askedAs(telling: Telling, command: Command): readonly string[] {
  if (command.verb !== 'coat' || command.batch === undefined) return [];
  const named = command.parts.filter((part) => part !== '-');
  const line = lineOf(telling, { command })
    .replace(/ new(?= |$)/, '')
    .replace(' - ', ' ');
  const shown = telling.words.lineShown(line, telling.figures);
  return [telling.words.asked.askedAs(named.length > 0 ? shown : shown.replace('  ', ' '))];
}

/** On which reading it rests, and how old that is. */
const airRead = (telling: Telling): readonly CardFact[] =>
  airFacts(telling, defaultPlace).filter(({ id }) => ofAir.includes(id));

const ofAir: readonly CardFact['id'][] = ['air-temperature', 'air-read-at', 'humidity'];

function potFacts(telling: Telling, command: Command) {
  if (!('batch' in command) || command.batch === undefined) return [];
  const told = thingTold(telling, { is: 'batch', number: command.batch });
  return (told?.facts ?? []).filter(({ id }) => id === 'pot-margin-at' || id === 'pot-life-ends');
}

function tapsOf(
  telling: Telling,
  { act }: CanI,
  things: readonly ThingMeant[],
  command: Command,
): readonly CardAction[] {
  const pot: readonly ThingMeant[] =
    'batch' in command && command.batch !== undefined ? [{ is: 'batch', number: command.batch }] : [];
  const told = [...things, ...pot].flatMap((thing) => thingTold(telling, thing)?.taps ?? []);
  return tapsThatAsk([...new Map(told.map((tap) => [tap.line, tap])).values()], act);
}
