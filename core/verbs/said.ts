// Values of a command that are more than one figure or name.

import type { PartName } from '../ids.ts';
import type { Celsius, Grams, Litres, Micrometres, Millimetres, Percent, SquareMetres } from '../units.ts';

/** What is at hand when a gas-sensitive can is opened: inert gas for what is left, or the whole can is used now. */
export const handlings = ['gas', 'whole'] as const;
export type Handling = (typeof handlings)[number];

export interface AirSaid {
  readonly celsius?: Celsius;
  readonly relativeHumidityPercent?: Percent;
}

export type Amount =
  | { readonly kind: 'mass'; readonly grams: Grams }
  | { readonly kind: 'volume'; readonly litres: Litres };

export type CureWay = { readonly kind: 'oven'; readonly setCelsius?: Celsius } | { readonly kind: 'room' };

/** Gauge readings of one spot. */
export interface SpotSaid {
  /** Left out, the next one. */
  readonly spot?: number;
  /** Beside the spot of this number. */
  readonly near?: number;
  readonly micrometres: readonly Micrometres[];
  /** Read there too, and left out. */
  readonly dropped?: readonly Micrometres[];
}

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
  /** Words of its line that nobody could read: they are told, and not recorded. */
  readonly unread?: readonly string[];
}
