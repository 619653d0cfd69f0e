// A line as the one clause of an act that it may tell: which of its words are that act's own, and which are only talk.

import type { LineContext } from '../reading.ts';
import { actRows } from '../slots-heard/act-rows.ts';
import type { Clause } from '../slots-heard/clause.ts';
import type { Claim } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { nearestVerbs } from '../suggestions.ts';
import type { SaidAct } from '../tongues/said-words.ts';
import type { SaidMeaning } from '../tongues/sayings-typed.ts';
import { pairOf, rootsOf } from './signs.ts';
import { clearly, type Weigher } from './weigher.ts';

/** `doesn't stick` is how an act is told: what denies, doubts or plans in it is its own, where sayings have the two words together. */
export function toldBy(
  act: SaidAct,
  pieces: readonly Piece[],
  claims: Claims,
  { hearing: { weighed } }: LineContext,
): Claims {
  const telling = claims.flatMap((claim, i) => (claim?.is === 'light' || claim?.is === 'pronoun' ? [] : [i]));
  const rootAt = (i: number | undefined): string => {
    const piece = i === undefined ? undefined : pieces[i];
    return rootsOf(wordOf(piece) ?? piece?.typed ?? '')[0] ?? '';
  };
  return claims.map((claim, i) => {
    // `keep 9 back`: of a decision it is the word.
    if (claim?.is === 'hedge' && decided.has(act) && weighed.isWordOf(wordOf(pieces[i]) ?? '', act))
      return { is: 'act', act };
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
  'cure room',
]);
const planned: ReadonlySet<SaidAct> = new Set(['mix']);
const decided: ReadonlySet<SaidAct> = new Set(['hold']);
const none: ReadonlySet<SaidAct> = new Set();

export type Claims = readonly (Claim | undefined)[];

/** Words that speak for the act are its own; what else nobody knows is left to it, as its reason or as talk. */
export function clauseFor(act: SaidAct, pieces: readonly Piece[], claims: Claims, { hearing }: LineContext): Clause {
  const { weighed } = hearing;
  const speaks = (piece: Piece): boolean => weighed.isWordOf(wordOf(piece) ?? '', act);
  const unheard = pieces.findIndex((piece, i) => claims[i] === undefined && isUnheard(piece, weighed));
  /** In sayings of acts, and no more of what tells nothing than of others; one word alone may be of somebody's own. */
  const isTalk = (piece: Piece, i: number): boolean => {
    const [root] = rootsOf(wordOf(piece) ?? '');
    if (root === undefined) return false;
    // `acetone, then ipa`: beside a solvent it may be another; `airr`, in front, is a slip.
    const isSlip = i === 0 && nearestVerbs(piece.typed, hearing).length > 0;
    const mayBeOwn = actRows[act].takes?.includes('solvent') !== true && !isSlip;
    if (!weighed.knows(root)) return i === unheard && mayBeOwn;
    return !weighed.isWordOf(root, 'nothing') && !weighed.isWordOf(root, 'asking');
  };
  const hasReason = actRows[act].takes?.includes('reason') === true;
  return {
    acts: [act],
    pieces,
    claims: claims.map((claim, i) => {
      const piece = pieces[i];
      if (piece === undefined || (claim !== undefined && claim.is !== 'act')) return claim;
      // Its reason stays whole.
      if (speaks(piece) && (!hasReason || claim?.act === act)) return { is: 'act', act };
      return claim === undefined && !hasReason && isTalk(piece, i)
        ? { is: 'filler' }
        : claim?.is === 'act' && claim.act !== act
          ? undefined
          : claim;
    }),
    isWeighed: true,
  };
}

const isUnheard = (piece: Piece, { knows }: Weigher<SaidMeaning>): boolean =>
  rootsOf(wordOf(piece) ?? '').some((root) => !knows(root));
