// The air of every place on the board, with its age: an old reading says so before it says anything else.

import { dewPoint } from '../../core/calc/air.ts';
import { isFailed } from '../../core/failed.ts';
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

export function boardAir(t: Telling): readonly BoardAir[] {
  const read = [...t.shop.places.values()].filter(({ air }) => air.length > 0);
  if (read.length === 0) {
    return [{ place: t.words.names.place(defaultPlace), figures: [], lines: [t.words.page.airNever], tone: 'warn' }];
  }
  return read.map((place) => placeOnBoard(t, place));
}

function placeOnBoard(t: Telling, place: Place): BoardAir {
  const { page } = t.words;
  const { temperature, humidity } = airAt(place, t.now);
  const readAt = [temperature, humidity].flatMap((reading) => reading?.at ?? []).sort((a, b) => a - b)[0];
  const age = readAt === undefined ? undefined : minutesBetween(readAt, t.now);
  const old = age === undefined || age > standing(t.shop.crew, 'air-limit').minutes;
  return {
    place: t.words.names.place(place.name),
    figures: [
      ...(temperature?.celsius === undefined ? [] : [t.f.temperature(temperature.celsius)]),
      ...(humidity?.relativeHumidityPercent === undefined ? [] : [t.f.percent(humidity.relativeHumidityPercent)]),
    ],
    lines: [
      ...(readAt === undefined || age === undefined ? [] : [page.airRead(readAt, age, t.f)]),
      ...(old ? [page.airTooOld] : dewLines(t, place)),
    ],
    tone: old ? 'warn' : 'plain',
  };
}

function dewLines(t: Telling, place: Place): readonly string[] {
  const { temperature, humidity } = airAt(place, t.now);
  if (temperature?.celsius === undefined || humidity?.relativeHumidityPercent === undefined) return [];
  const dew = dewPoint(temperature.celsius, humidity.relativeHumidityPercent);
  if (isFailed(dew)) return [];
  const steel = place.surfaces.findLast((reading) => reading.at <= t.now);
  const { dewPoint: dewLine, surface } = t.words.page;
  return [
    dewLine(dew, t.f),
    ...(steel === undefined ? [] : [surface(steel.celsius, celsiusSpread(steel.celsius - dew), t.f)]),
  ];
}
