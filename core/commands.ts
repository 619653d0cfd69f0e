// Everything that can be said: acts, which become events, and questions, which only read. Quantities arrive in base
// units; which batch or part may be left out where only one can be meant.

import type { Component } from './components.ts';
import type { Setting } from './crew/crew-commands.ts';
import type { AdhesionRating, RubResult, SurfaceGrade } from './grades.ts';
import type { BatchNumber, CanNumber, PartName, PersonName, PlaceName, SheetId } from './ids.ts';
import type { Method } from './methods.ts';
import type { RecordQuestion } from './records/record-questions.ts';
import type { SessionCommand, VapourAsked, Work } from './session/session-commands.ts';
import type { SolventUse } from './solvent-uses.ts';
import type {
  Celsius,
  EpochMs,
  Grams,
  Litres,
  Micrometres,
  MilligramsPerSquareMetre,
  Millimetres,
  Minutes,
  Percent,
  SquareMetres,
} from './units.ts';

/** What is at hand when a gas-sensitive can is opened: inert gas for what is left, or the whole can is used now. */
export type Handling = 'gas' | 'whole';

export interface AirSaid {
  readonly celsius?: Celsius;
  readonly relativeHumidityPercent?: Percent;
}

export type Amount =
  | { readonly kind: 'mass'; readonly grams: Grams }
  | { readonly kind: 'volume'; readonly litres: Litres };

export type CureWay = { readonly kind: 'oven'; readonly setCelsius?: Celsius } | { readonly kind: 'room' };

export interface PartDetails {
  readonly serial?: string;
  readonly job?: string;
  readonly customer?: string;
  readonly metal?: string;
  readonly wallMillimetres?: Millimetres;
  readonly areaSquareMetres?: SquareMetres;
  /** The hottest the part may get. */
  readonly highestCelsius?: Celsius;
}

export interface NamedPart {
  readonly part: PartName;
  readonly details: PartDetails;
}

