// Whether a clause says its parts by one word for many, and how many they are.

import type { ListTable } from '../parts-said/list-table.ts';
import type { ManySaid } from '../parts-said/many-said.ts';
import type { Claim } from './phrases.ts';
import { type Piece, wordOf } from './piece.ts';

export interface ManyIn extends ManySaid {
  /** The number that says how many. */
  readonly piece?: Piece;
}

/** More than a rack holds is no count. */
const mostCounted = 60;

interface Told {
  readonly pieces: readonly Piece[];
  readonly claims: readonly (Claim | undefined)[];
}

export function manyIn({ pieces, claims }: Told, lists: ListTable): ManyIn | undefined {
  const counts = (piece: Piece | undefined): piece is Extract<Piece, { is: 'number' }> =>
    piece?.is === 'number' && !piece.isDegrees && /^\d{1,2}$/.test(piece.text) && piece.value <= mostCounted;
  for (const [at, claim] of claims.entries()) {
    if (claim?.is !== 'many') continue;
    const { many } = claim;
    if (many === 'both') return { many, count: 2 };
    const last = lastOf(claims, at);
    // `all of the 3`, `las otras 2`; `los 3 restantes`.
    const behind = claims[last + 1]?.is === 'light' || claims[last + 1]?.is === 'filler' ? last + 2 : last + 1;
    const counted = [pieces[last + 1], pieces[behind], pieces[at - 1]].find(counts);
    if (counted !== undefined && counted.value > 1) return { many, count: counted.value, piece: counted };
    // `the last one`: the one that is left.
    const next = pieces[last + 1];
    if (many === 'last' && (next === undefined || lists.ones.has(wordOf(next) ?? '')))
      return { many: 'rest', count: 1 };
    if (many !== 'other' && many !== 'first' && many !== 'last') return { many };
  }
  // `all 3 out of the oven`, where `all` is a word of the act as well
  const told = pieces.find(
    (piece, i) => counts(piece) && piece.value > 1 && lists.all.has(wordOf(pieces[i - 1]) ?? ''),
  );
  if (counts(told)) return { many: 'all', count: told.value, piece: told };
  // `the 2 of them`
  const ofThem = pieces.find((piece, i) => counts(piece) && piece.value > 1 && isOfThem(pieces.slice(i + 1), lists));
  if (counts(ofThem)) return { many: 'all', count: ofThem.value, piece: ofThem };
  // `las 2`
  const at = pieces.findIndex((piece, i) => counts(piece) && lists.articlesOfMany.has(wordOf(pieces[i - 1]) ?? ''));
  const piece = pieces[at];
  return counts(piece) && piece.value > 1 ? { many: 'all', count: piece.value, piece } : undefined;
}

const isOfThem = (behind: readonly Piece[], { ofThem }: ListTable): boolean =>
  ofThem.some((phrase) => phrase.every((word, i) => wordOf(behind[i]) === word));

function lastOf(claims: Told['claims'], at: number): number {
  let last = at;
  while (claims[last + 1] === claims[at]) last += 1;
  return last;
}
