// Why the figures of a place's air are what they are: what was read, and the dew point that follows from it.

import { dewPointOf } from '../../../core/calc/air.ts';
import { isFailed } from '../../../core/failed.ts';
import type { Entry } from '../../../core/history.ts';
import { airAt } from '../../../core/place/place.ts';
import { humiditySince } from '../../../core/products/sheet-air.ts';
import { airServingIn, sheetFor } from '../../../core/shop.ts';
import { airFacts } from '../air-facts.ts';
import type { FactId } from '../fact-ids.ts';
import { asRead, entriesOf, type FigureAsked, sheetSource, type WhyOf, why } from './why.ts';

/** The equations that the sums about air stand on. */
const saturation = {
  is: 'published',
  what: 'ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 5 and 6 (Hyland and Wexler 1983)',
} as const;

function readings({ telling: { shop, now }, of: { place } }: FigureAsked) {
  const entries = shop.places.get(place)?.entries;
  const air = entriesOf(entries, 'AirRead').filter(({ happenedAt }) => happenedAt <= now);
  return {
    temperature: air.filter(({ fact }) => fact.type === 'AirRead' && fact.celsius !== undefined),
    humidity: air.filter(({ fact }) => fact.type === 'AirRead' && fact.relativeHumidityPercent !== undefined),
    surface: entriesOf(entries, 'SurfaceRead').filter(({ happenedAt }) => happenedAt <= now),
    lowest: entriesOf(entries, 'LowestRead'),
  };
}

const shownNow = ({ telling, of }: FigureAsked, id: FactId): string | undefined =>
  airFacts(telling, of.place).find((fact) => fact.id === id)?.shown;

const lastOf = (...lists: readonly (readonly Entry[])[]): readonly Entry[] => [
  ...new Set(lists.flatMap((entries) => entries.slice(-1))),
];

const dew: WhyOf = (asked) => {
  const { telling, of } = asked;
  const { words, figures, shop, now } = telling;
  const read = readings(asked);
  const { temperature, humidity } = airAt(shop.places.get(of.place), now);
  const celsius = temperature?.celsius;
  const percent = humidity?.relativeHumidityPercent;
  const found = dewPointOf(celsius, percent);
  if (celsius === undefined || percent === undefined || found === undefined) return undefined;
  const since = humiditySince(airServingIn(shop, of.place, now));
  return why(saturation, {
    sum: [`${figures.temperature(celsius)}, ${figures.percent(percent)} → ${figures.temperature(found)}`],
    read: lastOf(read.temperature, read.humidity),
    assumed: since === undefined ? [] : [words.why.humidityFromBefore],
    now: shownNow(asked, 'dew-point'),
  });
};

const spread: WhyOf = (asked) => {
  const { telling, of, fact } = asked;
  const read = readings(asked);
  const { words, figures, shop, now } = telling;
  const { temperature, humidity } = airAt(shop.places.get(of.place), now);
  const found = dewPointOf(temperature?.celsius, humidity?.relativeHumidityPercent);
  const own = of.part?.surfaces.at(-1)?.celsius;
  const surface = own ?? shop.places.get(of.place)?.surfaces.findLast(({ at }) => at <= now)?.celsius;
  const sheet = of.batch?.sheet ?? sheetFor(shop);
  if (found === undefined || surface === undefined) return undefined;
  const surfaces = own === undefined ? read.surface : entriesOf(of.part?.entries, 'SurfaceRead');
  return why(isFailed(sheet) ? saturation : sheetSource(sheet, 'air.leastSpreadCelsius', sheet.air.source), {
    sum: [
      `${figures.temperature(surface)} − ${figures.temperature(found)} = ${fact.shown}`,
      ...(isFailed(sheet) ? [] : [words.why.leastSpread(sheet.air.leastSpreadCelsius, figures)]),
    ],
    read: lastOf(surfaces, read.temperature, read.humidity),
    assumed: own === undefined && of.part !== undefined ? [words.parts.surfaceOfPlace(of.part.name)] : [],
  });
};

const surface: WhyOf = (asked) =>
  asRead(asked.of.part === undefined ? [] : entriesOf(asked.of.part.entries, 'SurfaceRead')) ??
  asRead(readings(asked).surface);

export const airWhys = {
  'air-temperature': (asked) => asRead(readings(asked).temperature),
  'air-read-at': (asked) => asRead(readings(asked).temperature),
  humidity: (asked) => asRead(readings(asked).humidity),
  'dew-point': dew,
  'surface-temperature': surface,
  spread,
  'night-lowest': (asked) => asRead(readings(asked).lowest),
} as const satisfies Partial<Record<FactId, WhyOf>>;
