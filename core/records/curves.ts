// Readings over time with the limits that the sheets set: the air, a part's temperature with its cure, its films.

import { dewPointOf } from '../calc/air.ts';
import type { Part } from '../part/part.ts';
import { cureClock } from '../part/part-clocks.ts';
import type { Sheet } from '../products/sheet.ts';
import { airLog, batchOf, type Shop } from '../shop.ts';
import { type Celsius, celsius, type EpochMs, epochMs, type Micrometres, type Percent, percent } from '../units.ts';
import { isWithin, type Span } from './span.ts';

export interface AirPoint {
  readonly at: EpochMs;
  readonly celsius: Celsius | undefined;
  readonly relativeHumidityPercent: Percent | undefined;
  readonly dewPointCelsius: Celsius | undefined;
}

/** The narrowest of the sheets in use. */
export interface AirLimits {
  readonly lowestCelsius: Celsius;
  readonly highestCelsius: Celsius;
  readonly lowestHumidityPercent: Percent | undefined;
  readonly highestHumidityPercent: Percent;
}

export interface AirCurve {
  readonly points: readonly AirPoint[];
  readonly surfaces: readonly { readonly at: EpochMs; readonly celsius: Celsius }[];
  /** `undefined` where no batch was in use. */
  readonly limits: AirLimits | undefined;
}

export function airCurve(shop: Shop, span: Span): AirCurve {
  const places = [...shop.places.values()];
  const points = places
    .flatMap(({ air }) => air)
    .filter(({ at }) => isWithin(span, at))
    .map(({ at, celsius, relativeHumidityPercent }) => ({
      at,
      celsius,
      relativeHumidityPercent,
      dewPointCelsius: dewPointOf(celsius, relativeHumidityPercent),
    }));
  const sheets = [...shop.batches.values()]
    .filter(({ entries }) => entries.some(({ happenedAt }) => isWithin(span, happenedAt)))
    .map(({ sheet }) => sheet);
  return {
    points: points.sort((a, b) => a.at - b.at),
    surfaces: places.flatMap(({ surfaces }) => surfaces).filter(({ at }) => isWithin(span, at)),
    limits: narrowest(sheets),
  };
}

function narrowest(sheets: readonly Sheet[]): AirLimits | undefined {
  const [first, ...others] = sheets.map(({ air }) => air);
  if (first === undefined) return undefined;
  return others.reduce<AirLimits>(
    (limits, air) => ({
      lowestCelsius: celsius(Math.max(limits.lowestCelsius, air.lowestCelsius)),
      highestCelsius: celsius(Math.min(limits.highestCelsius, air.highestCelsius)),
      lowestHumidityPercent: higher(limits.lowestHumidityPercent, air.lowestRelativeHumidityPercent),
      highestHumidityPercent: percent(Math.min(limits.highestHumidityPercent, air.highestRelativeHumidityPercent)),
    }),
    {
      lowestCelsius: first.lowestCelsius,
      highestCelsius: first.highestCelsius,
      lowestHumidityPercent: first.lowestRelativeHumidityPercent,
      highestHumidityPercent: first.highestRelativeHumidityPercent,
    },
  );
}

function higher(a: Percent | undefined, b: Percent | undefined): Percent | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return percent(Math.max(a, b));
}

export interface CureCurve {
  readonly way: 'oven' | 'room';
  readonly from: EpochMs;
  readonly to: EpochMs;
  readonly temperatures: readonly { readonly at: EpochMs; readonly celsius: Celsius }[];
  /** Share of the cure that the readings prove, from 0 to 1. */
  readonly progress: readonly { readonly at: EpochMs; readonly share: number }[];
  /** Between these the sheet gives credit. */
  readonly lowestCelsius: Celsius | undefined;
  readonly highestCelsius: Celsius | undefined;
}

/** Points of the progress line between two readings: enough for a straight look. */
const steps = 24;

/** `undefined` where the part has no cure, or its sheet none of that kind. */
export function cureCurve(shop: Shop, part: Part, now: EpochMs): CureCurve | undefined {
  const batch = batchOf(shop, part);
  if (part.cure === undefined || batch === undefined) return undefined;
  const { way, run } = part.cure;
  const to = run.to ?? now;
  const air = airLog(shop, batch.place);
  const read = way === 'oven' ? part.temperatures : air.readings;
  const temperatures = read.filter(({ at }) => at >= run.from && at <= to);
  const moments = Array.from({ length: steps + 1 }, (_, i) =>
    epochMs(Math.round(run.from + ((to - run.from) * i) / steps)),
  );
  const doneAt = cureClock(part, batch.sheet, air, to)?.doneAt;
  const turns = [
    ...temperatures.map((reading) => reading.at),
    ...(doneAt === undefined || doneAt > to ? [] : [doneAt]),
  ];
  const at = [...new Set([...moments, ...turns])].sort((a, b) => a - b);
  const progress = at.flatMap((moment) => {
    // As it stood then: a reading to come gives no credit yet.
    const then = { ...part, temperatures: part.temperatures.filter((reading) => reading.at <= moment) };
    const clock = cureClock(then, batch.sheet, air, moment);
    return clock === undefined ? [] : [{ at: moment, share: Math.min(1, clock.dose.progress) }];
  });
  const { oven, room } = batch.sheet.cure;
  const range = room !== undefined && 'range' in room.time ? room.time.range : undefined;
  return {
    way,
    from: run.from,
    to,
    temperatures,
    progress,
    lowestCelsius: way === 'oven' ? oven?.atCelsius : range?.lowestCelsius,
    highestCelsius: way === 'oven' ? oven?.highestCelsius : range?.highestCelsius,
  };
}

export interface FilmCurve {
  readonly readings: readonly {
    readonly number: number;
    readonly state: 'wet' | 'dry';
    readonly micrometres: Micrometres;
  }[];
  readonly limits: FilmLimits | undefined;
}

/** For the dry film, by the rule that the sheet names, or its film range where it names none. */
export interface FilmLimits {
  readonly leastMicrometres: Micrometres;
  readonly mostMicrometres: Micrometres;
  readonly rule: 'own' | 'iso-19840' | 'pa-2' | 'range';
  readonly source: string;
}

export function filmCurve(shop: Shop, part: Part): FilmCurve {
  const numbers = { wet: 0, dry: 0 };
  const readings = part.films.flatMap(({ state, micrometres }) =>
    micrometres.map((film) => {
      numbers[state] += 1;
      return { number: numbers[state], state, micrometres: film };
    }),
  );
  const sheet = batchOf(shop, part)?.sheet;
  return { readings, limits: sheet === undefined ? undefined : filmLimits(sheet) };
}

export function filmLimits({ filmRule, film }: Sheet): FilmLimits | undefined {
  if (filmRule === undefined) {
    if (film === undefined) return undefined;
    const { lowestDryMicrometres, highestDryMicrometres, source } = film;
    return { leastMicrometres: lowestDryMicrometres, mostMicrometres: highestDryMicrometres, rule: 'range', source };
  }
  const { rule, source, mostMicrometres } = filmRule;
  const leastMicrometres = rule === 'iso-19840' ? filmRule.nominalMicrometres : filmRule.leastMicrometres;
  return { leastMicrometres, mostMicrometres, rule, source };
}
