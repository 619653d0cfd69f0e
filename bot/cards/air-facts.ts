// The air of a place as last read, with its dew point and, where a surface was read, the spread over it.

import { dewPointOf } from '../../core/calc/air.ts';
import { sheetsAtHand } from '../../core/part/surface-life.ts';
import { airAt } from '../../core/place/place.ts';
import { type AirRead, airBreaches } from '../../core/products/sheet-air.ts';
import { editionOfToday } from '../../core/rule-editions.ts';
import { type Celsius, celsiusSpread, type EpochMs } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf, timedFact } from './facts.ts';

export function airFacts(telling: Telling, placeName: string): readonly CardFact[] {
  const place = telling.shop.places.get(placeName);
  const { temperature, humidity } = airAt(place, telling.now);
  const celsius = temperature?.celsius;
  const percent = humidity?.relativeHumidityPercent;
  const dew = dewPointOf(celsius, percent);
  const surface = place?.surfaces.findLast((reading) => reading.at <= telling.now)?.celsius;
  return [
    ...factsOf(telling, { 'air-temperature': celsius }),
    ...(temperature === undefined || celsius === undefined ? [] : [readAt(telling, temperature.at)]),
    ...factsOf(telling, {
      humidity: percent,
      ...(dew !== undefined && { 'dew-point': dew, 'surface-temperature': surface, spread: spreadOver(dew, surface) }),
    }),
  ];
}

export const spreadOver = (dew: Celsius | undefined, surface: Celsius | undefined) =>
  dew === undefined || surface === undefined ? undefined : celsiusSpread(surface - dew);

/** The limits of the sheets at hand that such air breaks. */
export function limitsBroken(telling: Telling, read: AirRead): readonly string[] {
  return sheetsAtHand(telling.shop).flatMap((sheet) => {
    const breaches = airBreaches(sheet, read, editionOfToday);
    const broken = () => telling.words.objection({ code: 'air-outside', breaches }, telling.figures);
    return breaches.length === 0 ? [] : [`${sheet.name}: ${broken()}`];
  });
}

/** Not later than shown. */
const readAt = (telling: Telling, at: EpochMs): CardFact =>
  timedFact(telling, 'air-read-at', telling.figures.iso(at), telling.figures.timeDown(at));
