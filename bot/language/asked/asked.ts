// A question about how things stand, in the asker's own words, to its strict line: how long, when, who, where, how hot, how
// much, may I, is it. It is only ever answered; what asks the listener to do something is no question.

import type { StateQuestion, Verb } from '../../../core/commands.ts';
import { methodRows } from '../../../core/methods.ts';
import type { LineContext } from '../reading.ts';
import type { AskedKind, QuestionsTyped } from '../tongues/typed.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Understands } from '../understood.ts';
import { type ThingsSaid, thingsSaid } from './things-said.ts';

/** Nobody asks at such length. */
const longestQuestion = 240;

export const askedInWords: Understands = (line, context) => {
  if (line.length > longestQuestion) return undefined;
  const text = withoutAccents(line.toLowerCase()).replace(/[¿¡]/g, '').trim();
  const tongues = context.hearing.tongues.map(({ questions }) => questions).toReversed();
  if (tongues.some(({ leadIns, others }) => others.test(text.replace(leadIns, '')))) return undefined;
  const isMarked = /[?¿]/.test(line);
  for (const questions of tongues) {
    const strict = strictLine({ text, isMarked }, questions, context);
    if (strict !== undefined) return { is: 'sure', line: strict };
  }
  return undefined;
};

interface Typed {
  /** In lower case, without accents. */
  readonly text: string;
  readonly isMarked: boolean;
}

function strictLine({ text, isMarked }: Typed, typed: QuestionsTyped, context: LineContext): string | undefined {
  const asked = text.replace(typed.leadIns, '').replace(/[ ?!.]+$/, '');
  let found: Said | undefined;
  // Of most lines nothing is asked: what they name is looked for only where something is.
  const said = (): Said => {
    found ??= thingsIn(asked, typed, context);
    return found;
  };
  for (const { asks, said: pattern, anywhere, marked } of typed.kinds) {
    const at = asked.search(pattern);
    const stands = marked === true ? at >= 0 && isMarked : at === 0 || (at > 0 && (anywhere === true || isMarked));
    const strict = stands ? lineOf(asks, asked, said(), typed) : undefined;
    if (strict !== undefined) return strict;
  }
  return isMarked ? bareQuestion(asked, said(), typed) : undefined;
}

/** `filtered 2?` asks whether it was; `coat impeller-7 1 brush?` whether it may be. */
function bareQuestion(asked: string, said: Said, { isDone }: QuestionsTyped): string | undefined {
  const [first = ''] = asked.split(' ');
  if (said.act === undefined) return said.things.length === 1 ? `how-long ${said.things.join(' ')}` : undefined;
  return isDone.test(first) || !said.beginsInAct ? stateLine('how-long', said) : canI(said);
}

interface Said extends ThingsSaid {
  readonly act: Verb | undefined;
  /** A part by its whole name: a bare number is a pot's in a trace. */
  readonly traced: string | undefined;
  /** What is in cure now. */
  readonly curing: readonly string[];
  /** `a` or `b`. */
  readonly component: string | undefined;
}

/** An act that is said in other words than its own counts before those that only look like one. */
function thingsIn(asked: string, typed: QuestionsTyped, context: LineContext): Said {
  const all = thingsSaid(tokenize(asked.replace(typed.modal, ''), context.hearing), typed, context);
  const spray: Verb = all.things.some((thing) => /[a-z]-?\d|^\d+$/.test(thing)) ? 'coat' : 'spray-on';
  const isSprayed =
    typed.spray.test(asked) || (all.acts.length === 0 && all.method !== undefined && methodRows[all.method].atomised);
  const act = typed.acts.find((each) => each.said.test(asked))?.act ?? (isSprayed ? spray : all.acts[0]);
  const method = all.method ?? (isSprayed && act === 'coat' ? 'spray' : undefined);
  const [first] = all.things;
  const [ending, other] = context.parts.filter((part) => /\d+$/.exec(part)?.[0] === first);
  const traced = ending === undefined || other !== undefined ? first : ending;
  return {
    ...all,
    act,
    curing: curingNow(context),
    traced,
    component: typed.component.exec(asked)?.[1],
    method: act === 'coat' ? method : undefined,
  };
}

