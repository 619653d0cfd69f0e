// One piece of a line that is read by its slots: a thing that is known here, a figure, or a word.

import type { SurfaceGrade } from '../../../core/grades.ts';
import type { BatchNumber, CanNumber, PartName, PersonName, PlaceName } from '../../../core/ids.ts';
import type { Method } from '../../../core/methods.ts';
import type { EpochMs } from '../../../core/units.ts';
import type { Quantity } from '../typed/units-typed.ts';

/** A speed has units that are no words of their own; `rating`: how a film sticks, `5B`. */
export type FigureOf = Quantity['is'] | 'speed' | 'rating';

export type Slot =
  /** `isSlip`: spelt a letter or two off, or by a number that may be of something else;
   *  `isOfFamily`: one of its numbers is of another family, too. */
  | { readonly is: 'parts'; readonly names: readonly PartName[]; readonly isSlip?: true; readonly isOfFamily?: true }
  /** Named by a word that several have; `isSome`: all of them are meant to which it can be done. */
  | { readonly is: 'one-of'; readonly names: readonly PartName[]; readonly isSome?: true }
  /** All of them but these, each by what it may be: `all but 3`. */
  | { readonly is: 'but'; readonly names: readonly (readonly PartName[])[] }
  | { readonly is: 'batch'; readonly number: BatchNumber }
  | { readonly is: 'can'; readonly number: CanNumber }
  | { readonly is: 'person'; readonly name: PersonName }
  | { readonly is: 'time'; readonly at: EpochMs }
  | { readonly is: 'figure'; readonly of: FigureOf; readonly text: string; readonly value: number }
  | { readonly is: 'number'; readonly value: number; readonly text: string; readonly isDegrees: boolean }
  | { readonly is: 'letter'; readonly letter: 'a' | 'b' }
  /** Of a surface: `sa 2.5`. */
  | { readonly is: 'grade'; readonly grade: SurfaceGrade }
  /** These may be words of a phrase, too: `started spraying`, `in the booth`. */
  | { readonly is: 'method'; readonly method: Method; readonly word: string }
  | { readonly is: 'place'; readonly place: PlaceName; readonly word: string }
  | { readonly is: 'solvent'; readonly word: string }
  | { readonly is: 'gas'; readonly word: string }
  | { readonly is: 'word'; readonly word: string };

export type Piece = Slot & {
  /** As typed, and where it ends in the line. */
  readonly typed: string;
  /** A comma or the like stands behind it. */
  readonly isBreak: boolean;
};

/** The word of a number that only counts what was put on. */
export const oneOfThem = '1';

export const wordOf = (piece: Piece | undefined): string | undefined =>
  piece !== undefined && 'word' in piece ? piece.word : undefined;
