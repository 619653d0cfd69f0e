// Whether what was heard of a clause stands in the line that is made of it.

import type { Clause } from './clause.ts';
import { type Piece, wordOf } from './piece.ts';
import type { Heard } from './things.ts';

const isOnly = ({ is }: Piece, pieces: readonly Piece[]): boolean =>
  pieces.filter((each) => each.is === is).length === 1;

/** Nothing that was heard is left out of the line: what is passed over says nothing, or is the pot of something else. */
export function isAllTaken(
  { pieces, row, used }: Heard,
  claims: Clause['claims'],
  figures: ReadonlySet<Piece>,
): boolean {
  const { takes = [] } = row;
  return pieces.every((piece, i) => {
    switch (piece.is) {
      case 'figure':
      case 'number':
        return figures.has(piece) || used.has(piece) || takes.includes('reason');
      case 'parts':
      case 'one-of':
      case 'but':
        return row.on === 'parts';
      case 'batch':
        return row.on === 'batch' || takes.includes('batch');
      case 'can':
        return row.on === 'can';
      case 'method':
        return (
          takes.includes('method') ||
          takes.includes('reason') ||
          wordOf(piece) !== piece.method ||
          claims[i]?.is === 'act'
        );
      case 'solvent':
        // `acetone, then ipa`: one is told.
        return (takes.includes('solvent') && isOnly(piece, pieces)) || takes.includes('reason');
      case 'person':
        return takes.includes('person') || takes.includes('reason');
      case 'grade':
        return takes.includes('grade') || takes.includes('reason');
      case 'letter':
        return takes.includes('letters') || takes.includes('reason');
      case 'time':
      case 'gas':
      case 'place':
      case 'word':
        return true;
      default: {
        const never: never = piece;
        return never;
      }
    }
  });
}
