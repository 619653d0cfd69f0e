// What may have been meant by a figure that lies far outside the usual: another unit, or a decimal sign left out.

import type { UnitSystem } from './crew/unit-system.ts';
import {
  celsius,
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  gramsFromKilograms,
  metresPerSecondFromFeetPerMinute,
  micrometres,
  micrometresFromMils,
  milsFromMicrometres,
  squareMetresFromSquareFeet,
} from './units.ts';

export type Measure =
  | 'gas-share'
  | 'temperature'
  | 'percent'
  | 'film'
  | 'mass'
  | 'duration'
  | 'speed'
  | 'area'
  | 'volume';

export interface Meant {
  readonly values: readonly number[];
  /** Another unit; else a slip of the decimal sign. */
  readonly isUnit: boolean;
}

type Way = (value: number) => number;

const tenth: Way = (value) => value / 10;
/** No air is more than all of it; of what could be nothing is guessed. */
const tenthOfTooMuch: Way = (value) => (value > 100 ? value / 10 : Number.NaN);
const hundredth: Way = (value) => value / 100;
const thousandth: Way = (value) => value / 1_000;

/** Whoever reads Fahrenheit left the sign out of that. */
const tenthInFahrenheit: Way = (value) => celsiusFromFahrenheit(fahrenheitFromCelsius(celsius(value)) / 10);

/** `0.1 mil` of a tenth of a millimetre: what is no round figure of mils was not typed in them. */
const millimetresAsMils: Way = (value) => {
  const typed = milsFromMicrometres(micrometres(value));
  return Math.abs(typed - toHundredths(typed)) < 1e-9 ? typed * 1_000 : Number.NaN;
};

const otherUnit = {
  percent: [],
  'gas-share': [],
  film: [(value) => value / micrometresFromMils(1), micrometresFromMils, millimetresAsMils],
  mass: [thousandth, gramsFromKilograms],
  duration: [(value) => value / 60],
  speed: [metresPerSecondFromFeetPerMinute],
  area: [squareMetresFromSquareFeet],
  // Litres, typed with the unit of the millilitre.
  volume: [(value) => value * 1_000],
} satisfies Readonly<Record<Exclude<Measure, 'temperature'>, readonly Way[]>>;

const decimalSign = {
  percent: [],
  'gas-share': [tenthOfTooMuch],
  film: [tenth, hundredth, thousandth, (value) => value * 10],
  mass: [tenth],
  duration: [tenth],
  speed: [tenth, hundredth],
  area: [tenth],
  volume: [(value) => value * 100],
} satisfies Readonly<Record<Exclude<Measure, 'temperature'>, readonly Way[]>>;

const unitsOf = (measure: Measure, units: UnitSystem): readonly Way[] => {
  if (measure !== 'temperature') return otherUnit[measure];
  return units === 'us' ? [(value) => fahrenheitFromCelsius(celsius(value))] : [celsiusFromFahrenheit];
};

const decimalsOf = (measure: Measure, units: UnitSystem): readonly Way[] => {
  if (measure !== 'temperature') return decimalSign[measure];
  return units === 'us' ? [tenthInFahrenheit] : [tenth];
};

/** More would be guessing. */
const mostMeant = 2;

interface Range {
  readonly lowest: number;
  readonly highest: number;
}

/** Every reading of the gauge taken the same way, and all of them then usual; the likeliest first. */
export function meantBy(
  measure: Measure,
  values: readonly number[],
  range: Range,
  units: UnitSystem,
): readonly Meant[] {
  const tried = [
    ...unitsOf(measure, units).map((way) => ({ isUnit: true, way })),
    ...decimalsOf(measure, units).map((way) => ({ isUnit: false, way })),
  ];
  return tried
    .map(({ isUnit, way }) => ({ isUnit, values: values.map((value) => toHundredths(way(value))) }))
    .filter((meant) => meant.values.every((value) => isBetween(value, range)))
    .slice(0, mostMeant);
}

export const isBetween = (value: number, { lowest, highest }: Range): boolean => value >= lowest && value <= highest;

const toHundredths = (value: number): number => Number(value.toFixed(2));
