// A mix that is ordered as people order things, in the form of a question too: `may I have two and a half kilos, please?`. It is
// only offered: whoever asks how much to mix gets an answer, and no pot.

import type { LineContext } from '../reading.ts';
import { composed } from '../slots-heard/compose.ts';
import { claimed } from '../slots-heard/phrases.ts';
import type { Piece } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import type { Understands } from '../understood.ts';
import { clauseFor, toldBy } from './clause-of-act.ts';

/** So clearly it is an order: hardly a question has such words. */
const leastShare = 0.9;

export const mixOrdered: Understands = (line, context) => {
  const [first] = context.hearing.weighed.weigh(line);
  if (first?.meaning !== 'mix' || first.share < leastShare) return undefined;
  const pieces = piecesOf(line.replace(/[?¿]+/g, ''), context);
  if (pieces === undefined || !namesAmount(pieces) || isUnsaidOtherwise(pieces, context)) return undefined;
  const { claims } = claimed(pieces, context.hearing.said);
  const made = composed('mix', clauseFor('mix', pieces, claims, context), undefined, context);
  const lines = made?.ways.flat() ?? [];
  return lines.length === 0 ? undefined : { is: 'likely', lines };
};

/** One amount, and nothing else that is there already. */
const namesAmount = (pieces: readonly Piece[]): boolean =>
  pieces.filter((piece) => piece.is === 'figure' && piece.of === 'mass').length === 1 &&
  pieces.every(({ is }) => is !== 'parts' && is !== 'one-of' && is !== 'batch' && is !== 'can');

/** It asks, as an order may; it does not deny, doubt or put off. */
function isUnsaidOtherwise(pieces: readonly Piece[], context: LineContext): boolean {
  const { claims } = claimed(pieces, context.hearing.said);
  return toldBy('mix', pieces, claims, context).some(
    // `may I have` doubts nothing.
    (claim, i) => claim?.is === 'denial' || (claim?.is === 'hedge' && i > 0) || claim?.is === 'plan',
  );
}
