// Every conversion there and back.

import fc from 'fast-check';
import { it } from 'vitest';
import {
  celsiusFromFahrenheit,
  celsiusSpreadFromFahrenheit,
  fahrenheitFromCelsius,
  fahrenheitSpreadFromCelsius,
  gramsFromOunces,
  gramsFromPounds,
  gramsPerLitreFromPoundsPerGallon,
  inchesFromMillimetres,
  litresFromUsFluidOunces,
  litresFromUsGallons,
  micrometresFromMils,
  millimetresFromInches,
  milsFromMicrometres,
  ouncesFromGrams,
  poundsFromGrams,
  poundsPerGallonFromGramsPerLitre,
  squareFeetFromSquareMetres,
  squareFeetPerUsGallonFromSquareMetresPerLitre,
  squareMetresFromSquareFeet,
  squareMetresPerLitreFromSquareFeetPerUsGallon,
  usFluidOuncesFromLitres,
  usGallonsFromLitres,
} from '../../../core/units.ts';
import { between, expectClose } from './drawn.ts';

it.each([
  ['gallons', (n: number) => usGallonsFromLitres(litresFromUsGallons(n))],
  ['fluid ounces', (n: number) => usFluidOuncesFromLitres(litresFromUsFluidOunces(n))],
  ['pounds', (n: number) => poundsFromGrams(gramsFromPounds(n))],
  ['ounces', (n: number) => ouncesFromGrams(gramsFromOunces(n))],
  ['degrees Fahrenheit', (n: number) => fahrenheitFromCelsius(celsiusFromFahrenheit(n))],
  ['spreads in Fahrenheit', (n: number) => fahrenheitSpreadFromCelsius(celsiusSpreadFromFahrenheit(n))],
  ['mils', (n: number) => milsFromMicrometres(micrometresFromMils(n))],
  ['inches', (n: number) => inchesFromMillimetres(millimetresFromInches(n))],
  ['square feet', (n: number) => squareFeetFromSquareMetres(squareMetresFromSquareFeet(n))],
  ['pounds a gallon', (n: number) => poundsPerGallonFromGramsPerLitre(gramsPerLitreFromPoundsPerGallon(n))],
  [
    'square feet a gallon',
    (n: number) => squareFeetPerUsGallonFromSquareMetresPerLitre(squareMetresPerLitreFromSquareFeetPerUsGallon(n)),
  ],
])('given any %s, then there and back is the same', (_, thereAndBack) => {
  fc.assert(
    fc.property(between(0, 1e6), (n) => {
      expectClose(thereAndBack(n), n);
    }),
  );
});
