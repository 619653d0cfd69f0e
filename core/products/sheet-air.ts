// What was read of the air and the steel against the sheet's window. A spread is judged only where a surface was read:
// it belongs to the surface, not to the room.

import { type Breach, checkAirTemperature, checkClimate, checkWithoutSpread } from '../calc/climate-window.ts';
import { isFailed } from '../failed.ts';
import type { Objection } from '../objections.ts';
import type { Edition } from '../rule-editions.ts';
import type { Celsius, Percent } from '../units.ts';
import type { Sheet } from './sheet.ts';

export interface AirRead {
  readonly celsius: Celsius | undefined;
  readonly relativeHumidityPercent: Percent | undefined;
  readonly surfaceCelsius: Celsius | undefined;
}

/** Empty where what was read is within the window. What nobody read is not judged here. */
export function airBreaches(sheet: Sheet, read: AirRead, edition: Edition): readonly Breach[] {
  const { celsius, relativeHumidityPercent, surfaceCelsius } = read;
  if (celsius === undefined) return [];
  const temperatures = { lowestAirCelsius: sheet.air.lowestCelsius, highestAirCelsius: sheet.air.highestCelsius };
  if (relativeHumidityPercent === undefined) return checkAirTemperature(temperatures, celsius);
  const { lowestRelativeHumidityPercent, leastSpreadCelsius } = sheet.air;
  const window = {
    ...temperatures,
    highestHumidityPercent: sheet.air.highestRelativeHumidityPercent,
    ...(lowestRelativeHumidityPercent === undefined ? {} : { lowestHumidityPercent: lowestRelativeHumidityPercent }),
    ...(surfaceCelsius === undefined ? {} : { leastSpreadCelsius }),
  };
  const climate = { airCelsius: celsius, humidityPercent: relativeHumidityPercent, surfaceCelsius };
  const verdict = checkClimate(window, climate);
  if (!isFailed(verdict)) return verdict.breaches;
  // Up to the first edition what could not be summed was not judged at all.
  return edition === 1 ? [] : checkWithoutSpread(window, climate);
}

export function airObjection(sheet: Sheet, read: AirRead, edition: Edition): Objection | undefined {
  const breaches = airBreaches(sheet, read, edition);
  return breaches.length === 0 ? undefined : { code: 'air-outside', breaches };
}
