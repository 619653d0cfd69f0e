// Everything that can be said: acts, which become events, and questions, which only read. Quantities arrive in base
// units; which batch or part may be left out where only one can be meant.

import type { BatchNumber, PartName, PlaceName, SheetId } from './ids.ts';
import type { Celsius, EpochMs, Grams, Litres, Micrometres, Millimetres, Percent, SquareMetres } from './units.ts';

export const methods = ['flow', 'dip', 'brush', 'roller', 'spray'] as const;
export type Method = (typeof methods)[number];

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

export type Command =
  | { readonly verb: 'mix'; readonly amount: Amount; readonly sheet?: SheetId; readonly air?: AirSaid }
  | {
      readonly verb: 'weigh';
      readonly batch?: BatchNumber;
      readonly partAGrams: Grams;
      readonly partBGrams: Grams;
    }
  | { readonly verb: 'stir'; readonly batch?: BatchNumber }
  | { readonly verb: 'stop'; readonly batch?: BatchNumber }
  | { readonly verb: 'filter'; readonly batch?: BatchNumber }
  | { readonly verb: 'thick'; readonly batch?: BatchNumber }
  | { readonly verb: 'gel'; readonly batch?: BatchNumber }
  /** The pot is empty, or what is left is set aside as waste. */
  | { readonly verb: 'empty'; readonly batch?: BatchNumber; readonly leftGrams?: Grams }
  | { readonly verb: 'part'; readonly part: PartName; readonly details: PartDetails }
  | {
      readonly verb: 'coat';
      readonly parts: readonly PartName[];
      readonly batch?: BatchNumber;
      readonly method: Method;
    }
  | { readonly verb: 'dry'; readonly parts: readonly PartName[] }
  | { readonly verb: 'cure'; readonly parts: readonly PartName[]; readonly way: CureWay }
  | { readonly verb: 'temp'; readonly part?: PartName; readonly celsius: Celsius }
  /** Out of the oven, or taken from its curing place. */
  | { readonly verb: 'out'; readonly parts: readonly PartName[] }
  | { readonly verb: 'wet'; readonly part: PartName; readonly wetFilmMicrometres: readonly Micrometres[] }
  | { readonly verb: 'film'; readonly part: PartName; readonly dryFilmMicrometres: readonly Micrometres[] }
  | { readonly verb: 'release'; readonly parts: readonly PartName[] }
  | { readonly verb: 'hold'; readonly parts: readonly PartName[]; readonly why: string }
  | { readonly verb: 'air'; readonly place?: PlaceName; readonly air: AirSaid }
  | { readonly verb: 'surface'; readonly place?: PlaceName; readonly celsius: Celsius }
  /** The lowest temperature of the time nobody read, up to now. */
  | { readonly verb: 'night'; readonly place?: PlaceName; readonly lowestCelsius: Celsius }
  /** Heard: answers what has rung for the speaker. */
  | { readonly verb: 'ok' }
  | { readonly verb: 'undo' }
  | { readonly verb: 'amend'; readonly of: AmendTarget; readonly change: Amendment; readonly why: string }
  | { readonly verb: 'set'; readonly setting: Setting };

export type Verb = Command['verb'];
export type CommandOf<V extends Verb> = Extract<Command, { verb: V }>;

/** Which act is corrected: the last of this verb on this batch, part or place. */
export interface AmendTarget {
  readonly verb: Verb;
  readonly batch?: BatchNumber;
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
  readonly filmMicrometres?: readonly Micrometres[];
}

export type Setting =
  | { readonly name: 'sheet'; readonly sheet: SheetId }
  | { readonly name: 'air-limit'; readonly minutes: number }
  | { readonly name: 'digest'; readonly hour: number }
  | { readonly name: 'units'; readonly units: 'metric' | 'us' };

export type Question =
  | { readonly ask: 'day'; readonly day: DayAsked }
  | { readonly ask: 'now' }
  | { readonly ask: 'help'; readonly verb?: string };

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
