// The air of a place as last read, with its dew point and, where a surface was read, the spread over it.

import { dewPoint } from '../../core/calc/air.ts';
import { isFailed } from '../../core/failed.ts';
import { airAt } from '../../core/place/place.ts';
import { type Celsius, celsiusSpread, type EpochMs } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf, timedFact } from './facts.ts';

export function airFacts(telling: Telling, placeName: string): readonly CardFact[] {
  const place = telling.shop.places.get(placeName);
  const { temperature, humidity } = airAt(place, telling.now);
  const celsius = temperature?.celsius;
  const percent = humidity?.relativeHumidityPercent;
  const dew = celsius === undefined || percent === undefined ? undefined : dewPoint(celsius, percent);
  const dewCelsius = dew === undefined || isFailed(dew) ? undefined : dew;
  const surface = place?.surfaces.findLast((reading) => reading.at <= telling.now)?.celsius;
  return [
    ...factsOf(telling, { 'air-temperature': celsius }),
    ...(temperature === undefined || celsius === undefined ? [] : [readAt(telling, temperature.at)]),
    ...factsOf(telling, { humidity: percent, ...overDewPoint(dewCelsius, surface) }),
  ];
}

/** Where the dew point is known. */
function overDewPoint(dew: Celsius | undefined, surface: Celsius | undefined) {
  if (dew === undefined) return {};
  const spread = surface === undefined ? undefined : celsiusSpread(surface - dew);
  return { 'dew-point': dew, 'surface-temperature': surface, spread };
}

/** Not later than shown. */
const readAt = (telling: Telling, at: EpochMs): CardFact =>
  timedFact(telling, 'air-read-at', telling.figures.iso(at), telling.figures.timeDown(at));
