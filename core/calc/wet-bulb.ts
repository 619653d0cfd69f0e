// Humidity from a dry and a wet bulb, and the pressure of the air at an altitude.

import { isFailed } from '../failed.ts';
import { type Celsius, celsius, type Metres, type Pascals, type Percent, pascals, percent } from '../units.ts';
import { notAir } from './air.ts';
import { bisect } from './bisect.ts';
import { outOfRange, type Result } from './refusal.ts';
import { liquidSaturationPressure, saturationPressure } from './saturation.ts';

/** Molar mass of water over that of dry air. ASHRAE Handbook Fundamentals 2017, ch. 1. */
const massRatio = 0.621945;

export const seaLevelPressure = pascals(101_325);

/**
 * Relative humidity from a ventilated psychrometer. ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 33. Refuses a wet
 * bulb below 0 degC, where nobody knows whether ice or water covers it; above the dry bulb; and lower than bone-dry air
 * would make it.
 */
export function humidityFromWetBulb(air: Celsius, wetBulb: Celsius, pressure: Pascals): Result<Percent> {
  const refusal =
    notAir(air) ?? outOfRange('air-pressure', pressure, 50_000, 110_000) ?? outOfRange('wet-bulb', wetBulb, 0, air);
  if (refusal !== undefined) return refusal;
  const water = humidityRatioFromWetBulb(air, wetBulb, pressure);
  const saturated = liquidSaturationPressure(air);
  if (isFailed(saturated)) return saturated;
  if (water < 0) {
    const driest = bisect(wetBulb, air, (at) => humidityRatioFromWetBulb(air, celsius(at), pressure) < 0);
    return { failed: 'out-of-range', what: 'wet-bulb', given: wetBulb, lowest: driest, highest: air };
  }
  return percent(Math.min(100, (100 * vapourFromHumidityRatio(water, pressure)) / saturated));
}

/** Kilograms of vapour to a kilogram of dry air, ideal gases. ASHRAE, same chapter, eq. 20. */
export function humidityRatio(vapour: Pascals, pressure: Pascals): Result<number> {
  const refusal =
    outOfRange('air-pressure', pressure, 50_000, 110_000) ?? outOfRange('vapour-pressure', vapour, 0, pressure * 0.99);
  return refusal ?? (massRatio * vapour) / (pressure - vapour);
}

/**
 * Pressure of the standard atmosphere. ASHRAE, same chapter, eq. 3; to 11,000 m.
 * @awaited by the height of a shop above the sea, which nobody can set yet
 */
export function standardPressure(altitude: Metres): Result<Pascals> {
  return outOfRange('altitude', altitude, 0, 11_000) ?? pascals(101_325 * (1 - 2.25577e-5 * altitude) ** 5.2559);
}

/** Latent heat in kJ/kg, with the specific heats of water, dry air and vapour in kJ/(kg K). */
function humidityRatioFromWetBulb(air: Celsius, wetBulb: Celsius, pressure: Pascals): number {
  const vapour = saturationPressure(wetBulb);
  const saturated = isFailed(vapour) ? vapour : humidityRatio(vapour, pressure);
  if (isFailed(saturated)) throw new RangeError(`no saturated air at a wet bulb of ${wetBulb} degC`);
  return ((2501 - 2.326 * wetBulb) * saturated - 1.006 * (air - wetBulb)) / (2501 + 1.86 * air - 4.186 * wetBulb);
}

function vapourFromHumidityRatio(water: number, pressure: Pascals): number {
  return (pressure * water) / (massRatio + water);
}
