// What speaks against an act with a part's surface, film, cure or load, in figures.

import type { Disposition, DispositionTelling } from '../disposition.ts';
import type { TestAsked, TestRead } from '../film-tests.ts';
import type { AdhesionRating } from '../grades.ts';
import type { PartName, PersonName } from '../ids.ts';
import type { Celsius, EpochMs, Micrometres } from '../units.ts';
import type { FilmFinding } from './film-acceptance.ts';
import type { SetJudged } from './film-set-judge.ts';
import type { HoldTold } from './hold-told.ts';
import type { ReleaseLacking } from './release-asked.ts';
import type { SurfaceAsked, SurfaceBreach } from './surface-limits.ts';

export type FilmObjection =
  /** Another pass of the same coat, over film that has begun to dry. `undefined`: the sheet gives no open time. */
  | { readonly code: 'film-drying'; readonly openUntil: EpochMs | undefined; readonly saidDry: boolean }
  | { readonly code: 'dip-once'; readonly coatedAt: EpochMs }
  | { readonly code: 'surface-life-over'; readonly preparedAt: EpochMs; readonly endedAt: EpochMs }
  | { readonly code: 'surface-outside'; readonly breaches: readonly SurfaceBreach[] }
  /** Asked for by these, and this crew says how its surfaces are prepared. */
  | { readonly code: 'not-prepared'; readonly asked: readonly SurfaceAsked[] };

export type CureObjection =
  | { readonly code: 'hotter-than-part-bears'; readonly ovenCelsius: Celsius; readonly highestCelsius: Celsius }
  | { readonly code: 'no-such-cure'; readonly way: 'oven' | 'room' }
  | {
      readonly code: 'oven-outside-sheet';
      readonly setCelsius: Celsius;
      readonly lowest: Celsius;
      readonly highest: Celsius;
    }
  | { readonly code: 'already-curing'; readonly since: EpochMs }
  | { readonly code: 'not-curing' }
  | { readonly code: 'still-in-oven'; readonly since: EpochMs }
  /** `measured`: whether readings on the part stand behind when it is due, or only metal and wall, or the clock. */
  | {
      readonly code: 'cure-not-given';
      readonly progress: number;
      readonly dueAt: EpochMs | undefined;
      readonly measured: boolean;
    };

/** Asked for by the job that the part came in under. */
export type ReleaseObjection =
  | { readonly code: 'not-given'; readonly job: string; readonly lacking: readonly ReleaseLacking[] }
  /** Told spot by spot, and not to its end. */
  | { readonly code: 'film-half'; readonly told: number; readonly needed: number }
  | { readonly code: 'second-eyes'; readonly job: string; readonly coatedBy: readonly PersonName[] };

export type HoldObjection =
  /** Said of a hold, where none stands. */
  | { readonly code: 'not-on-hold' }
  /** Scrapped or given back. */
  | {
      readonly code: 'disposed';
      readonly is: 'scrapped' | 'returned';
      readonly at: EpochMs;
      readonly by: PersonName;
    }
  /** What becomes of a part, and what of that was not told. `hold`: as it stands. */
  | {
      readonly code: 'not-told';
      readonly as: Disposition;
      readonly lacking: readonly DispositionTelling[];
      readonly hold: HoldTold | undefined;
    };

/** Said of no act beforehand: that it has left is recorded, and holds what was not released. */
export type LeftObjection =
  /** Whatever was read of it. */
  { readonly code: 'not-released' };

/** Said of no act beforehand: a reading is recorded, and then is a deviation that holds its part. */
export type ReadingObjection =
  | { readonly code: 'film-outside'; readonly finding: Extract<FilmFinding, { is: 'outside' }> }
  /** `least`: by the job; else by common practice. */
  | { readonly code: 'adhesion-failed'; readonly rating: AdhesionRating; readonly least?: AdhesionRating }
  | { readonly code: 'rubbed-through'; readonly doubleRubs: number }
  /** `asked`: by the job; of holidays one that is found fails whatever is asked. */
  | { readonly code: 'test-failed'; readonly read: TestRead; readonly asked: TestAsked | undefined }
  /** By the lower of what is written on the part and what the sheet allows in an oven. */
  | { readonly code: 'overheated'; readonly celsius: Celsius; readonly highestCelsius: Celsius };

export type FilmUnclear =
  /** Which readings: of the next spot, where its rule asks for spots. `anew`: another set was asked for. */
  | {
      readonly code: 'film-asked';
      readonly part: PartName;
      readonly set: SetJudged | undefined;
      readonly anew: true | undefined;
    }
  /** Of a spot that is whole. */
  | {
      readonly code: 'spot-told';
      readonly part: PartName;
      readonly spot: number;
      readonly readings: readonly Micrometres[];
      readonly again: readonly Micrometres[];
    };

export type LoadUnclear =
  /** Much colder than just before, though it is still in the oven by the record. */
  | {
      readonly code: 'far-reading';
      readonly from: 'before';
      readonly part: PartName;
      readonly celsius: Celsius;
      readonly before: { readonly at: EpochMs; readonly celsius: Celsius };
    }
  /** No load in the oven, or several, and nobody named a part. */
  | { readonly code: 'which-load'; readonly loads: readonly (readonly PartName[])[] };
