// How long a sheet says a thing takes at a temperature: the four shapes a sheet may use, and the range in which it
// gives a figure at all. Outside that range there is no figure, and nobody extrapolates.

import type { Celsius, KilojoulesPerMole, Minutes } from '../units.ts';
import { kelvinFromCelsius, minutes } from '../units.ts';

/** Molar gas constant, J/(mol K), exact since 2019 (8.31446261815324). */
export const gasConstant = 8.31446261815324;

export interface TemperatureRange {
  readonly lowestCelsius: Celsius;
  readonly highestCelsius: Celsius;
}

export interface TablePoint {
  readonly celsius: Celsius;
  readonly minutes: Minutes;
}

export type RateLaw =
  /** The same duration at every temperature of the range; without a range, at every temperature, read or not. */
  | { readonly kind: 'plain'; readonly minutes: Minutes; readonly range?: TemperatureRange }
  /** Points with a straight line of minutes between them; two at least, temperatures rising. */
  | { readonly kind: 'table'; readonly points: readonly TablePoint[] }
  /** The rate multiplies by `factorPerTenDegrees` every 10 degC (the rule of ten). */
  | {
      readonly kind: 'q10';
      readonly minutes: Minutes;
      readonly atCelsius: Celsius;
      readonly factorPerTenDegrees: number;
      readonly range: TemperatureRange;
    }
  /** k2/k1 = exp(E/R (1/T1 - 1/T2)), temperatures in kelvin. */
  | {
      readonly kind: 'arrhenius';
      readonly minutes: Minutes;
      readonly atCelsius: Celsius;
      readonly activation: KilojoulesPerMole;
      readonly range: TemperatureRange;
    };

export type DurationAt =
  | { readonly given: true; readonly minutes: Minutes }
  | { readonly given: false; readonly side: 'below' | 'above' };

/** The sheet's duration at a temperature, or on which side of its range the temperature lies. */
export function durationAt(law: RateLaw, temperature: Celsius): DurationAt {
  const range = rangeOf(law);
  if (range !== undefined && temperature < range.lowestCelsius) return { given: false, side: 'below' };
  if (range !== undefined && temperature > range.highestCelsius) return { given: false, side: 'above' };
  return { given: true, minutes: durationWithin(law, temperature) };
}

/** `undefined` for a plain duration that holds at every temperature. */
export function rangeOf(law: RateLaw): TemperatureRange | undefined {
  if (law.kind !== 'table') return law.range;
  const first = law.points[0];
  const last = law.points.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('a table of durations needs points');
  return { lowestCelsius: first.celsius, highestCelsius: last.celsius };
}

/** Whether the law needs a temperature at all: a plain duration without a range is proved by time alone. */
export function needsTemperature(law: RateLaw): boolean {
  return rangeOf(law) !== undefined;
}

/** The longest duration that the sheet gives anywhere in its range. */
export function slowest(law: RateLaw): Minutes {
  return extreme(law, Math.max);
}

/** The shortest duration that the sheet gives anywhere in its range. */
export function fastest(law: RateLaw): Minutes {
  return extreme(law, Math.min);
}

function extreme(law: RateLaw, choose: (...durations: number[]) => number): Minutes {
  if (law.kind === 'plain') return law.minutes;
  if (law.kind === 'table') return minutes(choose(...law.points.map((point) => point.minutes)));
  const { lowestCelsius, highestCelsius } = law.range;
  return minutes(choose(durationWithin(law, lowestCelsius), durationWithin(law, highestCelsius)));
}

function durationWithin(law: RateLaw, temperature: Celsius): Minutes {
  switch (law.kind) {
    case 'plain':
      return law.minutes;
    case 'table':
      return onTheLine(law.points, temperature);
    case 'q10':
      return minutes(law.minutes / law.factorPerTenDegrees ** ((temperature - law.atCelsius) / 10));
    case 'arrhenius': {
      const exponent =
        ((law.activation * 1000) / gasConstant) *
        (1 / kelvinFromCelsius(law.atCelsius) - 1 / kelvinFromCelsius(temperature));
      return minutes(law.minutes / Math.exp(exponent));
    }
  }
}

function onTheLine(points: readonly TablePoint[], temperature: Celsius): Minutes {
  let before = points[0];
  for (const point of points) {
    if (before !== undefined && point.celsius >= temperature) {
      const width = point.celsius - before.celsius;
      const share = width === 0 ? 1 : (temperature - before.celsius) / width;
      return minutes(before.minutes + share * (point.minutes - before.minutes));
    }
    before = point;
  }
  throw new RangeError(`no table point reaches ${temperature} degC`);
}
