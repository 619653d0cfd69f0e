// What a country changes in a tongue: decimal sign (by its locale), clock, dates, names of units, paper. Thousands are
// never grouped anywhere, and weights and films are shown in whatever units each person has set.

import type { DateTime } from 'luxon';
import type { UnitSystem } from '../../../core/crew/unit-system.ts';

export interface Profile {
  /** As `Intl` knows it. */
  readonly locale: string;
  /** What the tongue of this country calls itself. */
  readonly name: string;
  readonly clock: (local: DateTime) => string;
  /** A day that is not today. */
  readonly day: (local: DateTime, today: DateTime) => string;
  /** A day by its date alone, in a title or as the end of what somebody may do. */
  readonly date: (local: DateTime, today: DateTime) => string;
  /** Between that day and its hour, where they stand after a colon. */
  readonly beforeClock: string;
  /** On paper, which outlives the day: always with its year. */
  readonly dated: (local: DateTime) => string;
  /** Which comes first in `02/03/2026`: the day, or nobody knows. */
  readonly dates: 'day-first' | 'either';
  /** A day as it can be typed, with its month in letters. */
  readonly dateTyped: (local: DateTime) => string;
  /** How things are told one after the other. */
  readonly list: Intl.ListFormatOptions;
  readonly mil: { readonly one: string; readonly many: string };
  readonly inch: string;
  /** On the time axis of a picture, in the letters of strftime. */
  readonly onAxis: { readonly clock: string; readonly day: string };
  readonly paper: 'A4' | 'LETTER';
}

/** The countries of a tongue; where the tongue alone is named, the units tell of the country. */
export interface Countries {
  readonly byUnits: Readonly<Record<UnitSystem, Profile>>;
  readonly all: readonly Profile[];
}
