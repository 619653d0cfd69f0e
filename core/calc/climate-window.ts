// Go or no-go: what was read of the air and the steel against what a sheet allows, as data.

import { isFailed } from '../failed.ts';
import { type Celsius, type CelsiusSpread, celsiusSpread, type Percent } from '../units.ts';
import { dewPoint, humidityAtSurface } from './air.ts';
import { firstRefusal } from './amount.ts';
import { outOfRange, type Result } from './refusal.ts';

/** A limit that the sheet does not give is absent: absent is not checked, and the caller says so. */
export interface ClimateWindow {
  readonly lowestAirCelsius?: Celsius;
  readonly highestAirCelsius?: Celsius;
  readonly lowestSurfaceCelsius?: Celsius;
  readonly highestSurfaceCelsius?: Celsius;
  readonly lowestHumidityPercent?: Percent;
  readonly highestHumidityPercent?: Percent;
  /** Surface less dew point. 3 degC (5 degF as an interval) in the FHWA field manual and MIL-HDBK-1110 9.6.6. */
  readonly leastSpreadCelsius?: CelsiusSpread;
}

export interface Climate {
  readonly airCelsius: Celsius;
  readonly humidityPercent: Percent;
  /** `undefined`: nobody read it. */
  readonly surfaceCelsius: Celsius | undefined;
}

export type Breach =
  | { readonly limit: keyof ClimateWindow; readonly given: number; readonly allowed: number; readonly by: number }
  /** The sheet limits it and nobody read it: a no-go like any other. */
  | { readonly limit: keyof ClimateWindow; readonly given: 'not-read'; readonly allowed: number };

export interface ClimateVerdict {
  readonly dewPointCelsius: Celsius;
  readonly spreadCelsius: CelsiusSpread | undefined;
  readonly surfaceHumidityPercent: Percent | undefined;
  /** Empty: within every limit that the window holds. */
  readonly breaches: readonly Breach[];
}

/** A reading exactly on a limit is within it. */
export function checkClimate(window: ClimateWindow, climate: Climate): Result<ClimateVerdict> {
  const { airCelsius, humidityPercent, surfaceCelsius } = climate;
  const refusal = firstRefusal(Object.entries(window), ([limit, allowed]) => outOfRange(limit, allowed, -273.15, 1000));
  if (refusal !== undefined) return refusal;
  const dew = dewPoint(airCelsius, humidityPercent);
  if (isFailed(dew)) return dew;
  const wet = surfaceCelsius === undefined ? undefined : humidityAtSurface(airCelsius, humidityPercent, surfaceCelsius);
  if (isFailed(wet)) return wet;
  const spread = surfaceCelsius === undefined ? undefined : celsiusSpread(surfaceCelsius - dew);
  const breaches = breachesOf(window, { airCelsius, humidityPercent, surfaceCelsius, spreadCelsius: spread });
  return { dewPointCelsius: dew, spreadCelsius: spread, surfaceHumidityPercent: wet, breaches };
}

/**
 * Where the dew point is refused (no air is at 0 %) or the spread to this surface is: what could not be summed counts as
 * not read, and what the sheet limits of it is a no-go. What was read well is judged as ever.
 */
export function checkWithoutSpread(window: ClimateWindow, climate: Climate): readonly Breach[] {
  const { airCelsius, humidityPercent } = climate;
  const isAir = !isFailed(dewPoint(airCelsius, humidityPercent));
  const read = { ...climate, humidityPercent: isAir ? humidityPercent : undefined, spreadCelsius: undefined };
  return breachesOf(window, read);
}

interface ClimateRead {
  readonly airCelsius: Celsius;
  readonly humidityPercent: Percent | undefined;
  readonly surfaceCelsius: Celsius | undefined;
  readonly spreadCelsius: CelsiusSpread | undefined;
}

function breachesOf(window: ClimateWindow, read: ClimateRead): readonly Breach[] {
  const { airCelsius, humidityPercent, surfaceCelsius, spreadCelsius } = read;
  return [
    below('lowestAirCelsius', window, airCelsius),
    above('highestAirCelsius', window, airCelsius),
    below('lowestSurfaceCelsius', window, surfaceCelsius),
    above('highestSurfaceCelsius', window, surfaceCelsius),
    below('lowestHumidityPercent', window, humidityPercent),
    above('highestHumidityPercent', window, humidityPercent),
    below('leastSpreadCelsius', window, spreadCelsius),
  ].filter((breach) => breach !== undefined);
}

/** The air's temperature alone, where nobody read the humidity. */
export function checkAirTemperature(window: ClimateWindow, airCelsius: Celsius): readonly Breach[] {
  const breaches = [below('lowestAirCelsius', window, airCelsius), above('highestAirCelsius', window, airCelsius)];
  return breaches.filter((breach) => breach !== undefined);
}

function below(limit: keyof ClimateWindow, window: ClimateWindow, given: number | undefined): Breach | undefined {
  const allowed = window[limit];
  if (allowed === undefined) return undefined;
  if (given === undefined) return { limit, given: 'not-read', allowed };
  return given < allowed ? { limit, given, allowed, by: allowed - given } : undefined;
}

function above(limit: keyof ClimateWindow, window: ClimateWindow, given: number | undefined): Breach | undefined {
  const allowed = window[limit];
  if (allowed === undefined) return undefined;
  if (given === undefined) return { limit, given: 'not-read', allowed };
  return given > allowed ? { limit, given, allowed, by: given - allowed } : undefined;
}
