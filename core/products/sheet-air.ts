// What was read of the air and the steel against the sheet's window. A spread is judged only where a surface was read:
// it belongs to the surface, not to the room.

import { humidityAtSurface } from '../calc/air.ts';
import { type Breach, checkAirTemperature, checkClimate, checkWithoutSpread } from '../calc/climate-window.ts';
import { isFailed } from '../failed.ts';
import type { Objection } from '../objections.ts';
import type { Edition } from '../rule-editions.ts';
import { type Celsius, type Percent, percent } from '../units.ts';
import type { Sheet } from './sheet.ts';

export interface AirRead {
  readonly celsius: Celsius | undefined;
  readonly relativeHumidityPercent: Percent | undefined;
  readonly surfaceCelsius: Celsius | undefined;
  /** How warm the air was when its humidity was read, where that is known. */
  readonly humidityCelsius?: Celsius | undefined;
}

/** What the same air has at the temperature read since: its moisture stays. `undefined` where both were read together. */
export function humiditySince({ celsius, relativeHumidityPercent, humidityCelsius }: AirRead): Percent | undefined {
  if (celsius === undefined || relativeHumidityPercent === undefined || humidityCelsius === undefined) return undefined;
  if (celsius === humidityCelsius) return undefined;
  const since = humidityAtSurface(humidityCelsius, relativeHumidityPercent, celsius);
  return isFailed(since) ? undefined : percent(Math.min(100, since));
}

/**
 * Empty where what was read is within the window. What nobody read is not judged here. A humidity read before the
 * temperature is judged as it was read and as it would be since.
 */
export function airBreaches(sheet: Sheet, read: AirRead, edition: Edition): readonly Breach[] {
  const asRead = breachesOf(sheet, read, edition);
  const since = edition < 6 || asRead.length > 0 ? undefined : humiditySince(read);
  return since === undefined ? asRead : breachesOf(sheet, { ...read, relativeHumidityPercent: since }, edition);
}

function breachesOf(sheet: Sheet, read: AirRead, edition: Edition): readonly Breach[] {
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
