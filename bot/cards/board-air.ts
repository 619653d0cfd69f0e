// The air of every place on the board, with its age: an old reading says so before it says anything else.

import { dewPointOf } from '../../core/calc/air.ts';
import { defaultPlace } from '../../core/ids.ts';
import { airAt, type Place } from '../../core/place/place.ts';
import { standing } from '../../core/settled.ts';
import { celsiusSpread, minutesBetween } from '../../core/units.ts';
import type { Tone } from './card.ts';
import type { Telling } from './card-context.ts';

export interface BoardAir {
  readonly place: string;
  /** `24 °C`, `48 %`; empty where nobody has read it. */
  readonly figures: readonly string[];
  readonly lines: readonly string[];
  readonly tone: Tone;
}

export function boardAir(telling: Telling): readonly BoardAir[] {
  const read = [...telling.shop.places.values()].filter(({ air }) => air.length > 0);
  if (read.length === 0) {
    const place = telling.words.names.place(defaultPlace);
    return [{ place, figures: [], lines: [telling.words.page.airNever], tone: 'warn' }];
  }
  return read.map((place) => placeOnBoard(telling, place));
}

function placeOnBoard(telling: Telling, place: Place): BoardAir {
  const { page } = telling.words;
  const { temperature, humidity } = airAt(place, telling.now);
  const readAt = [temperature, humidity].flatMap((reading) => reading?.at ?? []).sort((a, b) => a - b)[0];
  const age = readAt === undefined ? undefined : minutesBetween(readAt, telling.now);
  const old = age === undefined || age > standing(telling.shop.crew, 'air-limit').minutes;
  return {
    place: telling.words.names.place(place.name),
    figures: [
      ...(temperature?.celsius === undefined ? [] : [telling.figures.temperature(temperature.celsius)]),
      ...(humidity?.relativeHumidityPercent === undefined
        ? []
        : [telling.figures.percent(humidity.relativeHumidityPercent)]),
    ],
    lines: [
      ...(readAt === undefined || age === undefined ? [] : [page.airRead(readAt, age, telling.figures)]),
      ...(old ? [page.airTooOld] : dewLines(telling, place)),
    ],
    tone: old ? 'warn' : 'plain',
  };
}

function dewLines(telling: Telling, place: Place): readonly string[] {
  const { temperature, humidity } = airAt(place, telling.now);
  const dew = dewPointOf(temperature?.celsius, humidity?.relativeHumidityPercent);
  if (dew === undefined) return [];
  const steel = place.surfaces.findLast((reading) => reading.at <= telling.now);
  const { dewPoint: dewLine, surface } = telling.words.page;
  return [
    dewLine(dew, telling.figures),
    ...(steel === undefined ? [] : [surface(steel.celsius, celsiusSpread(steel.celsius - dew), telling.figures)]),
  ];
}
