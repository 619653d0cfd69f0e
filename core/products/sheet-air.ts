// What was read of the air and the steel against the sheet's window. A spread is judged only where a surface was read:
// it belongs to the surface, not to the room.

import { type Breach, checkClimate } from '../calc/climate-window.ts';
import { isRefused } from '../calc/refusal.ts';
import type { Objection } from '../objections.ts';
import type { Celsius, Percent } from '../units.ts';
import type { Sheet } from './sheet.ts';

export interface AirRead {
  readonly celsius: Celsius | undefined;
  readonly relativeHumidityPercent: Percent | undefined;
  readonly surfaceCelsius: Celsius | undefined;
}

/** Empty where all is within the window, and where temperature or humidity was not read: that is asked for elsewhere. */
export function airBreaches(sheet: Sheet, read: AirRead): readonly Breach[] {
  const { celsius, relativeHumidityPercent, surfaceCelsius } = read;
  if (celsius === undefined || relativeHumidityPercent === undefined) return [];
  const { lowestRelativeHumidityPercent, leastSpreadCelsius } = sheet.air;
  const verdict = checkClimate(
    {
      lowestAirCelsius: sheet.air.lowestCelsius,
      highestAirCelsius: sheet.air.highestCelsius,
      highestHumidityPercent: sheet.air.highestRelativeHumidityPercent,
      ...(lowestRelativeHumidityPercent === undefined ? {} : { lowestHumidityPercent: lowestRelativeHumidityPercent }),
      ...(surfaceCelsius === undefined ? {} : { leastSpreadCelsius }),
    },
    { airCelsius: celsius, humidityPercent: relativeHumidityPercent, surfaceCelsius },
  );
  return isRefused(verdict) ? [] : verdict.breaches;
}

export function airObjection(sheet: Sheet, read: AirRead): Objection | undefined {
  const breaches = airBreaches(sheet, read);
  return breaches.length === 0 ? undefined : { code: 'air-outside', breaches };
}
