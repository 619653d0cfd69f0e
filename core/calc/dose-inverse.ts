// The dose turned round: what temperature finishes the rest of an at-least clock in so many minutes, and up to what
// temperature an at-most clock lasts so many. Only within the sheet's range; past it nobody extrapolates.

import type { Celsius, Minutes } from '../units.ts';
import { celsius, kelvinFromCelsius } from '../units.ts';
import { durationAt, gasConstant, type RateLaw, rangeOf } from './rate-law.ts';
import { outOfRange, type Result } from './refusal.ts';

export type TemperatureNeeded =
  /** The law does not ask for a temperature. */
  | { readonly needed: 'any' }
  /** From here up to the top of the sheet's range. */
  | { readonly needed: 'from'; readonly celsius: Celsius }
  /** From the bottom of the sheet's range up to here. */
  | { readonly needed: 'up-to'; readonly celsius: Celsius };

/**
 * The lowest temperature at which a clock at `progress` is done within `available` minutes, there and at every warmer
 * one that the sheet covers. Refuses where even the top of the sheet's range takes longer.
 */
export function temperatureToFinish(law: RateLaw, progress: number, available: Minutes): Result<TemperatureNeeded> {
  const refused = refuseAsk(progress, available);
  if (refused !== undefined) return refused;
  const wanted = available / (1 - progress);
  const ends = endsOf(law).toReversed();
  const hottest = ends[0];
  if (hottest === undefined) return withoutTemperature(law, wanted, 'finish');
  if (hottest.minutes > wanted) return neverReached(available, hottest.minutes * (1 - progress));
  let warmer = hottest;
  for (const cooler of ends) {
    if (cooler.minutes > wanted) return { needed: 'from', celsius: crossing(law, cooler, warmer, wanted) };
    warmer = cooler;
  }
  return { needed: 'from', celsius: celsius(warmer.celsius) };
}

/**
 * The highest temperature up to which a clock at `progress` still lasts `available` minutes, there and at every cooler
 * one that the sheet covers. Refuses where even the bottom of the sheet's range is over sooner.
 */
export function temperatureToLast(law: RateLaw, progress: number, available: Minutes): Result<TemperatureNeeded> {
  const refused = refuseAsk(progress, available);
  if (refused !== undefined) return refused;
  const wanted = available / (1 - progress);
  const ends = endsOf(law);
  const coldest = ends[0];
  if (coldest === undefined) return withoutTemperature(law, wanted, 'last');
  if (coldest.minutes < wanted) return neverReached(available, coldest.minutes * (1 - progress));
  let cooler = coldest;
  for (const warmer of ends) {
    if (warmer.minutes < wanted) return { needed: 'up-to', celsius: crossing(law, cooler, warmer, wanted) };
    cooler = warmer;
  }
  return { needed: 'up-to', celsius: celsius(cooler.celsius) };
}

interface End {
  readonly celsius: number;
  readonly minutes: number;
}

/** Where the law's straight or curved pieces begin and end, cold to warm; none for a law without a range. */
function endsOf(law: RateLaw): readonly End[] {
  if (law.kind === 'table') return law.points;
  const range = rangeOf(law);
  if (range === undefined) return [];
  return [range.lowestCelsius, range.highestCelsius].flatMap((at) => {
    const found = durationAt(law, at);
    return found.given ? [{ celsius: at, minutes: found.minutes }] : [];
  });
}

/** The temperature between two ends, one shorter and one longer than wanted, at which the law takes what is wanted. */
function crossing(law: RateLaw, cold: End, warm: End, wanted: number): Celsius {
  switch (law.kind) {
    case 'plain':
    case 'table': {
      const share = (cold.minutes - wanted) / (cold.minutes - warm.minutes);
      return celsius(cold.celsius + share * (warm.celsius - cold.celsius));
    }
    case 'q10': {
      const degrees = (10 * Math.log(law.minutes / wanted)) / Math.log(law.factorPerTenDegrees);
      return within(law.atCelsius + degrees, cold, warm);
    }
    case 'arrhenius': {
      const perKelvin =
        1 / kelvinFromCelsius(law.atCelsius) - (gasConstant / (law.activation * 1000)) * Math.log(law.minutes / wanted);
      return within(1 / perKelvin - 273.15, cold, warm);
    }
  }
}

/** Rounding of the logarithm must not lead past the sheet's range. */
function within(found: number, cold: End, warm: End): Celsius {
  return celsius(Math.min(warm.celsius, Math.max(cold.celsius, found)));
}

function withoutTemperature(law: RateLaw, wanted: number, aim: 'finish' | 'last'): Result<TemperatureNeeded> {
  if (law.kind !== 'plain') return { failed: 'no-figure', what: 'temperature range' };
  const reached = aim === 'finish' ? law.minutes <= wanted : law.minutes >= wanted;
  return reached ? { needed: 'any' } : neverReached(wanted, law.minutes);
}

function neverReached(given: number, limit: number): Result<TemperatureNeeded> {
  return { failed: 'never-reached', what: 'minutes available', given, limit };
}

function refuseAsk(progress: number, available: Minutes) {
  // Nothing is left to do at 1, and a year is longer than any clock of the trade.
  return (
    outOfRange('progress', progress, 0, 1 - 1e-9) ?? outOfRange('minutes available', available, 1e-6, 366 * 24 * 60)
  );
}
