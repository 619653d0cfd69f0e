// What a line denies or puts off beside what it tells: another act, so that what is told stands.

import type { LineContext } from './reading.ts';
import type { Claims } from './sayings/clause-of-act.ts';
import type { Weigher } from './sayings/weigher.ts';
import { claimed } from './slots-heard/phrases.ts';
import { wordOf } from './slots-heard/piece.ts';
import { piecesOf } from './slots-heard/pieces.ts';
import { isSaidAct } from './tongues/said-words.ts';
import type { SaidMeaning } from './tongues/sayings-typed.ts';

/** No more does what is denied speak for what another clause tells. */
const mostShared = 0.1;

/** By all its words together. */
const clearly = 0.7;

/** `told`: the verbs that other clauses tell. `isAhead`: they stand behind it. What doubts may be of what is told. */
export function isOfOther(clause: string, told: ReadonlySet<string>, isAhead: boolean, context: LineContext): boolean {
  const { weighed, done, said } = context.hearing;
  const pieces = piecesOf(clause, context) ?? [];
  const { claims } = claimed(pieces, said);
  const says = new Set(claims.map((claim) => claim?.is));
  const words = pieces.map((piece) => wordOf(piece) ?? '');
  const isYet = done.notYet.some((phrase) => phrase.every((word) => words.includes(word)));
  if (says.has('hedge') || (says.has('denial') && !isYet && !isAhead)) return false;
  const acts = weighed.weigh(clause).filter(({ meaning }) => isSaidAct(meaning));
  const [own] = acts;
  const isTold = ({ meaning }: { readonly meaning: string }): boolean => told.has(meaning.split(' ', 1)[0] ?? '');
  const ofTold = acts.filter(isTold).reduce((sum, { share }) => sum + share, 0);
  if (own === undefined || isTold(own) || ofTold >= mostShared) return false;
  return own.share >= clearly || speaksOf(own.meaning, words, claims, weighed);
}

/** By a word of its own. */
const speaksOf = (
  act: SaidMeaning,
  words: readonly string[],
  claims: Claims,
  { isWordOf }: Weigher<SaidMeaning>,
): boolean => claims.some((claim, i) => (claim?.is === 'act' && claim.act === act) || isWordOf(words[i] ?? '', act));
