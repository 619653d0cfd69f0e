// What a piece of a line can be, in which units it is typed, and beyond which figures it is a slip.

/** What a piece of a line can be. */
export type Kind =
  | 'mass'
  | 'volume'
  | 'temperature'
  | 'percent'
  | 'length'
  | 'area'
  | 'film'
  | 'duration'
  | 'number'
  | 'word';

/** Metric, as a figure in it is written. */
export type BaseUnit =
  | 'g'
  | 'L'
  | 'C'
  | '%'
  | 'mm'
  | 'm2'
  | 'um'
  | 'min'
  | 'm/s'
  | 'mg/m2'
  | 'uS/cm'
  | 'rpm'
  | 'ppm'
  | 'mg/m3'
  | 'MPa'
  | 'GU'
  | 'V';

/** In the base unit of the kind. What lies outside is a slip of the thumb, never a reading. */
export interface Limits {
  readonly lowest: number;
  readonly highest: number;
  readonly unit: string;
  /** The lowest itself cannot be either: nobody mixes 0 kg. */
  readonly above?: boolean;
}

export interface SlotRow {
  readonly kinds: readonly Kind[];
  readonly units: readonly string[];
  readonly limits?: Limits;
  /** None where it counts or names something. */
  readonly unit?: BaseUnit;
}

export interface NamedSlot<Name extends string = string> extends SlotRow {
  readonly name: Name;
}
