// `gas over A`: of the cans that there are those of the part that a line names by its letter.

import type { LiveNow } from '../live-now.ts';
import type { Piece } from './piece.ts';

/** All of them where no letter is named; at the head of a line it may be an article. */
export function cansLettered(pieces: readonly Piece[], cans: LiveNow['cans']): LiveNow['cans'] {
  const letters = pieces.slice(1).flatMap(({ typed }) => (typed === 'A' || typed === 'B' ? [typed] : []));
  return cans.filter(({ component }) => letters.length === 0 || component === undefined || letters.includes(component));
}
