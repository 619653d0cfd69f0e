// A place (the room, a booth) as the fold of its readings.

import type { TemperatureLog, TemperatureReading } from '../calc/clock.ts';
import type { Entry } from '../history.ts';
import type { PlaceName } from '../ids.ts';
import type { RingLog } from '../reminders/ring-log.ts';
import { foldRings } from '../reminders/ring-log.ts';
import { type Celsius, type EpochMs, type Minutes, minutesAfter, type Percent } from '../units.ts';

export interface AirReading {
  readonly at: EpochMs;
  readonly celsius: Celsius | undefined;
  readonly relativeHumidityPercent: Percent | undefined;
  readonly by: string;
}

export interface Place {
  readonly name: PlaceName;
  /** In order of time, as the two below. */
  readonly air: readonly AirReading[];
  readonly surfaces: readonly TemperatureReading[];
  readonly lowest: TemperatureLog['lowest'];
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
}

export function foldPlace(name: PlaceName, entries: readonly Entry[]): Place {
  const air: AirReading[] = [];
  const surfaces: TemperatureReading[] = [];
  const lowest: { from: EpochMs; to: EpochMs; celsius: Celsius }[] = [];
  for (const { fact, happenedAt, by } of entries) {
    switch (fact.type) {
      case 'AirRead':
        air.push({
          at: happenedAt,
          celsius: fact.celsius,
          relativeHumidityPercent: fact.relativeHumidityPercent,
          by,
        });
        break;
      case 'SurfaceRead':
        surfaces.push({ at: happenedAt, celsius: fact.celsius });
        break;
      case 'LowestRead':
        lowest.push({ from: fact.since, to: happenedAt, celsius: fact.lowestCelsius });
        break;
      default:
        break;
    }
  }
  const inTime = (a: { at: EpochMs }, b: { at: EpochMs }) => a.at - b.at;
  return { name, air: air.sort(inTime), surfaces: surfaces.sort(inTime), lowest, rings: foldRings(entries), entries };
}

/** The latest reading of each figure at or before `at`. */
export function airAt(
  place: Place | undefined,
  at: EpochMs,
): { readonly temperature: AirReading | undefined; readonly humidity: AirReading | undefined } {
  const before = (place?.air ?? []).filter((reading) => reading.at <= at);
  return {
    temperature: before.findLast((reading) => reading.celsius !== undefined),
    humidity: before.findLast((reading) => reading.relativeHumidityPercent !== undefined),
  };
}

/** The readings that still serve at `at`: not older than the limit. `lastReadAt` is the last temperature, however old. */
export function airServing(place: Place | undefined, at: EpochMs, limit: Minutes) {
  const { temperature, humidity } = airAt(place, at);
  const surface = place?.surfaces.findLast((reading) => reading.at <= at);
  const serves = (reading: { at: EpochMs } | undefined) =>
    reading !== undefined && at <= minutesAfter(reading.at, limit);
  return {
    celsius: serves(temperature) ? temperature?.celsius : undefined,
    relativeHumidityPercent: serves(humidity) ? humidity?.relativeHumidityPercent : undefined,
    surfaceCelsius: serves(surface) ? surface?.celsius : undefined,
    lastReadAt: temperature?.at,
  };
}

/** The place's temperatures as the clocks read them. */
export function temperatureLog(place: Place | undefined, staleAfter: Minutes): TemperatureLog {
  const readings = (place?.air ?? []).flatMap((reading) =>
    reading.celsius === undefined ? [] : [{ at: reading.at, celsius: reading.celsius }],
  );
  return { readings, lowest: place?.lowest ?? [], staleAfter };
}
