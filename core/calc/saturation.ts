// Saturation pressure of water vapour, and its inverse: the equations that every sum about air stands on.

import { type Celsius, celsius, type Kelvin, kelvinFromCelsius, type Pascals, pascals } from '../units.ts';
import { bisect } from './bisect.ts';
import { outOfRange, type Result } from './refusal.ts';

/** Ends of the two equations: ice from -100 degC, liquid water to 200 degC. */
export const saturationLowest = celsius(-100);
export const saturationHighest = celsius(200);

/** Where ice, water and vapour meet; the two equations cross here within 0.01 %. */
const triplePoint = 0.01;

/**
 * Pressure of the vapour that a surface at this temperature just holds: over ice up to the triple point, over liquid
 * water above it. ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 5 and 6 (Hyland and Wexler 1983).
 */
export function saturationPressure(temperature: Celsius): Result<Pascals> {
  return (
    outOfRange('temperature', temperature, saturationLowest, saturationHighest) ?? pascals(saturationAt(temperature))
  );
}

/** The temperature at which vapour of this pressure just settles: as frost up to the triple point, as dew above it. */
export function saturationTemperature(vapour: Pascals): Result<Celsius> {
  const refusal = outOfRange(
    'vapour-pressure',
    vapour,
    saturationAt(saturationLowest),
    saturationAt(saturationHighest),
  );
  if (refusal !== undefined) return refusal;
  return celsius(bisect(saturationLowest, saturationHighest, (at) => saturationAt(celsius(at)) < vapour));
}

/**
 * Pressure over liquid water, supercooled below 0 degC: what a relative humidity is a share of. Below the triple point
 * the WMO form of the Magnus equation (6.112 hPa, 17.62, 243.12 degC), which holds from -45 to 60 degC.
 */
export function liquidSaturationPressure(temperature: Celsius): Result<Pascals> {
  const refusal = outOfRange('temperature', temperature, -45, saturationHighest);
  if (refusal !== undefined) return refusal;
  if (temperature > triplePoint) return pascals(saturationAt(temperature));
  return pascals(611.2 * Math.exp((17.62 * temperature) / (243.12 + temperature)));
}

function saturationAt(temperature: Celsius): number {
  const t = kelvinFromCelsius(temperature);
  return Math.exp(temperature <= triplePoint ? lnOverIce(t) : lnOverWater(t));
}

const lnOverIce = (t: Kelvin): number =>
  -5.6745359e3 / t +
  6.3925247 -
  9.677843e-3 * t +
  6.2215701e-7 * t ** 2 +
  2.0747825e-9 * t ** 3 -
  9.484024e-13 * t ** 4 +
  4.1635019 * Math.log(t);

const lnOverWater = (t: Kelvin): number =>
  -5.8002206e3 / t +
  1.3914993 -
  4.8640239e-2 * t +
  4.1764768e-5 * t ** 2 -
  1.4452093e-8 * t ** 3 +
  6.5459673 * Math.log(t);
