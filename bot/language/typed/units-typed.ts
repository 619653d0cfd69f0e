// The units that a crew may type, and what a number in each is in the base unit; how they are spelt is a tongue's. `oz` is a mass;
// a fluid ounce says so.

import { ownValue } from '../../../core/own-key.ts';
import {
  type Celsius,
  celsius,
  celsiusFromFahrenheit,
  type Grams,
  grams,
  gramsFromKilograms,
  gramsFromOunces,
  gramsFromPounds,
  type Litres,
  litres,
  litresFromMillilitres,
  litresFromUsFluidOunces,
  litresFromUsGallons,
  type Micrometres,
  type Millimetres,
  type Minutes,
  micrometres,
  micrometresFromMils,
  millimetres,
  millimetresFromInches,
  minutes,
  type Percent,
  percent,
  type SquareMetres,
  squareMetres,
  squareMetresFromSquareFeet,
} from '../../../core/units.ts';
import type { UnitSpellings } from '../tongues/english/units.ts';

export type Quantity =
  | { readonly is: 'mass'; readonly grams: Grams }
  | { readonly is: 'volume'; readonly litres: Litres }
  | { readonly is: 'temperature'; readonly celsius: Celsius }
  | { readonly is: 'percent'; readonly percent: Percent }
  | { readonly is: 'length'; readonly millimetres: Millimetres }
  | { readonly is: 'area'; readonly squareMetres: SquareMetres }
  | { readonly is: 'film'; readonly micrometres: Micrometres }
  | { readonly is: 'duration'; readonly minutes: Minutes };

export interface Unit {
  readonly name: string;
  readonly is: Quantity['is'];
  /** Below it nothing of the kind exists: no negative mass, nothing under absolute zero. */
  readonly lowest: number;
  /** Nobody measures it to a thousandth, so `1.201` of it may be 1201. */
  readonly coarse?: true;
  readonly of: (value: number) => Quantity;
}

const mass = (name: string, of: (value: number) => Grams): Unit => ({
  name,
  is: 'mass',
  lowest: 0,
  of: (value) => ({ is: 'mass', grams: of(value) }),
});
const volume = (name: string, of: (value: number) => Litres): Unit => ({
  name,
  is: 'volume',
  lowest: 0,
  of: (value) => ({ is: 'volume', litres: of(value) }),
});
const temperature = (name: string, lowest: number, of: (value: number) => Celsius): Unit => ({
  name,
  is: 'temperature',
  lowest,
  of: (value) => ({ is: 'temperature', celsius: of(value) }),
});
const length = (name: string, of: (value: number) => Millimetres): Unit => ({
  name,
  is: 'length',
  lowest: 0,
  of: (value) => ({ is: 'length', millimetres: of(value) }),
});
const area = (name: string, of: (value: number) => SquareMetres): Unit => ({
  name,
  is: 'area',
  lowest: 0,
  of: (value) => ({ is: 'area', squareMetres: of(value) }),
});
const film = (name: string, of: (value: number) => Micrometres): Unit => ({
  name,
  is: 'film',
  lowest: 0,
  of: (value) => ({ is: 'film', micrometres: of(value) }),
});
const duration = (name: string, of: (value: number) => Minutes): Unit => ({
  name,
  is: 'duration',
  lowest: 0,
  of: (value) => ({ is: 'duration', minutes: of(value) }),
});

export const pound = mass('lb', gramsFromPounds);
export const ounce = mass('oz', gramsFromOunces);
export const inch = length('in', millimetresFromInches);
export const hour = duration('h', (value) => minutes(value * 60));
export const minute = duration('min', minutes);

const percents: Unit = {
  name: '%',
  is: 'percent',
  lowest: Number.NEGATIVE_INFINITY,
  of: (value) => ({ is: 'percent', percent: percent(value) }),
};

const units: Readonly<Record<Exclude<keyof UnitSpellings, 'degree'>, Unit>> = {
  kg: mass('kg', gramsFromKilograms),
  g: { ...mass('g', grams), coarse: true },
  lb: pound,
  oz: ounce,
  L: volume('L', litres),
  mL: { ...volume('mL', litresFromMillilitres), coarse: true },
  gal: volume('gal', litresFromUsGallons),
  qt: volume('qt', (value) => litresFromUsGallons(value / 4)),
  'fl oz': volume('fl oz', litresFromUsFluidOunces),
  C: temperature('C', -273.15, celsius),
  F: temperature('F', -459.67, celsiusFromFahrenheit),
  '%': percents,
  mm: length('mm', millimetres),
  cm: length('cm', (value) => millimetres(value * 10)),
  in: inch,
  m2: area('m2', squareMetres),
  cm2: area('cm2', (value) => squareMetres(value / 10_000)),
  ft2: area('ft2', squareMetresFromSquareFeet),
  um: { ...film('um', micrometres), coarse: true },
  mil: film('mil', micrometresFromMils),
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
