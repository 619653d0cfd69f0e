// A line in clauses, one act each: `bracket-8 is dry` and `in the oven at 90`. What belongs to no act of its own stays with its
// neighbour.

import type { SaidAct } from '../tongues/said-words.ts';
import { strongerThan } from './act-rows.ts';
import type { Claim, Claimed } from './phrases.ts';
import { type Piece, wordOf } from './piece.ts';
import type { SaidTable } from './said-table.ts';

export interface Clause {
  /** One, where the clause can be made out; none, where only its things say what was done. */
  readonly acts: readonly SaidAct[];
  readonly pieces: readonly Piece[];
  readonly claims: readonly (Claim | undefined)[];
}

export function clausesOf(pieces: readonly Piece[], { claims, phrases }: Claimed, table: SaidTable): readonly Clause[] {
  const inPhrase = (at: number): boolean =>
    phrases.some(({ from, to, says }) => says.is === 'act' && from < at && at < to);
  const clauses: Clause[] = [];
  let from = 0;
  for (let at = 1; at <= pieces.length; at++) {
    const isJoint = table.joints.has(wordOf(pieces[at]) ?? '') || pieces[at - 1]?.isBreak === true;
    if (at < pieces.length && (!isJoint || inPhrase(at))) continue;
    const clause = clauseOf(pieces.slice(from, at), claims.slice(from, at));
    const last = clauses.at(-1);
    if (last !== undefined && (clause.acts.length === 0 || last.acts.length === 0 || isSameAct(last, clause))) {
      clauses[clauses.length - 1] = clauseOf([...last.pieces, ...clause.pieces], [...last.claims, ...clause.claims]);
    } else clauses.push(clause);
    from = at;
  }
  return clauses;
}

/**
 * `done with batch 1, tossing the last 200 grams`, `gas over can 3 and lid back on`: one act in two words, unless each names its own
 * things.
 */
function isSameAct(one: Clause, other: Clause): boolean {
  const [act, ...more] = one.acts;
  const names = ({ pieces }: Clause): boolean =>
    pieces.some(({ is }) => is === 'parts' || is === 'one-of' || is === 'batch' || is === 'can');
  const [next, ...others] = other.acts;
  if (act === undefined || next === undefined || more.length > 0 || others.length > 0) return false;
  const isOne = act === next || (act === 'blanket' && strongerThan[act]?.includes(next) === true);
  return isOne && !(names(one) && names(other));
}

function clauseOf(pieces: readonly Piece[], claims: Clause['claims']): Clause {
  const isOfCan = pieces.some(({ is }) => is === 'can') && !pieces.some(({ is }) => is === 'batch');
  const named = claims.flatMap((claim) => (claim?.is === 'act' ? [claim.act] : []));
  const said = new Set(named.map((act) => (isOfCan ? (ofCans[act] ?? act) : act)));
  const figures = pieces.flatMap((piece) => (piece.is === 'figure' ? [piece.of] : []));
  // `24C and 46 % in here`: what has no act of its own word may be told by its figures.
  const isAir = said.size === 0 ? figures.includes('temperature') : said.size === 1 && said.has('temp');
  if (isAir && figures.includes('percent')) said.add('air');
  const weaker = new Set([...said].flatMap((act) => strongerThan[act] ?? []));
  return { acts: [...said].filter((act) => !weaker.has(act)), pieces, claims };
}

/** The same words are said of a pot and of a can: `destapé el bote 2`. */
const ofCans: Readonly<Partial<Record<SaidAct, SaidAct>>> = { uncover: 'lid', cover: 'shut', stir: 'prestir' };
