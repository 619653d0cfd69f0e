// Breathing air for supplied-air respirators against 29 CFR 1910.134(i), reading by reading.

import {
  type Celsius,
  celsius,
  celsiusFromFahrenheit,
  celsiusSpreadFromFahrenheit,
  type MilligramsPerCubicMetre,
  milligramsPerCubicMetre,
  type PartsPerMillion,
  type Percent,
  partsPerMillion,
  percent,
} from '../units.ts';

export const breathingAirLimits = {
  leastOxygen: percent(19.5),
  mostOxygen: percent(23.5),
  mostOil: milligramsPerCubicMetre(5),
  mostCarbonMonoxide: partsPerMillion(10),
  mostCarbonDioxide: partsPerMillion(1000),
  /** Dew point at one atmosphere: -50 degF, which the rule prints as -45.6 degC. */
  cylinderDewPoint: celsiusFromFahrenheit(-50),
  /** Dew point below the ambient by 10 degF as an interval, 5.56 degC. */
  compressorDewPointSpread: celsiusSpreadFromFahrenheit(10),
} as const;

/** `undefined`: not read, which is a failure like any other. */
export interface BreathingAir {
  readonly oxygen: Percent | undefined;
  readonly oil: MilligramsPerCubicMetre | undefined;
  readonly carbonMonoxide: PartsPerMillion | undefined;
  readonly carbonDioxide: PartsPerMillion | undefined;
  readonly odour: 'none' | 'noticeable' | undefined;
  /** At one atmosphere. */
  readonly dewPoint: Celsius | undefined;
  readonly supply: { readonly kind: 'cylinder' } | { readonly kind: 'compressor'; readonly ambient: Celsius };
}

export type BreathingAirItem = 'oxygen' | 'oil' | 'carbon-monoxide' | 'carbon-dioxide' | 'odour' | 'dew-point';

/** What fails or was not read; empty when every item was read and lies within. */
export function breathingAirFailures(air: BreathingAir): readonly BreathingAirItem[] {
  const within: Record<BreathingAirItem, boolean> = {
    oxygen: between(air.oxygen, breathingAirLimits.leastOxygen, breathingAirLimits.mostOxygen),
    oil: between(air.oil, 0, breathingAirLimits.mostOil),
    'carbon-monoxide': between(air.carbonMonoxide, 0, breathingAirLimits.mostCarbonMonoxide),
    'carbon-dioxide': between(air.carbonDioxide, 0, breathingAirLimits.mostCarbonDioxide),
    odour: air.odour === 'none',
    'dew-point': between(air.dewPoint, -273.15, highestDewPoint(air.supply)),
  };
  const items: readonly BreathingAirItem[] = [
    'oxygen',
    'oil',
    'carbon-monoxide',
    'carbon-dioxide',
    'odour',
    'dew-point',
  ];
  return items.filter((item) => !within[item]);
}

/** The highest dew point that the supply's air may have. */
export function highestDewPoint(supply: BreathingAir['supply']): Celsius {
  if (supply.kind === 'cylinder') return breathingAirLimits.cylinderDewPoint;
  return celsius(Math.max(-273.15, supply.ambient - breathingAirLimits.compressorDewPointSpread));
}

function between(read: number | undefined, lowest: number, highest: number): boolean {
  return read !== undefined && read >= lowest && read <= highest;
}
