// The air of a room against the steel in it: dew point and humidity at the surface.
//
// One convention below 0 degC, cautious on both sides. A relative humidity is a share of saturation over liquid water
// at every temperature, as hygrometers are made to read (WMO guide to instruments); what settles below 0 degC settles
// as frost, which comes sooner than dew would, so there the dew point is the frost point. Neither ever lets a surface
// look drier than it is.

import { isFailed } from '../failed.ts';
import { type Celsius, type Pascals, type Percent, pascals, percent } from '../units.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';
import {
  liquidSaturationPressure,
  saturationHighest,
  saturationLowest,
  saturationPressure,
  saturationTemperature,
} from './saturation.ts';

/** Partial pressure of the water vapour in the air. Refuses air outside -45 to 60 degC, humidity outside 0 to 100 %. */
export function vapourPressure(air: Celsius, humidity: Percent): Result<Pascals> {
  const refusal = notAir(air) ?? outOfRange('relative-humidity', humidity, 0, 100);
  if (refusal !== undefined) return refusal;
  const saturated = liquidSaturationPressure(air);
  return isFailed(saturated) ? saturated : pascals((saturated * humidity) / 100);
}

/**
 * Dew point, below 0 degC frost point. Refuses what `vapourPressure` refuses, and air so dry that its frost point
 * would lie below -100 degC.
 */
export function dewPoint(air: Celsius, humidity: Percent): Result<Celsius> {
  const vapour = vapourPressure(air, humidity);
  if (isFailed(vapour)) return vapour;
  const found = saturationTemperature(vapour);
  return isFailed(found) ? tooDry(air, humidity) : found;
}

/** Where both were read, and the sum takes them. */
export function dewPointOf(air: Celsius | undefined, humidity: Percent | undefined): Celsius | undefined {
  const found = air === undefined || humidity === undefined ? undefined : dewPoint(air, humidity);
  return found === undefined || isFailed(found) ? undefined : found;
}

/** Humidity of that same air where it touches the surface; above 100 % when water settles on it. */
export function humidityAtSurface(air: Celsius, humidity: Percent, surface: Celsius): Result<Percent> {
  const vapour = vapourPressure(air, humidity);
  if (isFailed(vapour)) return vapour;
  const refusal = notASurface(surface);
  if (refusal !== undefined) return refusal;
  const saturated = saturationPressure(surface);
  return isFailed(saturated) ? saturated : percent((100 * vapour) / saturated);
}

/** Room air that the equations and their checks cover. */
export function notAir(air: Celsius): Refusal | undefined {
  return outOfRange('air-temperature', air, -45, 60);
}

function notASurface(surface: Celsius): Refusal | undefined {
  return outOfRange('surface-temperature', surface, saturationLowest, saturationHighest);
}

function tooDry(air: Celsius, humidity: Percent): Refusal {
  const least = saturationPressure(saturationLowest);
  const most = liquidSaturationPressure(air);
  const lowest = isFailed(least) || isFailed(most) ? 0 : (100 * least) / most;
  return { failed: 'out-of-range', what: 'relative-humidity', given: humidity, lowest, highest: 100 };
}