export type Command =
  | {
      readonly verb: 'mix';
      readonly amount: Amount;
      readonly sheet?: SheetId;
      readonly air?: AirSaid;
      /** What the mixing vessel holds. */
      readonly vesselLitres?: Litres;
    }
  | ({
      readonly verb: 'weigh';
      readonly batch?: BatchNumber;
      /** Which cans it came from; where nobody names them, the only ones that fit. */
      readonly cans?: readonly CanNumber[];
    } & Weights)
  /** More of one part, to bring an off-ratio mix back. */
  | {
      readonly verb: 'add';
      readonly batch?: BatchNumber;
      readonly component: Component;
      readonly grams: Grams;
      readonly cans?: readonly CanNumber[];
    }
  | { readonly verb: 'stir'; readonly batch?: BatchNumber }
  | { readonly verb: 'stop'; readonly batch?: BatchNumber }
  | { readonly verb: 'filter'; readonly batch?: BatchNumber }
  | { readonly verb: 'thick'; readonly batch?: BatchNumber }
  | { readonly verb: 'gel'; readonly batch?: BatchNumber }
  /** The pot is empty, or what is left is set aside as waste. */
  | { readonly verb: 'empty'; readonly batch?: BatchNumber; readonly leftGrams?: Grams }
  | { readonly verb: 'cover' | 'uncover'; readonly batch?: BatchNumber }
  /** What drained from a flow coat, to be filtered and used again. */
  | { readonly verb: 'catch'; readonly batch?: BatchNumber; readonly grams: Grams }
  | {
      readonly verb: 'open';
      readonly component: Component;
      readonly lot: string;
      readonly grams: Grams;
      /** Of the can, brimful, where its label says it. */
      readonly litres?: Litres;
      /** ISO, the last day: `2026-12-31`. */
      readonly expires?: string;
      readonly sheet?: SheetId;
      readonly handling?: Handling;
    }
  /** The lid comes off again. */
  | { readonly verb: 'lid'; readonly can?: CanNumber }
  /** Inert gas over what is left, and the lid on. */
  | { readonly verb: 'blanket'; readonly can?: CanNumber }
  /** A lead looked at a doubtful can and takes it. */
  | { readonly verb: 'check'; readonly can?: CanNumber }
  /** The stirrer runs in the can itself, before a pour. */
  | { readonly verb: 'prestir'; readonly can?: CanNumber }
  | { readonly verb: 'discard'; readonly can: CanNumber; readonly why: string }
  | {
      readonly verb: 'part';
      readonly part: PartName;
      readonly details: PartDetails;
      /** The others of a pasted list. */
      readonly more?: readonly NamedPart[];
    }
  | {
      readonly verb: 'prep';
      readonly parts: readonly PartName[];
      /** Whichever of them nobody knows is a new part. */
      readonly asNew?: true;
      readonly grade: SurfaceGrade;
      readonly profileMicrometres?: Micrometres;
      readonly saltsMilligramsPerSquareMetre?: MilligramsPerSquareMetre;
      /** ISO 8502-3, how much: 0 to 5. */
      readonly dustRating?: number;
    }
  | {
      readonly verb: 'coat';
      readonly parts: readonly PartName[];
      readonly batch?: BatchNumber;
      readonly method: Method;
      /** Another pass of the coat that is there and still wet. */
      readonly pass?: 'same-coat';
      /** Whichever of the parts nobody knows is a new one. */
      readonly asNew?: true;
    }
  | { readonly verb: 'dry'; readonly parts: readonly PartName[] }
  | { readonly verb: 'cure'; readonly parts: readonly PartName[]; readonly way: CureWay }
  | { readonly verb: 'temp'; readonly part?: PartName; readonly celsius: Celsius }
  /** The oven's door; nobody named is the only load. */
  | { readonly verb: 'door'; readonly parts: readonly PartName[]; readonly openMinutes?: Minutes }
  /** Out of the oven, or taken from its curing place; nobody named is the only load in the oven. */
  | { readonly verb: 'out'; readonly parts: readonly PartName[] }
  | { readonly verb: 'wet'; readonly part: PartName; readonly wetFilmMicrometres: readonly Micrometres[] }
  | { readonly verb: 'film'; readonly part: PartName; readonly dryFilmMicrometres: readonly Micrometres[] }
  /** Cross-cut, as the gauge's scale has it; of the part, or of a witness coupon that went with it. */
  | { readonly verb: 'adhesion'; readonly part: PartName; readonly rating: AdhesionRating; readonly coupon?: true }
  | {
      readonly verb: 'rub';
      readonly part: PartName;
      readonly doubleRubs: number;
      readonly result: RubResult;
      readonly coupon?: true;
    }
  | { readonly verb: 'release'; readonly parts: readonly PartName[] }
  | { readonly verb: 'hold'; readonly parts: readonly PartName[]; readonly why: string }
  | { readonly verb: 'air'; readonly place?: PlaceName; readonly air: AirSaid }
  /** Of one part, or of a place. */
  | {
      readonly verb: 'surface';
      readonly part?: PartName;
      /** Where nobody knows the part, it is a new one. */
      readonly asNew?: true;
      readonly place?: PlaceName;
      readonly celsius: Celsius;
    }
  /** The lowest temperature of the time nobody read, up to now. */
  | { readonly verb: 'night'; readonly place?: PlaceName; readonly lowestCelsius: Celsius }
  /** Heard: answers what has rung for the speaker, or the bell of this key alone, with others that rang in one message. */
  | { readonly verb: 'ok'; readonly key?: string; readonly also?: readonly string[] }
  /** The last ring to the speaker, or the one of this key, again so much later. */
  | { readonly verb: 'snooze'; readonly minutes: Minutes; readonly key?: string }
  | { readonly verb: 'shift'; readonly on: boolean }
  | { readonly verb: 'handover'; readonly to: PersonName }
  | { readonly verb: 'takeover' }
  /**
   * The speaker's latest; `entry` where a tap says which it was meant to be, `despite` where the speaker was shown what
   * rests on it, up to that entry.
   */
  | { readonly verb: 'undo'; readonly entry?: number; readonly despite?: number }
  | { readonly verb: 'amend'; readonly of: AmendTarget; readonly change: Amendment; readonly why: string }
  /** Solvent beside the coatings: thinner, cleaner. */
  | { readonly verb: 'used'; readonly material: string; readonly amount: Amount; readonly use: SolventUse }
  | SessionCommand
  | { readonly verb: 'set'; readonly setting: Setting };

