// What the crew has settled for spraying: whether it briefs, who may, its booths, its air, its numbers for need.

import type { SubstanceId } from '../calc/exposure-limits.ts';
import type { SolventId } from '../calc/solvents.ts';
import type { CrewLaw } from '../crew/crew-law.ts';
import type { PersonName, PlaceName, SheetId } from '../ids.ts';
import type { Method } from '../methods.ts';
import type { Sheet } from '../products/sheet.ts';
import type { EpochMs, Fraction, Minutes, PartsPerMillion } from '../units.ts';
import type { BreathingCheck } from './breathing-check.ts';
import type { BoothSize, EmergencyField, Qualification } from './session-commands.ts';

export type EmergencyWords = Readonly<Partial<Record<EmergencyField, string>>>;

export interface SpraySettings {
  /** When the crew began or ceased to brief, and by whom, in order of time. */
  readonly briefing: readonly Briefing[];
  /** Empty: nobody has said who may, and anybody may. */
  readonly sprayers: readonly PersonName[];
  readonly booths: ReadonlyMap<PlaceName, BoothSize>;
  readonly lelShare: Fraction;
  readonly mixingFactor: number;
  readonly law: CrewLaw;
  /** What the crew has set as the limit over a day. */
  readonly dayLimits: DayLimitsSet;
  /** Nobody has set it: the figure is assumed. */
  readonly mixingAssumed: boolean;
  readonly emergency: EmergencyWords;
  /** Who began or ended a shift, in order of time; without a name everything was handed over. */
  readonly shiftChanges: readonly { readonly at: EpochMs; readonly by: PersonName | undefined }[];
  /** The last day of each, ISO, by person. */
  readonly dates: ReadonlyMap<PersonName, Dates>;
  /** Each date as it was given, in order of time. */
  readonly dated: readonly Dated[];
  /** Checks of what hoods and masks are fed with, in order of time. */
  readonly breathing: readonly BreathingCheck[];
  /** What was measured of people's air, in order of time; left out, nothing. */
  readonly exposures?: readonly Exposure[];
  /** Since when its briefs say who stays near or has moved out; `undefined`: none has. */
  readonly namesNearSince: EpochMs | undefined;
  /** In order of time. */
  readonly assessments: readonly Assessment[];
  /** What the crew has said of a place's name: whether it means one that people are closed in. */
  readonly confined: ReadonlyMap<PlaceName, boolean>;
}

/** Of one person over one task. */
export interface Exposure {
  /** The end of the task, or whenever it was told. */
  readonly at: EpochMs;
  readonly person: PersonName;
  readonly substance: SubstanceId;
  readonly ppm: PartsPerMillion;
  readonly taskMinutes: Minutes;
}

export type DayLimitsSet = ReadonlyMap<SolventId, PartsPerMillion>;

export type Dates = Readonly<Partial<Record<Qualification, string>>>;

export interface Dated {
  readonly at: EpochMs;
  readonly person: PersonName;
  readonly what: Qualification;
  readonly until: string;
}

/** A date that is renewed later says nothing of the day on which it had run out. */
export function datesAt({ dated }: Pick<SpraySettings, 'dated'>, person: PersonName, at: EpochMs): Dates {
  const known = dated.filter((each) => each.person === person && each.at <= at);
  return Object.fromEntries(known.map(({ what, until }) => [what, until]));
}

/** Whoever supervises answers for spraying without supplied air: in this booth, with this product, by this method. */
export interface Assessment {
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly place: PlaceName;
  readonly sheet: SheetId;
  /** Of the sheet that was read: another one may hold something else. */
  readonly revision: string;
  readonly method: Method;
  /** Only with supplied air: nothing without. */
  readonly supplied?: true | undefined;
  /** ISO: its last day. */
  readonly until: string;
}

/** The last one that was given by then. */
export function assessedAt(
  { assessments }: Pick<SpraySettings, 'assessments'>,
  of: { readonly place: PlaceName; readonly sheet: Pick<Sheet, 'id' | 'revision'>; readonly method: Method },
  at: EpochMs,
): Assessment | undefined {
  return assessments.findLast(
    (each) =>
      each.at <= at &&
      each.place === of.place &&
      each.sheet === of.sheet.id &&
      each.revision === of.sheet.revision &&
      each.method === of.method,
  );
}

export interface Briefing {
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly on: boolean;
}

/** What was said last by then of whether the crew briefs before it sprays; `undefined`: nobody has said. */
export function briefingAt({ briefing }: Pick<SpraySettings, 'briefing'>, at: EpochMs): Briefing | undefined {
  return briefing.findLast((change) => change.at <= at);
}
