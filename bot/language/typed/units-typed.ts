// Every spelling of a unit that a crew may type, and what a number in it is in the base unit. `oz` is a mass;
// a fluid ounce says so.

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
export const hour = duration('h', (value) => minutes(value * 60));
export const minute = duration('min', minutes);

const spellings: readonly (readonly [Unit, string])[] = [
  [mass('kg', gramsFromKilograms), 'kg kgs kilo kilos kilogramo kilogramos kilogram kilograms kilogramme kilogrammes'],
  [{ ...mass('g', grams), coarse: true }, 'g gr grs gm gms gram grams gramme grammes gramo gramos'],
  [pound, 'lb lbs pound pounds libra libras'],
  [ounce, 'oz ounce ounces onza onzas'],
  [volume('L', litres), 'l lt ltr ltrs litre litres liter liters litro litros'],
  [
    { ...volume('mL', litresFromMillilitres), coarse: true },
    'ml mls cc millilitre millilitres milliliter milliliters mililitro mililitros',
  ],
  [volume('gal', litresFromUsGallons), 'gal gals gallon gallons galon galón galones'],
  [volume('qt', (value) => litresFromUsGallons(value / 4)), 'qt qts quart quarts'],
  [
    volume('fl oz', litresFromUsFluidOunces),
    'floz fl_oz fl_ounce fl_ounces fluid_oz fluid_ounce fluid_ounces onza_liquida onza_líquida onzas_liquidas onzas_líquidas',
  ],
  [
    temperature('C', -273.15, celsius),
    'c °c degc deg_c degrees_c °_c celsius centigrade degrees_celsius grados_c grados_celsius grados_centigrados grados_centígrados',
  ],
  [
    temperature('F', -459.67, celsiusFromFahrenheit),
    'f °f degf deg_f degrees_f °_f fahrenheit degrees_fahrenheit grados_f grados_fahrenheit',
  ],
  [
    {
      name: '%',
      is: 'percent',
      lowest: Number.NEGATIVE_INFINITY,
      of: (value) => ({ is: 'percent', percent: percent(value) }),
    },
    '% %rh rh% %_rh rh pct percent per_cent humidity %_humidity por_ciento humedad %_humedad',
  ],
  [length('mm', millimetres), 'mm'],
  [length('cm', (value) => millimetres(value * 10)), 'cm'],
  [length('in', millimetresFromInches), '" in inch inches pulgada pulgadas pulg'],
  [
    area('m2', squareMetres),
    'm2 m^2 sqm sq_m sq_metre sq_metres sq_meter sq_meters square_metres square_meters metro_cuadrado metros_cuadrados',
  ],
  [area('cm2', (value) => squareMetres(value / 10_000)), 'cm2 cm^2 sqcm sq_cm'],
  [
    area('ft2', squareMetresFromSquareFeet),
    'ft2 ft^2 sqft sq_ft sf sq_feet sq_foot square_feet pie_cuadrado pies_cuadrados',
  ],
  [
    { ...film('um', micrometres), coarse: true },
    'um µm μm u µ μ mic mics micron microns micra micras micrometre micrometro micrómetro micrometros micrómetros',
  ],
  [film('mil', micrometresFromMils), 'mil mils thou milesima milésima milesimas milésimas'],
  [hour, 'h hr hrs hour hours hora horas'],
  [minute, 'm min mins minute minutes minuto minutos'],
];

/** Spelling in lower case -> unit. A spelling of two words has one space. */
export const unitsBySpelling: ReadonlyMap<string, Unit> = new Map(
  spellings.flatMap(([unit, words]) => words.split(' ').map((word) => [word.replace('_', ' '), unit] as const)),
);

/** `24°`: a temperature without its scale, so still a number that wants a unit. */
export const degreeWithoutScale: ReadonlySet<string> = new Set([
  '°',
  'deg',
  'degs',
  'degree',
  'degrees',
  'grado',
  'grados',
]);

/** A word of its own after a number: `in` there is the preposition, `12 in booth`. */
export const notAfterSpace: ReadonlySet<string> = new Set(['in', '"', 'u']);

/** Fractions are typed of these only: `1/2 gal`, `3/16in`. */
export const takesFraction: ReadonlySet<string> = new Set(['in', 'gal', 'qt', 'lb', 'h']);
