// What a `why` asks about: a figure of the last card or of what runs, an objection, a hold; alone, the last card.

import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import type { Command, Question } from '../../../core/commands.ts';
import type { StreamId } from '../../../core/ids.ts';
import type { Objection } from '../../../core/objections.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import { liveParts } from '../../../core/shop.ts';
import { type Card, type CardAction, type CardFact, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { type FactId, factUnits } from '../fact-ids.ts';
import { type FigureAtHand, figureNamed, figuresRunning, subjectsOf } from './figures-at-hand.ts';
import type { Subjects } from './why.ts';
import { cardAbout, figureAbout } from './why-about.ts';
import { whyCard } from './why-card.ts';
import { whyHeldCard, whyNotCard } from './why-not.ts';

/** The card that is asked about. */
export interface CardAsked {
  readonly card: Pick<Card, 'title' | 'facts' | 'lines'>;
  /** What it told of. */
  readonly streams: readonly StreamId[];
  readonly question: Question | undefined;
  /** Of an objection: the act, and what speaks against it as things stand now. */
  readonly against: { readonly command: Command; readonly objections: readonly Objection[] } | undefined;
}

/** What is asked, in the asker's words, and what that names. */
export interface WhyAsked {
  readonly about: string | undefined;
  readonly things: readonly ThingMeant[];
}

export function askedWhy(telling: Telling, { about, things }: WhyAsked, last: CardAsked | undefined): Card {
  const running = figuresRunning(telling);
  const ofCard = last === undefined ? [] : figuresOfCard(telling, last, running);
  const against = last?.against;
  if (against !== undefined && (about === undefined || asksWhyNot(about))) {
    return whyNotCard(telling, against.command, against.objections, [...ofCard, ...running]);
  }
  if (about === undefined || asksWhyNot(about)) return whyOfCard(telling, last, ofCard);
  const asked = (figure: FigureAtHand): Card =>
    whyCard({ telling, ...figure, question: ofCard.includes(figure) ? last?.question : undefined });
  const named = figureNamed(about, ofCard, () => []) ?? figureNamed(about, running, () => []);
  if (named !== undefined) return asked(named);
  const held = partHeld(telling, about, things, last);
  if (held !== undefined) return whyHeldCard(telling, held);
  const all = [...ofCard, ...running];
  const ofThings = all.filter(({ of }) => things.some((thing) => isOf(of, thing)));
  const meant = figureAbout(telling, about, ofThings, all);
  if (meant !== undefined) return asked(meant);
  const explained = cardAbout(telling, about, things);
  if (explained !== undefined) return explained;
  const main = ofThings.find(isWorkedOut);
  if (main !== undefined) return asked(main);
  const [part] = things.flatMap((thing) => (thing.is === 'part' ? [thing.part] : []));
  if (part !== undefined) return whyHeldCard(telling, part);
  return makeCard(telling.words.why.whichTitle, 'warn', {
    lines: [telling.words.why.notThere(about)],
    actions: figureTaps(all),
  });
}

function isOf({ part, batch, can, session, place }: Subjects, thing: ThingMeant): boolean {
  switch (thing.is) {
    case 'part':
      return part?.name === thing.part.name;
    case 'batch':
      return part === undefined && batch?.number === thing.number;
    case 'can':
      return can?.number === thing.number;
    case 'session':
      return session?.number === thing.number;
    case 'place':
      return part === undefined && batch === undefined && can === undefined && place === thing.place;
    case 'person':
      return false;
  }
}

const asksWhyNot = (about: string): boolean => ['not', 'no'].includes(about.toLowerCase());

/** A question's card names no thing that it told of: a figure that runs and shows the same is that one. */
function figuresOfCard(
  telling: Telling,
  { card, streams }: CardAsked,
  running: readonly FigureAtHand[],
): readonly FigureAtHand[] {
  const of = subjectsOf(telling.shop, streams);
  const isKnown = [of.batch, of.part, of.can, of.session].some((subject) => subject !== undefined);
  return card.facts.map(
    (fact) =>
      (isKnown ? undefined : running.find((each) => each.fact.id === fact.id && each.fact.shown === fact.shown)) ?? {
        fact,
        of,
      },
  );
}

/** One figure is told whole; of several each in a line, with a tap for its why. */
function whyOfCard(telling: Telling, last: CardAsked | undefined, ofCard: readonly FigureAtHand[]): Card {
  const { why: words } = telling.words;
  if (last === undefined) {
    return makeCard(words.whichTitle, 'plain', {
      lines: [words.nothing],
      actions: figureTaps(figuresRunning(telling)),
    });
  }
  const held = ofCard.length === 0 ? subjectsOf(telling.shop, last.streams).part : undefined;
  if (held !== undefined && held.verdict?.is === 'held') return whyHeldCard(telling, held);
  const [worked, second] = ofCard.filter(isWorkedOut);
  const [only = worked, ...others] = second === undefined && worked !== undefined ? [worked] : ofCard;
  if (only === undefined) return makeCard(words.whichTitle, 'plain', { lines: [last.card.title, words.cardIs] });
  if (others.length === 0) {
    const card = whyCard({ telling, ...only, question: last.question });
    return { ...card, actions: figureTaps(ofCard.filter((figure) => figure !== only)) };
  }
  return makeCard(words.title(last.card.title, ''), 'plain', {
    lines: ofCard.slice(0, mostLines).map(({ fact }) => `${fact.label} ${fact.shown}: ${howOf(telling, fact)}`),
    actions: figureTaps(ofCard),
  });
}

const mostLines = 8;
const mostTaps = 4;

const isFactId = (id: string): id is FactId => isOwnKey(factUnits, id);

function howOf({ words: { why } }: Telling, { id }: CardFact): string {
  return isFactId(id) ? why.formulas[id] : why.errs['as-read'];
}

/** What was worked out before what was only read. */
function figureTaps(figures: readonly FigureAtHand[]): readonly CardAction[] {
  const worked = figures.filter(isWorkedOut);
  const offered = [...worked, ...figures.filter((figure) => !worked.includes(figure))];
  const each = new Map(offered.map(({ fact }) => [fact.id, fact]));
  return [...each.values()]
    .slice(0, mostTaps)
    .map(({ id, label, shown }) => ({ id: `why-${id}`, label: `${label} ${shown}`, line: `why ${id}` }));
}

const isWorkedOut = ({ fact: { id } }: FigureAtHand): boolean => isFactId(id) && workedOut.includes(id);

const workedOut: readonly FactId[] = [
  'stir-done-at',
  'pot-life-ends',
  'ratio-error',
  'spread',
  'dew-point',
  'flash-least-at',
  'recoat-opens-at',
  'cure-done-at',
  'gas-needed',
  'blanket-by',
  'air-for-lel',
  'air-for-exposure',
  'oven-air',
  'mixed-mass',
];

/** `why is 7 held`; `why held` of the last card's: where it is held, or is asked of as held. */
function partHeld(telling: Telling, about: string, things: readonly ThingMeant[], last: CardAsked | undefined) {
  const words = about.toLowerCase().split(/[^\p{L}]+/u);
  const saysHeld = words.some((word) => telling.hearing.verbs.get(word)?.row.name === 'hold');
  const [named] = things.flatMap((thing) => (thing.is === 'part' ? [thing.part] : []));
  if (named !== undefined) return saysHeld || named.verdict?.is === 'held' ? named : undefined;
  if (!saysHeld) return undefined;
  const of = last === undefined ? undefined : subjectsOf(telling.shop, last.streams).part;
  const held = liveParts(telling.shop).filter(({ verdict }) => verdict?.is === 'held');
  return of ?? (held.length === 1 ? held[0] : undefined);
}
