// A thing that only says where another one is: in `7 is in the oven next to 8` nothing is told of 8.

import type { LineContext } from '../reading.ts';
import { type Piece, wordOf } from './piece.ts';

export function withoutNeighbours(pieces: readonly Piece[], { hearing: { said } }: LineContext): readonly Piece[] {
  const word = (at: number): string => wordOf(pieces[at]) ?? '';
  for (let at = 1; at < pieces.length; at++) {
    const beside = said.lists.beside.find((phrase) => phrase.every((each, i) => word(at + i) === each));
    if (beside === undefined || !pieces.slice(0, at).some(isThing)) continue;
    const to = at + beside.length + (said.articles.has(word(at + beside.length)) ? 1 : 0);
    const neighbour = pieces[to];
    if (neighbour === undefined || !isThing(neighbour)) continue;
    const before = pieces.slice(0, at);
    // What comes behind it is parted from what stands before as it was from the neighbour.
    const [last] = before.slice(-1);
    const kept = last === undefined ? before : [...before.slice(0, -1), { ...last, isBreak: neighbour.isBreak }];
    return [...kept, ...pieces.slice(to + 1)];
  }
  return pieces;
}

const isThing = ({ is }: Piece): boolean => is === 'parts' || is === 'one-of' || is === 'number';
