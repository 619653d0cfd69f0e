// Breathing air for supplied-air respirators, reading by reading: against 29 CFR 1910.134(i), and where another country's law holds
// against EN 12021:2014, whose figures are from memory.

import {
  type Celsius,
  type CelsiusSpread,
  celsius,
  celsiusFromFahrenheit,
  celsiusSpread,
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

/** EN 12021:2014, from memory: a compressor's pressure dew point 5 degC below the lowest temperature, a cylinder's 50 mg/m3 of water. */
const en12021Limits = {
  leastOxygen: percent(20),
  mostOxygen: percent(22),
  mostOil: milligramsPerCubicMetre(0.5),
  mostCarbonMonoxide: partsPerMillion(5),
  mostCarbonDioxide: partsPerMillion(500),
  cylinderDewPoint: celsius(-46),
  compressorDewPointSpread: celsiusSpread(5),
};

export const breathingStandards = ['grade-d', 'en-12021'] as const;
export type BreathingStandard = (typeof breathingStandards)[number];

export interface BreathingLimits {
  readonly leastOxygen: Percent;
  readonly mostOxygen: Percent;
  readonly mostOil: MilligramsPerCubicMetre;
  readonly mostCarbonMonoxide: PartsPerMillion;
  readonly mostCarbonDioxide: PartsPerMillion;
  readonly cylinderDewPoint: Celsius;
  readonly compressorDewPointSpread: CelsiusSpread;
}

export const limitsOf: Readonly<Record<BreathingStandard, BreathingLimits>> = {
  'grade-d': breathingAirLimits,
  'en-12021': en12021Limits,
};

/** `undefined`: not read, which is a failure like any other. */
export interface BreathingAir {
  readonly oxygen: Percent | undefined;
  readonly oil: MilligramsPerCubicMetre | undefined;
  readonly carbonMonoxide: PartsPerMillion | undefined;
  readonly carbonDioxide: PartsPerMillion | undefined;
  readonly odour: 'none' | 'noticeable' | undefined;
  /** At one atmosphere. */
  readonly dewPoint: Celsius | undefined;
  readonly supply:
    | { readonly kind: 'cylinder' }
    | { readonly kind: 'compressor'; readonly ambient: Celsius | undefined };
}

export const breathingAirItems = ['oxygen', 'oil', 'carbon-monoxide', 'carbon-dioxide', 'odour', 'dew-point'] as const;
export type BreathingAirItem = (typeof breathingAirItems)[number];

export interface ItemJudged {
  readonly item: BreathingAirItem;
  readonly is: 'within' | 'outside' | 'not-read';
}

/** Item by item. A dew point is not read where nobody knows what it is to stay below. */
export function judgedBreathingAir(air: BreathingAir, standard: BreathingStandard): readonly ItemJudged[] {
  const limits = limitsOf[standard];
  const highest = highestDewPoint(air.supply, standard);
  const judged: Readonly<Record<BreathingAirItem, ItemJudged['is']>> = {
    oxygen: between(air.oxygen, limits.leastOxygen, limits.mostOxygen),
    oil: between(air.oil, 0, limits.mostOil),
    'carbon-monoxide': between(air.carbonMonoxide, 0, limits.mostCarbonMonoxide),
    'carbon-dioxide': between(air.carbonDioxide, 0, limits.mostCarbonDioxide),
    odour: air.odour === undefined ? 'not-read' : air.odour === 'none' ? 'within' : 'outside',
    'dew-point': highest === undefined ? 'not-read' : between(air.dewPoint, -273.15, highest),
  };
  return breathingAirItems.map((item) => ({ item, is: judged[item] }));
}

/** The highest dew point that the supply's air may have. */
export function highestDewPoint(
  supply: BreathingAir['supply'],
  standard: BreathingStandard = 'grade-d',
): Celsius | undefined {
  const { cylinderDewPoint, compressorDewPointSpread } = limitsOf[standard];
  if (supply.kind === 'cylinder') return cylinderDewPoint;
  return supply.ambient === undefined
    ? undefined
    : celsius(Math.max(-273.15, supply.ambient - compressorDewPointSpread));
}

function between(read: number | undefined, lowest: number, highest: number): ItemJudged['is'] {
  if (read === undefined) return 'not-read';
  return read >= lowest && read <= highest ? 'within' : 'outside';
}
