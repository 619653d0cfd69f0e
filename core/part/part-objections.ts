// What speaks against an act with a part's surface, film or load, in figures.

import type { AdhesionRating } from '../grades.ts';
import type { PartName } from '../ids.ts';
import type { EpochMs } from '../units.ts';
import type { FilmFinding } from './film-acceptance.ts';

export type FilmObjection =
  /** Another pass of the same coat, over film that has begun to dry. `undefined`: the sheet gives no open time. */
  | { readonly code: 'film-drying'; readonly openUntil: EpochMs | undefined; readonly saidDry: boolean }
  | { readonly code: 'dip-once'; readonly coatedAt: EpochMs }
  | { readonly code: 'surface-life-over'; readonly preparedAt: EpochMs; readonly endedAt: EpochMs };

/** Said of no act beforehand: a reading is recorded, and then is a deviation that holds its part. */
export type ReadingObjection =
  | { readonly code: 'film-outside'; readonly finding: Extract<FilmFinding, { is: 'outside' }> }
  | { readonly code: 'adhesion-failed'; readonly rating: AdhesionRating }
  | { readonly code: 'rubbed-through'; readonly doubleRubs: number };

export type LoadUnclear =
  /** No load in the oven, or several, and nobody named a part. */
  { readonly code: 'which-load'; readonly loads: readonly (readonly PartName[])[] };
