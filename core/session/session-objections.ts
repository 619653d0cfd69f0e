// What speaks against spraying, or against closing a session, in figures.

import type { SolventId } from '../calc/solvents.ts';
import type { PersonName, PlaceName, SessionNumber, SheetId } from '../ids.ts';
import type { SensitiserKind } from '../products/sheet-spray.ts';
import type { CubicMetresPerHour, MetresPerSecond } from '../units.ts';
import type { BreathingCheck } from './breathing-check.ts';
import type { Qualification, SessionGear } from './session-commands.ts';

/** Why a brief no longer serves. `later`: it was briefed only after the act. */
export type LapsedBy = 'later' | 'closed' | 'batch' | 'booth' | 'shift' | 'alarm' | 'spell';

/** What nobody has said of the fan. */
export type FanUnknown = 'extraction' | 'velocity' | 'booth';

/** Why there is no sum of the air against fire. */
export type NotSummed =
  | { readonly is: 'sheet-silent' | 'rate-unknown' }
  /** Solvents of the sheet of which no explosive limit was read. */
  | { readonly is: 'without-limit'; readonly solvents: readonly SolventId[] };

/** Why nothing but supplied air serves. */
export type OnlySupplied =
  | { readonly is: 'sensitiser'; readonly sheet: string; readonly kinds: readonly SensitiserKind[] }
  | { readonly is: 'sensitiser-open'; readonly sheet: string }
  | { readonly is: 'not-measured' | 'not-summed' | 'falls-short' };

/** A date that has passed. */
export interface RunOut {
  readonly person: PersonName;
  readonly what: Qualification;
  /** ISO: the last day on which it counted. */
  readonly until: string;
}

/** Of whom nobody has told a date for these. */
export interface Undated {
  readonly person: PersonName;
  readonly what: readonly Qualification[];
}

/** What the fan does not give. */
export type FanShort =
  | { readonly of: 'lel' | 'exposure'; readonly gives: CubicMetresPerHour; readonly asks: CubicMetresPerHour }
  | { readonly of: 'face'; readonly gives: MetresPerSecond; readonly asks: MetresPerSecond };

export type SessionObjection =
  | { readonly code: 'no-brief' }
  | { readonly code: 'brief-lapsed'; readonly session: SessionNumber; readonly because: LapsedBy }
  | { readonly code: 'brief-not-acknowledged'; readonly session: SessionNumber; readonly people: readonly PersonName[] }
  | { readonly code: 'ack-for-sprayer'; readonly session: SessionNumber; readonly person: PersonName }
  | { readonly code: 'inside-vessel' }
  | { readonly code: 'may-not-spray'; readonly people: readonly PersonName[] }
  | {
      readonly code: 'no-extraction-no-air';
      readonly extraction: 'off' | 'not-said';
      readonly air: 'none' | 'not-said';
    }
  | {
      readonly code: 'fan-not-measured';
      readonly missing: FanUnknown;
      readonly place: PlaceName;
      /** Left out where there is no sum. */
      readonly asks?: CubicMetresPerHour;
    }
  | { readonly code: 'fan-too-weak'; readonly short: readonly FanShort[] }
  | {
      readonly code: 'confined-place';
      /** Left out: of a coat in no session. */
      readonly session?: SessionNumber;
      readonly place: PlaceName;
    }
  | { readonly code: 'not-qualified'; readonly ranOut: readonly RunOut[] }
  | { readonly code: 'breathing-air-not-fit'; readonly check: BreathingCheck }
  | {
      readonly code: 'breathing-air-unchecked';
      readonly check: BreathingCheck;
      readonly because: 'overdue' | 'not-whole';
    }
  | { readonly code: 'near-not-named'; readonly session: SessionNumber }
  | {
      readonly code: 'dates-not-known';
      readonly undated: readonly Undated[];
      /** The law asks for the training, whether the crew keeps its dates or not. */
      readonly forDiisocyanates?: true;
    }
  | {
      readonly code: 'air-not-summed';
      readonly session: SessionNumber;
      readonly sheet: string;
      readonly because: NotSummed;
    }
  | {
      readonly code: 'supplied-air-or-none';
      readonly session: SessionNumber;
      readonly because: OnlySupplied;
      readonly air: 'none' | 'not-said';
    }
  | {
      readonly code: 'no-assessment';
      readonly session: SessionNumber;
      readonly place: PlaceName;
      readonly sheet: SheetId;
      /** As the maker calls it. */
      readonly product: string;
      /** ISO: the last day of the one that there was. */
      readonly ended?: string;
    }
  | { readonly code: 'gear-not-flushed'; readonly gear: SessionGear; readonly left: readonly SolventId[] }
  | { readonly code: 'rags-not-canned' };

export type SessionUnclear =
  /** Whoever watches from outside would spray at the same time. */
  | { readonly code: 'watcher-sprays'; readonly person: PersonName }
  /** A gun stops that nobody has said to run. */
  | { readonly code: 'not-spraying'; readonly session: SessionNumber }
  | { readonly code: 'no-such-session'; readonly session: SessionNumber; readonly live: readonly SessionNumber[] }
  | { readonly code: 'which-session'; readonly live: readonly SessionNumber[] }
  | {
      readonly code: 'not-exposed';
      readonly session: SessionNumber;
      readonly person: PersonName;
      readonly isOut: boolean;
    };
