// What stands in a line as a figure, a unit or a name, and nobody could read: nothing is made of a line without it.

import type { Hearing } from '../hearing.ts';
import type { Claim } from './phrases.ts';
import type { Piece } from './piece.ts';

/** `24-26C`; `60uwn`, a unit that slipped; `g`, whose figure was left out; `a-9`, that nobody has told of. */
export const holdsLost = (
  pieces: readonly Piece[],
  claims: readonly (Claim | undefined)[],
  { units }: Hearing,
): boolean =>
  pieces.some(
    ({ typed }, i) => claims[i] === undefined && (/\d/.test(typed) || (typed.length < 3 && units.has(typed))),
  );
