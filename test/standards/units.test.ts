// Conversions against GNU Units 2.22; the exact ones are definitions.

import {
  celsius,
  celsiusFromFahrenheit,
  celsiusSpread,
  celsiusSpreadFromFahrenheit,
  cubicMetresFromCubicFeet,
  cubicMetresPerLitreFromCubicFeetPerUsGallon,
  fahrenheitFromCelsius,
  fahrenheitSpreadFromCelsius,
  gramsFromOunces,
  gramsFromPounds,
  kelvinFromCelsius,
  litresFromUsFluidOunces,
  litresFromUsGallons,
  metresPerSecondFromFeetPerMinute,
  micrometresFromMils,
  millimetresFromInches,
  squareMetresFromSquareFeet,
} from '../../core/units.ts';
import { checkPublished, derived, type PublishedCase, run, seen } from './published-case.ts';

const units = 'GNU Units 2.22';
const rounding = 1e-12;

const conversions: readonly PublishedCase[] = [
  run('a US gallon is 3.785411784 L', units, () => litresFromUsGallons(1), 3.785411784, 0),
  run('a US fluid ounce is 29.5735295625 mL', units, () => litresFromUsFluidOunces(1) * 1000, 29.5735295625, rounding),
  run('128 of them are a gallon', units, () => litresFromUsFluidOunces(128), 3.785411784, rounding),
  run('a pound is 453.59237 g', units, () => gramsFromPounds(1), 453.59237, 0),
  run('an ounce is 28.349523125 g, a mass and not the fluid ounce', units, () => gramsFromOunces(1), 28.349523125, 0),
  run('an inch is 25.4 mm', units, () => millimetresFromInches(1), 25.4, 0),
  run('a mil is 25.4 um, never a millimetre', units, () => micrometresFromMils(1), 25.4, 0),
  run('a square foot is 0.09290304 m2', units, () => squareMetresFromSquareFeet(1), 0.09290304, 0),
  run('a cubic foot is 28.316846592 L', units, () => cubicMetresFromCubicFeet(1) * 1000, 28.316846592, rounding),
  run('a foot a minute is 0.00508 m/s', units, () => metresPerSecondFromFeetPerMinute(1), 0.00508, rounding),
  run(
    'a cubic foot a gallon is 0.0074805195 m3/L',
    units,
    () => cubicMetresPerLitreFromCubicFeetPerUsGallon(1),
    0.0074805195,
    1e-10,
  ),
];

const temperatures: readonly PublishedCase[] = [
  run('70 F are 21.1111 degC', units, () => celsiusFromFahrenheit(70), 21.1111, 0.0001),
  run('23 degC are 73.4 F', units, () => fahrenheitFromCelsius(celsius(23)), 73.4, rounding),
  run('-50 F are -45.5556 degC', units, () => celsiusFromFahrenheit(-50), -45.5556, 0.0001),
  seen('which is printed as -45.6', '29 CFR 1910.134(i)', () => celsiusFromFahrenheit(-50), -45.6, 0.05),
  run(
    'a spread of 5 F is 2.7778 degC, with nothing taken off',
    units,
    () => celsiusSpreadFromFahrenheit(5),
    2.7778,
    0.0001,
  ),
  run('a spread of 3 degC is 5.4 F', units, () => fahrenheitSpreadFromCelsius(celsiusSpread(3)), 5.4, rounding),
  run('a spread of 10 F is 5.5556 degC', units, () => celsiusSpreadFromFahrenheit(10), 5.5556, 0.0001),
  derived('0 degC are 273.15 K', 'definition of the degree Celsius', () => kelvinFromCelsius(celsius(0)), 273.15),
  derived(
    'a US gallon is not the imperial one of 4.54609 L',
    'exact definitions',
    () => litresFromUsGallons(1) / 4.54609,
    0.83267,
    0.00001,
  ),
];

checkPublished('units', { seen: 1, run: 17, derived: 2, 'from-memory': 0 }, [...conversions, ...temperatures]);