/** More are asked which. */
const mostCuring = 8;

function curingNow({ live }: LineContext): readonly string[] {
  const parts = live?.().parts.filter(({ phase }) => phase === 'curing') ?? [];
  return parts.length > mostCuring ? [] : parts.map(({ name }) => name);
}

function canI(said: Said): string | undefined {
  const { act, things, places, method, figures, component } = said;
  if (act === undefined) return undefined;
  const where = act === 'cure' ? places : [];
  const which = act === 'open' && component !== undefined ? [component] : [];
  return ['can-i', act, ...which, ...things, ...where, ...(method === undefined ? [] : [method]), ...figures].join(' ');
}

const stateLine = (ask: StateQuestion['ask'], said: Said): string =>
  [ask, ...named(said), ...(said.act === undefined ? [] : [said.act])].join(' ');

/** A place only where nothing in it is named. */
const named = ({ things, places }: Said): readonly string[] => (things.length > 0 ? things : places);

/** Where nobody is asked of: who is there. */
const ofPeople: readonly (Verb | undefined)[] = ['spray-on', 'brief', 'shift', 'supplied'];

function lineOf(asks: AskedKind, asked: string, said: Said, { ofAll }: QuestionsTyped): string | undefined {
  const { things, places, act } = said;
  const of = named(said);
  const lot = things.find((thing) => thing.startsWith('lot '));
  if (lot !== undefined) return `trace ${lot}`;
  switch (asks) {
    case 'can-i':
      if (act === undefined && places.length > 0) return `where-is ${places.join(' ')}`;
      // `se puede ya`
      return (
        canI(said) ?? (things.length > 0 || asked.split(' ').length < 4 ? ['to-do', ...things].join(' ') : undefined)
      );
    case 'lot':
      return said.traced === undefined ? undefined : `trace ${said.traced}`;
    case 'went-wrong':
      return things.length > 0 ? `how-long ${things.join(' ')}` : asks;
    case 'what-late':
    case 'at-risk':
    case 'day':
    case 'mask':
      return asks;
    case 'how-much':
      return howMuch(asked, said);
    case 'what-now':
      return of.length > 0 ? ['to-do', ...of].join(' ') : 'next-step';
    case 'where-is':
    case 'how-hot':
    case 'to-do':
      return [asks, ...of].join(' ');
    case 'who-did':
      return ofPeople.includes(act) ? [asks, ...of].join(' ') : stateLine(asks, said);
    case 'how-long':
      // How old the reading is tells whether it still serves.
      if (act === 'air' || act === 'surface') return ['how-hot', ...of].join(' ');
      // `when does the mix die`
      if (act === 'mix') return [asks, ...of].join(' ');
      // `how long are they still in the oven`
      if (act === 'cure' && things.length === 0 && said.curing.length > 0) return [asks, ...said.curing].join(' ');
      // `is everybody fine`: of nothing that stands here.
      return of.length === 0 && act === undefined && !ofAll.test(asked) ? undefined : stateLine(asks, said);
  }
}

const areaSaid =
  /(?:(?<![.,\d])(\d+)(?![.,]?\d)\D{1,24}?)?(?<![.,\d])(\d+(?:[.,]\d+)?) ?((?:m|ft)\^?2|sqm|sqft)(?!\w)/i;

/** `3 parts of 0.4 m2`: how much is to be mixed. `a`, `b`: which part of the product. */
function howMuch(asked: string, { things, acts, component }: Said): string {
  const [area, count = '1', each = '', unit = ''] = areaSaid.exec(asked) ?? [];
  if (area !== undefined) return `how-much ${count}x${each}${unit}`;
  if (component !== undefined) return `how-much ${component}`;
  return acts.includes('mix') && things.length === 0 ? 'how-much' : ['how-much', ...things].join(' ');
}