/** Both parts, or one of them. */
export type Weights =
  | { readonly partAGrams: Grams; readonly partBGrams: Grams }
  | { readonly partAGrams: Grams; readonly partBGrams?: never }
  | { readonly partAGrams?: never; readonly partBGrams: Grams };

export type Verb = Command['verb'];
export type CommandOf<V extends Verb> = Extract<Command, { verb: V }>;

/** A decision counts from when it is given: no telling that it was already given makes one. */
export const decisionVerbs = ['release', 'check'] as const satisfies readonly Verb[];

export function isDecision({ verb }: Command): boolean {
  const verbs: readonly Verb[] = decisionVerbs;
  return verbs.includes(verb);
}

/** Acts with a batch, or on one: which may be left out. */
export const batchVerbs = [
  ...(['weigh', 'add', 'stir', 'stop', 'filter', 'thick', 'gel', 'empty', 'cover', 'uncover', 'catch'] as const),
  ...(['coat', 'brief'] as const),
] as const satisfies readonly Verb[];
export type BatchCommand = CommandOf<(typeof batchVerbs)[number]>;

export function takesBatch(command: Command): command is BatchCommand {
  const verbs: readonly Verb[] = batchVerbs;
  return verbs.includes(command.verb);
}

/** The command with this batch, where it takes one. */
export function withBatch(command: Command, batch: BatchNumber): Command {
  return takesBatch(command) ? { ...command, batch } : command;
}

/** Which act is corrected: the last of this verb on this batch, can, part or place. */
export interface AmendTarget {
  readonly verb: Verb;
  readonly batch?: BatchNumber;
  readonly can?: CanNumber;
  readonly part?: PartName;
  readonly place?: PlaceName;
}

/** What was wrong: only what is named changes. */
export interface Amendment {
  readonly at?: EpochMs;
  readonly partAGrams?: Grams;
  readonly partBGrams?: Grams;
  readonly celsius?: Celsius;
  readonly relativeHumidityPercent?: Percent;
  readonly method?: Method;
  readonly leftGrams?: Grams;
  /** Of an opened can, of what was added or caught. */
  readonly grams?: Grams;
  readonly filmMicrometres?: readonly Micrometres[];
}

export type Question =
  | { readonly ask: 'day'; readonly day: DayAsked }
  | { readonly ask: 'now' }
  | { readonly ask: 'stock' }
  | ({ readonly ask: 'plan' } & PlanAsked)
  | RecordQuestion
  | { readonly ask: 'vent'; readonly asked: VapourAsked }
  | { readonly ask: 'hazards'; readonly work: Work }
  | { readonly ask: 'help'; readonly verb?: string };

export type PlannedParts =
  | { readonly count: number; readonly eachSquareMetres: SquareMetres }
  | { readonly part: PartName };

export interface PlanAsked {
  readonly parts: readonly PlannedParts[];
  readonly method: Method;
  /** Left out: the most of the sheet's range. */
  readonly dryFilmMicrometres?: Micrometres;
  readonly sheet?: SheetId;
  /** When the first batch is wanted, ready to apply. */
  readonly readyAt?: EpochMs;
}

export type DayAsked =
  | { readonly kind: 'today' }
  | { readonly kind: 'yesterday' }
  /** ISO, `2026-03-02`. */
  | { readonly kind: 'date'; readonly date: string };

/** How the speaker means it: asking before the act, telling after it, or with leave from somebody who may give it. */
export type Stance =
  | { readonly is: 'asked' }
  | { readonly is: 'happened' }
  | { readonly is: 'permitted'; readonly why: string };
