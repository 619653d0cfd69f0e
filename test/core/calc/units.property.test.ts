// Every conversion there and back.

import fc from 'fast-check';
import { it } from 'vitest';
import {
  celsiusFromFahrenheit,
  celsiusSpreadFromFahrenheit,
  fahrenheitFromCelsius,
  fahrenheitSpreadFromCelsius,
  gramsFromOunces,
  inchesFromMillimetres,
  litresFromUsGallons,
  micrometresFromMils,
  millimetresFromInches,
  milsFromMicrometres,
  ouncesFromGrams,
  squareFeetFromSquareMetres,
  squareMetresFromSquareFeet,
  usGallonsFromLitres,
} from '../../../core/units.ts';
import { between, expectClose } from './drawn.ts';

it.each([
  ['gallons', (n: number) => usGallonsFromLitres(litresFromUsGallons(n))],
  ['ounces', (n: number) => ouncesFromGrams(gramsFromOunces(n))],
  ['degrees Fahrenheit', (n: number) => fahrenheitFromCelsius(celsiusFromFahrenheit(n))],
  ['spreads in Fahrenheit', (n: number) => fahrenheitSpreadFromCelsius(celsiusSpreadFromFahrenheit(n))],
  ['mils', (n: number) => milsFromMicrometres(micrometresFromMils(n))],
  ['inches', (n: number) => inchesFromMillimetres(millimetresFromInches(n))],
  ['square feet', (n: number) => squareFeetFromSquareMetres(squareMetresFromSquareFeet(n))],
])('given any %s, then there and back is the same', (_, thereAndBack) => {
  fc.assert(
    fc.property(between(0, 1e6), (n) => {
      expectClose(thereAndBack(n), n);
    }),
  );
});
