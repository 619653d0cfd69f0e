// What keeps a line from being an act, whatever else it holds: it denies, doubts, plans or asks.

import type { Claimed } from './phrases.ts';
import { type Piece, wordOf } from './piece.ts';
import type { SaidTable } from './said-table.ts';

export const unsaid: ReadonlySet<string> = new Set(['denial', 'hedge', 'plan', 'ask']);

export function isUnsaid(pieces: readonly Piece[], { claims }: Pick<Claimed, 'claims'>, table: SaidTable): boolean {
  return saysNot(claims) || asksFirst(pieces, claims, table);
}

export const saysNot = (claims: Claimed['claims']): boolean =>
  claims.some((claim) => claim !== undefined && unsaid.has(claim.is));

/** `is it dry`, after a greeting too. */
export function asksFirst(
  pieces: readonly Piece[],
  claims: Claimed['claims'],
  { asksFirst: asks, tellers, tellsFirst, byWhat }: SaidTable,
): boolean {
  const words = pieces.map((piece) => wordOf(piece) ?? '');
  let at = 0;
  while (claims[at]?.is === 'filler') at += 1;
  if (tellers.has(words[at - 1] ?? '')) return false;
  if (tellsFirst.has(words[at] ?? '') && byWhat.has(words[behindThings(pieces, at + 1)] ?? '')) return false;
  return asks.some((phrase) => phrase.every((word, i) => words[at + i] === word)) && claims[at]?.is !== 'act';
}

function behindThings(pieces: readonly Piece[], from: number): number {
  let at = from;
  while (pieces[at]?.is === 'parts' || pieces[at]?.is === 'number') at += 1;
  return at === from ? pieces.length : at;
}
