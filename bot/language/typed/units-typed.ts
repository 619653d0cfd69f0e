// The units that a crew may type, and what a number in each is in the base unit; how they are spelt is a tongue's. `oz` is a mass;
// a fluid ounce says so.

import { ownValue } from '../../../core/own-key.ts';
import {
  celsius,
  celsiusFromFahrenheit,
  grams,
  gramsFromKilograms,
  gramsFromOunces,
  gramsFromPounds,
  litres,
  litresFromMillilitres,
  litresFromUsFluidOunces,
  litresFromUsGallons,
  micrometres,
  micrometresFromMils,
  millimetres,
  millimetresFromInches,
  minutes,
  percent,
  squareMetres,
  squareMetresFromSquareFeet,
} from '../../../core/units.ts';
import type { Kind } from '../../../core/verbs/slot-row.ts';
import type { UnitSpellings } from '../tongues/english/units.ts';

export interface Quantity {
  readonly is: Exclude<Kind, 'number' | 'word'>;
  /** In the base unit of its kind. */
  readonly value: number;
}

export interface Unit {
  readonly name: string;
  readonly is: Quantity['is'];
  /** Below it nothing of the kind exists: no negative mass, nothing under absolute zero. */
  readonly lowest: number;
  /** Nobody measures it to a thousandth, so `1.201` of it may be 1201. */
  readonly coarse?: true;
  /** In the base unit. */
  readonly of: (value: number) => number;
}

const unit = (is: Quantity['is'], name: string, of: (value: number) => number, lowest = 0): Unit => ({
  name,
  is,
  lowest,
  of,
});

export const pound = unit('mass', 'lb', gramsFromPounds);
export const ounce = unit('mass', 'oz', gramsFromOunces);
export const inch = unit('length', 'in', millimetresFromInches);
export const hour = unit('duration', 'h', (value) => value * 60);
export const minute = unit('duration', 'min', minutes);

const units: Readonly<Record<Exclude<keyof UnitSpellings, 'degree'>, Unit>> = {
  kg: unit('mass', 'kg', gramsFromKilograms),
  g: { ...unit('mass', 'g', grams), coarse: true },
  lb: pound,
  oz: ounce,
  L: unit('volume', 'L', litres),
  mL: { ...unit('volume', 'mL', litresFromMillilitres), coarse: true },
  gal: unit('volume', 'gal', litresFromUsGallons),
  qt: unit('volume', 'qt', (value) => litresFromUsGallons(value / 4)),
  'fl oz': unit('volume', 'fl oz', litresFromUsFluidOunces),
  C: unit('temperature', 'C', celsius, -273.15),
  F: unit('temperature', 'F', celsiusFromFahrenheit, -459.67),
  '%': unit('percent', '%', percent, Number.NEGATIVE_INFINITY),
  mm: unit('length', 'mm', millimetres),
  cm: unit('length', 'cm', (value) => millimetres(value * 10)),
  in: inch,
  m2: unit('area', 'm2', squareMetres),
  cm2: unit('area', 'cm2', (value) => squareMetres(value / 10_000)),
  ft2: unit('area', 'ft2', squareMetresFromSquareFeet),
  um: { ...unit('film', 'um', micrometres), coarse: true },
  mil: unit('film', 'mil', micrometresFromMils),
  h: hour,
  min: minute,
};

/** Spelling in lower case -> unit; `degree`: a temperature without its scale. A spelling of two words has one space. */
export type Spellings = ReadonlyMap<string, Unit | 'degree'>;

export function spellingsOf(tongues: readonly UnitSpellings[]): Spellings {
  const rows = Object.entries({ ...units, degree: 'degree' as const });
  return new Map(
    tongues
      .flatMap((tongue) =>
        rows.flatMap(([name, unit]) =>
          (ownValue(tongue, name) ?? '').split(' ').map((word) => [word.replace('_', ' '), unit] as const),
        ),
      )
      .filter(([word]) => word !== ''),
  );
}

/** A word of its own after a number: `in` there is the preposition, `12 in booth`. */
export const notAfterSpace: ReadonlySet<string> = new Set(['in', '"', 'u']);

/** Fractions are typed of these only: `1/2 gal`, `3/16in`. */
export const takesFraction: ReadonlySet<string> = new Set(['in', 'gal', 'qt', 'lb', 'h']);
