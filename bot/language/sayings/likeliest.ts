// A line that no phrase accounts for, by what its words speak for: the acts that it most likely tells, each with the things and
// figures that it names, as taps. It is never taken without one.

import { actsJoint, linesApart } from '../lines-apart.ts';
import type { LiveNow } from '../live-now.ts';
import type { LineContext } from '../reading.ts';
import { actRows } from '../slots-heard/act-rows.ts';
import type { Clause } from '../slots-heard/clause.ts';
import { type Composed, composed } from '../slots-heard/compose.ts';
import { mayBeOtherwise } from '../slots-heard/may-be-otherwise.ts';
import { type Claim, claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import type { Before } from '../slots-heard/things.ts';
import { isUnsaid } from '../slots-heard/unsaid.ts';
import { isSaidAct, type SaidAct } from '../tongues/said-words.ts';
import type { SaidMeaning } from '../tongues/sayings-typed.ts';
import type { Understands } from '../understood.ts';
import { pairOf, rootsOf } from './signs.ts';
import type { Weighed } from './weigher.ts';

/** A sentence of more is no line about an act. */
const mostPieces = 40;
/** What is less likely is not worth a tap. */
const leastShare = 0.08;
/** So much less likely than what it most likely tells, and it is not told: least of all where that cannot be done to what it names. */
const leastBeside = 0.4;
/** Of a line that names nothing: as soon is it about something else. */
const leastUnnamed = 0.9;
/** As likely as this to tell nothing, or to ask, it is left alone. */
const mostIdle = 0.25;
/** Three are shown. */
const mostWays = 3;
/** A thing that the act cannot be done to now makes it so much less likely: what happened is recorded, but seldom happens. */
const strange = 0.15;

export const likeliestActs: Understands = (line, context, strictly) => {
  const strict = strictly(line);
  if (line.endsWith('?') || strict.kind !== 'unread' || !mayBeOtherwise(strict.read)) return undefined;
  const pieces = piecesOf(line, context);
  if (pieces === undefined || pieces.length > mostPieces) return undefined;
  const all = claimed(pieces, context.hearing.said);
  const likely = likeliestIn({ pieces, claims: all.claims }, undefined, context).flatMap(({ one }) => one.ways);
  const lines = [...new Set(likely.map((way) => way.join(actsJoint)))].slice(0, mostWays);
  return lines.length === 0 ? undefined : { is: 'likely', lines };
};

/** What a clause tells clearly by its words alone: the one act that it is then about. */
export function clearlyTold(pieces: readonly Piece[], context: LineContext): SaidAct | undefined {
  const [first] = context.hearing.weighed.weigh(typedIn(pieces));
  if (first === undefined || !isSaidAct(first.meaning) || first.share < leastClear) return undefined;
  return isTold(first.meaning, pieces, context) ? first.meaning : undefined;
}

/** More likely than all else together. */
const leastClear = 0.5;

const typedIn = (pieces: readonly Piece[]): string => pieces.map(({ typed }) => typed).join(' ');

const idleIn = (weighed: readonly Weighed<SaidMeaning>[]): number =>
  weighed.reduce((sum, { meaning, share }) => (meaning === 'nothing' || meaning === 'asking' ? sum + share : sum), 0);

export interface Likeliest {
  readonly one: Composed;
  readonly share: number;
}

/** Each act that a line, or a clause of one, may tell, the likeliest first. */
export function likeliestIn(
  { pieces, claims }: Pick<Clause, 'pieces' | 'claims'>,
  before: Before | undefined,
  context: LineContext,
): readonly Likeliest[] {
  const { said, weighed: weigher } = context.hearing;
  const weighed = weigher.weigh(typedIn(pieces));
  if (idleIn(weighed) > mostIdle) return [];
  const least = Math.max(leastShare, leastBeside * (weighed[0]?.share ?? 0));
  return weighed
    .flatMap(({ meaning, share }) => {
      if (share < least || !isSaidAct(meaning) || !isTold(meaning, pieces, context)) return [];
      if (isUnsaid(pieces, { claims: toldBy(meaning, pieces, claims, context) }, said)) return [];
      const one = composed(meaning, clauseFor(meaning, pieces, claims, context), before, context);
      if (one === undefined || (one.isUnnamed && share < leastUnnamed)) return [];
      return [{ one, share: fits(meaning, one, context) ? share : share * strange }];
    })
    .filter(({ share }) => share > leastShare)
    .toSorted((one, other) => other.share - one.share);
}

/** One word alone may be of anything. */
const fewestSigns = 2;

function isTold(act: SaidAct, pieces: readonly Piece[], { hearing: { weighed } }: LineContext): boolean {
  const words = new Set(pieces.flatMap((piece) => rootsOf(wordOf(piece) ?? '')));
  const speaks = [...words].filter((word) => weighed.speaksFor(word, act) > 0);
  const figures = pieces.filter(({ is }) => is === 'figure');
  return speaks.length + figures.length >= fewestSigns;
}

/** `doesn't stick` is how an act is told: what denies, doubts or plans in it is its own, where sayings have the two words together. */
function toldBy(act: SaidAct, pieces: readonly Piece[], claims: Claims, { hearing: { weighed } }: LineContext): Claims {
  const telling = claims.flatMap((claim, i) => (claim?.is === 'light' || claim?.is === 'pronoun' ? [] : [i]));
  const rootAt = (i: number | undefined): string => {
    const piece = i === undefined ? undefined : pieces[i];
    return rootsOf(wordOf(piece) ?? piece?.typed ?? '')[0] ?? '';
  };
  return claims.map((claim, i) => {
    if (!(claim?.is === 'denial' || claim?.is === 'hedge' ? denied : claim?.is === 'plan' ? planned : none).has(act))
      return claim;
    const at = telling.indexOf(i);
    const pair = pairOf(rootAt(i), rootAt(telling[at + 1]));
    return weighed.speaksFor(pair, act) > clearly ? { is: 'act', act } : claim;
  });
}

/** What is told by what is no longer so, and what is ordered as it is planned. */
const denied: ReadonlySet<SaidAct> = new Set([
  'dry',
  'empty',
  'thick',
  'gel',
  'stop',
  'prep grease-off',
  'fan off',
  'supplied no',
]);
const planned: ReadonlySet<SaidAct> = new Set(['mix']);
const none: ReadonlySet<SaidAct> = new Set();
/** So much speaks for it that hardly another meaning has it. */
const clearly = 1;

type Claims = readonly (Claim | undefined)[];

/** Words that speak for the act are its own; what else nobody knows is left to it, as its reason or as talk. */
function clauseFor(
  act: SaidAct,
  pieces: readonly Piece[],
  claims: Claims,
  { hearing: { weighed } }: LineContext,
): Clause {
  const speaks = (piece: Piece): boolean => {
    const [root] = rootsOf(wordOf(piece) ?? '');
    return root !== undefined && weighed.speaksFor(root, act) > clearly;
  };
  return {
    acts: [act],
    pieces,
    claims: claims.map((claim, i) => {
      const piece = pieces[i];
      return piece !== undefined && (claim === undefined || claim.is === 'act') && speaks(piece)
        ? { is: 'act', act }
        : claim?.is === 'act' && claim.act !== act
          ? undefined
          : claim;
    }),
    isWeighed: true,
  };
}

/** Whether it can be done to these now. */
function fits(act: SaidAct, { parts, batch }: Composed, { live }: LineContext): boolean {
  const now: LiveNow | undefined = live?.();
  const { parts: phases, batches } = actRows[act];
  if (now === undefined) return true;
  const isPart = parts.every(
    (name) => phases?.some((phase) => now.parts.some((part) => part.name === name && part.phase === phase)) !== false,
  );
  const pot =
    batch === undefined || actRows[act].on !== 'batch' ? undefined : now.batches.find(({ number }) => number === batch);
  return isPart && (pot === undefined || batches?.includes(pot.phase) !== false);
}

/** How much a line speaks for what it was read as; of several acts in one for all together. What no saying is known of is as sure as can be. */
export function shareOf(line: string, weighed: readonly Weighed<SaidMeaning>[]): number {
  const acts = linesApart(line).map((one) => weighed.find(({ meaning }) => meaning === actIn(one))?.share ?? 1);
  return acts.reduce((sum, share) => sum + share, 0) / acts.length;
}

/** `cure impeller-7 oven 90C` is `cure oven`. */
function actIn(line: string): string {
  const [verb = '', ...words] = line.split(' ');
  const way = words.find((word) => isSaidAct(`${verb} ${word}`));
  return way === undefined ? verb : `${verb} ${way}`;
}
