// Why not, as data. An objection comes before an act and can be answered with "it already happened", unless the act is a
// decision; a line that is unclear cannot be recorded at all until it says which thing it means. The catalogue has the words.

import type { Breach } from './calc/climate-window.ts';
import type { NoFigure } from './calc/dose.ts';
import type { MaterialObjection, MaterialUnclear } from './can/can-objections.ts';
import type { ActTold, UndoUnclear } from './corrections/undo-objections.ts';
import type { Role } from './crew/crew-commands.ts';
import type { CrewUnclear } from './crew/crew-unclear.ts';
import type { AlarmObjection } from './crew/open-alarms.ts';
import type { FarFigure } from './far-figures.ts';
import type { SeenOfPot } from './heat-care.ts';
import type { BatchNumber, PartName, PersonName, PlaceName, SheetId } from './ids.ts';
import type { InstrumentKind } from './instrument-kinds.ts';
import type { InstrumentObjection } from './instruments.ts';
import type { Method } from './methods.ts';
import type { HoldingCode } from './part/holding-codes.ts';
import type { FailedReading } from './part/part-events.ts';
import type {
  CureObjection,
  FilmObjection,
  FilmUnclear,
  HoldObjection,
  LeftObjection,
  LoadUnclear,
  ReadingObjection,
  ReleaseObjection,
} from './part/part-objections.ts';
import type { SheetUnclear } from './products/sheet-objections.ts';
import type { SessionObjection, SessionUnclear } from './session/session-objections.ts';
import type { StepObjection } from './steps/step-objection.ts';
import type { Celsius, EpochMs, Grams, Minutes } from './units.ts';
import type { NamedPart } from './verbs/said.ts';

export type Objection =
  | MaterialObjection
  | SessionObjection
  | AlarmObjection
  | FilmObjection
  | CureObjection
  | LeftObjection
  | HoldObjection
  | ReleaseObjection
  | ReadingObjection
  | StepObjection
  | InstrumentObjection
  | {
      readonly code: 'air-needed';
      readonly missing: 'temperature' | 'both';
      readonly lastReadAt: EpochMs | undefined;
      readonly limitMinutes: Minutes;
    }
  | { readonly code: 'air-outside'; readonly breaches: readonly Breach[] }
  | { readonly code: 'more-than-sheet-mixes'; readonly grams: Grams; readonly mostGrams: Grams }
  | { readonly code: 'already-weighed'; readonly at: EpochMs }
  | { readonly code: 'not-weighed' }
  /** A deviation of the weighing, and an objection to what is done with that pot. In per cent of the sheet's B/A. */
  | { readonly code: 'ratio-out'; readonly errorPercent: number; readonly tolerancePercent: number }
  | { readonly code: 'already-filtered'; readonly at: EpochMs }
  | {
      readonly code: 'blend-not-done';
      readonly way: 'stir' | 'induction';
      readonly progress: number;
      readonly givenMinutes: Minutes;
      readonly dueAt: EpochMs | undefined;
      readonly withoutFigure: NoFigure | undefined;
    }
  | { readonly code: 'stirrer-off' }
  | { readonly code: 'not-filtered' }
  | { readonly code: 'past-pot-life'; readonly endedAt: EpochMs }
  /** Only ever a deviation: the air was read again, warmer. */
  | {
      readonly code: 'past-pot-life-at-worst';
      readonly endAt: EpochMs;
      /** The last two readings that made it sooner. */
      readonly readAt: EpochMs;
      readonly againAt: EpochMs;
    }
  | { readonly code: 'pot-dead'; readonly batch: BatchNumber; readonly seen: SeenOfPot; readonly at: EpochMs }
  | { readonly code: 'pot-empty'; readonly at: EpochMs }
  | { readonly code: 'method-not-on-sheet'; readonly method: Method; readonly methods: readonly Method[] }
  | { readonly code: 'recoat-forbidden'; readonly coatedAt: EpochMs }
  | { readonly code: 'recoat-too-early'; readonly opensAt: EpochMs }
  | { readonly code: 'recoat-too-late'; readonly closedAt: EpochMs }
  | { readonly code: 'not-coated' }
  | { readonly code: 'flash-off-not-over'; readonly leastAt: EpochMs; readonly oven: boolean }
  | { readonly code: 'not-dry'; readonly oven: boolean }
  | { readonly code: 'already-released'; readonly at: EpochMs }
  | {
      readonly code: 'on-hold';
      readonly why: string;
      readonly because: readonly HoldingCode[];
      readonly failed: readonly FailedReading[];
    };

export type ObjectionCode = Objection['code'];

export type Unclear =
  | MaterialUnclear
  | SessionUnclear
  | LoadUnclear
  | FilmUnclear
  | CrewUnclear
  | SheetUnclear
  | UndoUnclear
  | {
      readonly code: 'no-such-batch';
      readonly batch: BatchNumber;
      readonly live: readonly BatchNumber[];
      readonly areNoneFit?: boolean;
    }
  | { readonly code: 'which-batch'; readonly live: readonly BatchNumber[]; readonly areNoneFit?: boolean }
  | { readonly code: 'no-such-part'; readonly part: PartName; readonly live: readonly PartName[] }
  | { readonly code: 'which-part'; readonly live: readonly PartName[] }
  /** Names that nobody has used, each with the known ones that it may be, nearest first. */
  | {
      readonly code: 'new-part';
      readonly unknown: readonly { readonly part: PartName; readonly near: readonly PartName[] }[];
    }
  /** A place that nobody has named, with the known ones that it may be, nearest first. */
  | { readonly code: 'new-place'; readonly place: PlaceName; readonly near: readonly PlaceName[] }
  /** What would be booked, and which of it is known already. */
  | { readonly code: 'parts-in'; readonly fresh: readonly NamedPart[]; readonly known: readonly NamedPart[] }
  /** Figures outside what is usual. */
  | { readonly code: 'far-reading'; readonly from: 'usual'; readonly figures: readonly FarFigure[] }
  | { readonly code: 'no-densities'; readonly sheet: SheetId }
  | { readonly code: 'in-the-future'; readonly at: EpochMs; readonly now: EpochMs }
  | {
      readonly code: 'may-not-permit';
      readonly wanted: Role | 'nobody';
      /** Those who may. */
      readonly who: readonly PersonName[];
      readonly because: Objection;
    }
  /** No air is such: the wet bulb above the dry, too far below it, or frozen. */
  | { readonly code: 'wet-bulb-cannot-be'; readonly celsius: Celsius; readonly wetBulbCelsius: Celsius }
  /** None is kept under that name, or of another kind than `of`, which such a reading is made with. */
  | {
      readonly code: 'no-such-instrument';
      readonly instrument: string;
      readonly kept: readonly string[];
      readonly of: readonly InstrumentKind[];
    }
  /** Of a new one nobody said what it is. */
  | { readonly code: 'which-kind'; readonly instrument: string }
  | { readonly code: 'nothing-to-amend' }
  | { readonly code: 'nothing-changed' }
  /** Somebody else told it: a correction is theirs, or a lead's. */
  | {
      readonly code: 'not-own-entry';
      readonly act: ActTold;
      readonly wanted: Role;
      readonly who: readonly PersonName[];
    }
  /** A part of it is in the vessel: what it is mixed of is no slip any more. */
  | { readonly code: 'product-stands'; readonly batch: BatchNumber; readonly at: EpochMs }
  /** A correction that would release a part. */
  | { readonly code: 'decision-stands' }
  | { readonly code: 'nothing-rang' };
