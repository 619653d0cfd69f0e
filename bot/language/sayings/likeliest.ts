// A line that no phrase accounts for, by what its words speak for: the acts that it most likely tells, each with the things and
// figures that it names, as taps. Taken without one is only what its words, and how things stand, leave no doubt of.

import { actsJoint, linesApart } from '../lines-apart.ts';
import type { LineContext } from '../reading.ts';
import { actRows, strongerThan } from '../slots-heard/act-rows.ts';
import type { Clause } from '../slots-heard/clause.ts';
import { type Composed, composed } from '../slots-heard/compose.ts';
import { fits } from '../slots-heard/fits.ts';
import { holdsLost } from '../slots-heard/lost.ts';
import { mayBeOtherwise } from '../slots-heard/may-be-otherwise.ts';
import { type Claimed, claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import type { Before } from '../slots-heard/things.ts';
import { asksFirst, saysNot, unsaid } from '../slots-heard/unsaid.ts';
import { isSaidAct, type SaidAct } from '../tongues/said-words.ts';
import type { SaidMeaning } from '../tongues/sayings-typed.ts';
import type { Understands, Understood } from '../understood.ts';
import { verbNamed } from '../verbs-typed.ts';
import { clauseFor, toldBy } from './clause-of-act.ts';
import { ofWhatIsNamed, toldOtherwise } from './opposites.ts';
import { rootsOf } from './signs.ts';
import type { Weighed } from './weigher.ts';

/** A sentence of more is no line about an act. */
const mostPieces = 40;
/** What is less likely is not looked at. */
const leastWeighed = 0.01;
/** Nor offered, however little is left once what cannot be is out. */
const leastOffered = 0.04;
/** What is less likely is not worth a tap. */
const leastShare = 0.08;
/** So much less likely than what it most likely tells, and it is not told: least of all where that cannot be done to what it names. */
const leastBeside = 0.4;
/** Of a line that names nothing: as soon is it about something else. */
const leastUnnamed = 0.9;
/** `argon's on`, where one lid is off. */
const leastOfOnlyCan = 0.5;
/** As likely as this to tell nothing, or to ask, it is left alone. */
export const mostIdle = 0.25;
/** Where its first word may ask. */
const hardlyAsks = 0.02;
/** Hardly anything else can be meant: by what its words speak for alone, and where another reading makes the same of it. */
const certainAlone = 0.97;
const certainBeside = 0.9;
/** Three are shown. */
const mostWays = 3;
/** A thing that the act cannot be done to now makes it so much less likely: what happened is recorded, but seldom happens. */
const strange = 0.05;

export const likeliestActs: Understands = (line, context, strictly) => likeliest(certainAlone)(line, context, strictly);

/** As another reading has found it already. */
export const likeliestBeside: Understands = (line, context, strictly) =>
  likeliest(certainBeside)(line, context, strictly);

const likeliest =
  (certain: number): Understands =>
  (line, context, strictly) => {
    const strict = strictly(line);
    if (line.endsWith('?') || strict.kind !== 'unread' || !mayBeOtherwise(strict.read)) return undefined;
    const pieces = piecesOf(line, context);
    if (pieces === undefined || pieces.length > mostPieces) return undefined;
    const all = claimed(pieces, context.hearing.said);
    if (strict.read.failed.failed === 'incomplete' && isTerse(pieces)) return undefined;
    if (holdsLost(pieces, all.claims, context.hearing)) return undefined;
    const made = likeliestIn({ pieces, claims: all.claims }, undefined, context);
    const [first] = made;
    if (first === undefined) return undefined;
    return (isCertain(first, pieces, all) && first.share >= certain ? taken(first) : undefined) ?? asOffered(made);
  };

/** `weigh 1 1201g`: no word but its verb, so that it is a strict line which lacks something, and what it lacks is asked. */
const isTerse = (pieces: readonly Piece[]): boolean => pieces.filter(({ is }) => is === 'word').length < 2;

function taken({ one }: Made): Understood | undefined {
  const [line, ...others] = one.ways[0] ?? [];
  if (line === undefined) return undefined;
  return others.length === 0 ? { is: 'sure', line } : { is: 'several', lines: [line, ...others] };
}

const asOffered = (made: readonly Made[]): Understood => {
  const lines = made.flatMap(({ one }) => one.ways.map((way) => way.join(actsJoint)));
  return { is: 'likely', lines: [...new Set(lines)].slice(0, mostWays) };
};

/** What a clause tells clearly by its words alone: the one act that it is then about. */
export function clearlyTold(pieces: readonly Piece[], context: LineContext): SaidAct | undefined {
  const [first] = context.hearing.weighed.weigh(typedIn(pieces));
  if (first === undefined || !isSaidAct(first.meaning) || first.share < leastClear) return undefined;
  return isTold(first.meaning, pieces, context) ? first.meaning : undefined;
}

/** Of what takes a reason, any words might be one. */
const leastOf = (act: SaidAct): number =>
  actRows[act].isDecision === true || actRows[act].takes?.includes('reason') === true ? leastClear : leastWeighed;

/** How likely the words of a clause tell this act. */
export const shareOfAct = (pieces: readonly Piece[], act: SaidAct, { hearing }: LineContext): number =>
  hearing.weighed.shareOf(typedIn(pieces), act);

/** More likely than all else together. */
const leastClear = 0.5;

const typedIn = (pieces: readonly Piece[]): string => pieces.map(({ typed }) => typed).join(' ');

export interface Made {
  readonly act: SaidAct;
  readonly one: Composed;
  /** It can be done to what it names now. */
  readonly isFit: boolean;
  /** With how things stand. */
  readonly share: number;
}

/** Each act that a line, or a clause of one, may tell, the likeliest first. */
export function likeliestIn(said: Said, before: Before | undefined, context: LineContext): readonly Made[] {
  const typed = typedIn(said.pieces);
  const { weigh, shareOf: shareIn } = context.hearing.weighed;
  const weighed = ofWhatIsNamed(weigh(typed), said.pieces);
  const otherwise = toldOtherwise(weighed);
  if (shareIn(typed, 'nothing', 'asking') > mostIdle) return [];
  // `had 90 on number 8`: a question may begin so, and nothing else in it asks.
  const mayAsk = asksFirst(said.pieces, said.claims, context.hearing.said);
  const isFirst = said.claims[0]?.is !== 'filler';
  if (mayAsk && (!isFirst || shareIn(typed, 'asking') > hardlyAsks || asksOfSomebody(said.pieces, context))) return [];
  // `they say Omar stopped 2 before lunch`: what it denies or doubts it is about, and nothing else.
  const [top] = weighed;
  if (top !== undefined && isSaidAct(top.meaning) && top.share >= leastClear) {
    if (saysNot(toldBy(top.meaning, said.pieces, said.claims, context))) return [];
  }
  const likely = weighed.flatMap(({ meaning, share }) =>
    !isSaidAct(meaning) || share < leastOf(meaning) || otherwise.has(meaning)
      ? []
      : [{ act: meaning, share, made: actFrom(meaning, share, said, before, context) }],
  );
  const made = likely.flatMap(({ made: one }) => (one === undefined ? [] : mayAsk ? untaken(one) : one));
  // What it cannot tell now leaves more for the others; what is done to another kind of thing it may tell all the same.
  const cannotBe = likely.filter((each) =>
    each.made === undefined ? !isOfOther(each.act, said.pieces) : !each.made.isFit,
  );
  const lost = cannotBe.reduce((sum, { share }) => sum + share * (1 - strange), 0);
  const shared = made
    .map((each) => ({ ...each, share: (each.isFit ? each.share : each.share * strange) / (1 - lost) }))
    .toSorted((one, other) => other.share - one.share);
  const impossible = new Set<SaidMeaning>(cannotBe.map(({ act }) => act));
  const most = weighed.find(({ meaning }) => !impossible.has(meaning))?.share ?? 0;
  const least = Math.max(leastShare, (leastBeside * most) / (1 - lost));
  const raw = new Map(weighed.map(({ meaning, share }) => [meaning, share]));
  return shared.filter(({ act, share }) => share >= least && (raw.get(act) ?? 0) >= leastOffered);
}

/** `did Omar stir it`, `have you filtered it`. */
function asksOfSomebody(pieces: readonly Piece[], { hearing: { said } }: LineContext): boolean {
  const [, next] = pieces;
  const word = wordOf(next) ?? '';
  return next?.is === 'person' || said.tellers.has(word) || said.somebody.has(word);
}

const untaken = (made: Made): Made => ({ ...made, one: { ...made.one, isSure: false } });

/** `can 2 is empty`: only pots are emptied here. */
function isOfOther(act: SaidAct, pieces: readonly Piece[]): boolean {
  const things = new Set(pieces.flatMap(({ is }) => (is === 'one-of' ? ['parts'] : [is])));
  const named = ['parts', 'batch', 'can'].filter((is) => things.has(is));
  return named.length > 0 && !named.includes(actRows[act].on);
}

/** What leaves no doubt of one clause, where another reading makes the same of it: no word of it is new. */
export function certainIn(
  made: readonly Made[],
  { pieces, claims }: Said,
  { hearing: { weighed } }: LineContext,
): Composed | undefined {
  const [first] = made;
  const isClear = first !== undefined && first.share >= certainBeside && isCertain(first, pieces, { claims });
  const isKnown = pieces.every((piece, i) => {
    const [root] = claims[i] === undefined ? rootsOf(wordOf(piece) ?? '') : ['claimed'];
    return root !== undefined && (claims[i] !== undefined || weighed.knows(root));
  });
  return isClear && isKnown && first.one.ways.length === 1 ? first.one : undefined;
}

type Said = Pick<Clause, 'pieces' | 'claims'>;

function actFrom(
  act: SaidAct,
  share: number,
  { pieces, claims }: Said,
  before: Before | undefined,
  context: LineContext,
): Made | undefined {
  if (!isTold(act, pieces, context)) return undefined;
  if (saysNot(toldBy(act, pieces, claims, context))) return undefined;
  const one = composed(act, clauseFor(act, pieces, claims, context), before, context);
  const least = actRows[act].on === 'can' ? leastOfOnlyCan : leastUnnamed;
  if (one === undefined || (one.isUnnamed && share < least)) return undefined;
  return { act, one, isFit: fits(act, one, context.live?.()) || isOfBefore(one, before), share };
}

/** `7 is dry and I have put it in the oven`: what was told just before makes it so. */
function isOfBefore({ parts, batch }: Composed, before: Before | undefined): boolean {
  if (before === undefined) return false;
  const isOfParts = parts.length > 0 && parts.every((part) => before.parts.includes(part));
  return isOfParts || (batch !== undefined && batch === before.batch);
}

/** A decision, what somebody's life may hang on, what is told in the speaker's own words, and the two that are easily taken for each other. */
const neverTaken: ReadonlySet<SaidAct> = new Set([
  ...(['rework', 'scrap', 'return customer', 'return supplier', 'concession'] as const),
  ...(['release', 'shipped', 'hold', 'supplied yes', 'supplied no', 'ack', 'close', 'thick', 'gel'] as const),
]);

/** Each word is met with in such lines, and none denies, doubts, plans or asks; all that it names and reads is told, of what can be so now. */
const isCertain = ({ act, one, isFit }: Made, pieces: readonly Piece[], { claims }: Pick<Claimed, 'claims'>): boolean =>
  isFit &&
  // Out of which pot nobody guesses, though only one is in use.
  (act !== 'coat' || pieces.some(({ is }) => is === 'batch')) &&
  one.isSure &&
  !neverTaken.has(act) &&
  !tellsMore(act, pieces, claims) &&
  !claims.some((claim) => claim !== undefined && unsaid.has(claim.is));

/** `..., and I have started the stirrer`: what is told behind a mark is an act of its own. */
function tellsMore(act: SaidAct, pieces: readonly Piece[], claims: Claimed['claims']): boolean {
  const from = pieces.findIndex(({ isBreak }) => isBreak) + 1;
  const others = claims.flatMap((claim, i) => (i >= from && claim?.is === 'act' ? [claim.act] : []));
  const isOwn = (other: SaidAct): boolean => other === act || strongerThan[act]?.includes(other) === true;
  return from > 0 && others.filter((other) => !isOwn(other)).length >= fewestSigns;
}

/** One word alone may be of anything. */
const fewestSigns = 2;

function isTold(act: SaidAct, pieces: readonly Piece[], { hearing }: LineContext): boolean {
  const { weighed } = hearing;
  const words = new Set(pieces.flatMap((piece) => rootsOf(wordOf(piece) ?? '')));
  if (!isWayTold(act, pieces, hearing)) return false;
  const speaks = [...words].filter((word) => weighed.speaksFor(word, act) > 0);
  const numbers = pieces.filter(({ is }) => is === 'number');
  // Of two numbers one at least was read.
  const figures = [...pieces.filter(({ is }) => is === 'figure'), ...numbers.slice(1)];
  return speaks.length + figures.length >= fewestSigns;
}

/** As much as this a word must speak for a way by which a surface was prepared. */
const leastOfWay = 1;

/** `preparadas las 3`: that they were prepared says nothing of how. A grade is one of blasting. */
function isWayTold(act: SaidAct, pieces: readonly Piece[], hearing: LineContext['hearing']): boolean {
  if (!act.startsWith('prep ') || pieces.some(({ is }) => is === 'grade' || is === 'solvent')) return true;
  return pieces.some((piece) => {
    const word = wordOf(piece) ?? '';
    if (verbNamed(word, hearing)?.row.name === 'prep') return false;
    return rootsOf(word).some((root) => hearing.weighed.speaksFor(root, act) >= leastOfWay);
  });
}

/** How much a line speaks for what it was read as; of several acts in one for all together. What no saying is known of is as sure as can be. */
export function shareOf(line: string, weighed: readonly Weighed<SaidMeaning>[]): number {
  const acts = linesApart(line).map((one) => weighed.find(({ meaning }) => meaning === actOfLine(one))?.share ?? 1);
  return acts.reduce((sum, share) => sum + share, 0) / acts.length;
}

/** `cure impeller-7 oven 90C` is `cure oven`. */
export function actOfLine(line: string): string {
  const [verb = '', ...words] = line.split(' ');
  const way = words.find((word) => isSaidAct(`${verb} ${word}`));
  return way === undefined ? verb : `${verb} ${way}`;
}
