// A place (the room, a booth) as the fold of its readings.

import type { TemperatureLog, TemperatureReading } from '../calc/clock.ts';
import { type GasRead, gases, isBeyond } from '../calc/monitor-limits.ts';
import { type FactFor, isFor } from '../event-readers.ts';
import type { Entry } from '../history.ts';
import type { PersonName, PlaceName } from '../ids.ts';
import type { RingLog } from '../ring-log.ts';
import { foldRings } from '../ring-log.ts';
import { type Celsius, type EpochMs, type Minutes, minutesAfter, type Percent } from '../units.ts';

export interface AirReading {
  readonly at: EpochMs;
  readonly celsius: Celsius | undefined;
  readonly relativeHumidityPercent: Percent | undefined;
  readonly by: string;
}

/** Off a gas monitor: in per cent, or parts per million. */
export interface GasReading extends GasRead {
  readonly at: EpochMs;
  readonly by: PersonName;
  /** Of a monitor that is not known to be in check. */
  readonly isUnproved?: boolean;
}

export interface GasBeyond extends GasReading {
  /** Read within since, last at this time, of a monitor that is not known to be in check: that ends nothing. */
  readonly unprovedWithinAt?: EpochMs | undefined;
}

export interface Place {
  readonly name: PlaceName;
  /** In order of time, as the two below. */
  readonly air: readonly AirReading[];
  readonly surfaces: readonly TemperatureReading[];
  readonly lowest: TemperatureLog['lowest'];
  /** In order of time; of most places none. */
  readonly gas?: readonly GasReading[];
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
}

export function foldPlace(name: PlaceName, entries: readonly Entry[]): Place {
  const air: AirReading[] = [];
  const surfaces: TemperatureReading[] = [];
  const lowest: { from: EpochMs; to: EpochMs; celsius: Celsius }[] = [];
  const gas: GasReading[] = [];
  const take = (fact: FactFor<'place'>, { happenedAt: at, by }: Entry): number => {
    switch (fact.type) {
      case 'AirRead': {
        const { celsius, relativeHumidityPercent } = fact;
        return air.push({ at, celsius, relativeHumidityPercent, by });
      }
      case 'SurfaceRead':
        return surfaces.push({ at, celsius: fact.celsius });
      case 'LowestRead':
        return lowest.push({ from: fact.since, to: at, celsius: fact.lowestCelsius });
      case 'GasRead':
        return gas.push({
          ...{ at, by, gas: fact.gas, value: fact.value, law: fact.law ?? 'us' },
          ...(fact.unproved && { isUnproved: true }),
        });
    }
  };
  for (const entry of entries) {
    const { fact } = entry;
    if (isFor('place', fact)) take(fact, entry);
  }
  const inTime = (a: { at: EpochMs }, b: { at: EpochMs }) => a.at - b.at;
  return {
    ...{ name, air: air.sort(inTime), surfaces: surfaces.sort(inTime), lowest },
    ...(gas.length > 0 && { gas: gas.sort(inTime) }),
    ...{ rings: foldRings(entries), entries },
  };
}

/** Of each gas the last reading by `at` beyond its limit, where nobody has read it within since off a monitor in check. */
export function gasesBeyond(place: Place | undefined, at: EpochMs): readonly GasBeyond[] {
  const read = (place?.gas ?? []).filter((reading) => reading.at <= at);
  return gases.flatMap((gas) => {
    const ofIt = read.filter((reading) => reading.gas === gas);
    const telling = ofIt.findLast((reading) => isBeyond(reading) || reading.isUnproved !== true);
    if (telling === undefined || !isBeyond(telling)) return [];
    const last = ofIt.at(-1);
    return [{ ...telling, ...(last !== telling && { unprovedWithinAt: last?.at }) }];
  });
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

/**
 * Where the latest stretch that nobody read begins: with the last temperature that was left to grow too old, though the
 * morning's may have been said before the night's lowest; if none was, with the last one. `at` where there is none.
 */
export function unreadSince(place: Place | undefined, at: EpochMs, limit: Minutes): EpochMs {
  const read = (place?.air ?? []).filter((reading) => reading.celsius !== undefined && reading.at <= at);
  const gap = read.findLast((reading, i) => (read[i + 1]?.at ?? at) > minutesAfter(reading.at, limit));
  return (gap ?? read.at(-1))?.at ?? at;
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
    humidityCelsius: humidity && airAt(place, humidity.at).temperature?.celsius,
    humidityReadAt: humidity?.at,
    surfaceCelsius: serves(surface) ? surface?.celsius : undefined,
    lastReadAt: temperature?.at,
  };
}

/** A place's air as the clocks read it: temperatures, and the humidity that a cure by moisture needs. */
export interface AirLog extends TemperatureLog {
  /** In order of time. Each holds until the next, or until it is too old. */
  readonly humidities: readonly { readonly at: EpochMs; readonly percent: Percent }[];
}

/** Folds are never changed, and every clock asks for the same log: made once a fold. */
const logs = new WeakMap<Place, AirLog>();

export function airLogOf(place: Place | undefined, staleAfter: Minutes): AirLog {
  const known = place === undefined ? undefined : logs.get(place);
  if (known?.staleAfter === staleAfter) return known;
  const log = makeAirLog(place, staleAfter);
  if (place !== undefined) logs.set(place, log);
  return log;
}

function makeAirLog(place: Place | undefined, staleAfter: Minutes): AirLog {
  const readings = (place?.air ?? []).flatMap((reading) =>
    reading.celsius === undefined ? [] : [{ at: reading.at, celsius: reading.celsius }],
  );
  const humidities = (place?.air ?? []).flatMap(({ at, relativeHumidityPercent: percent }) =>
    percent === undefined ? [] : [{ at, percent }],
  );
  return { readings, humidities, lowest: place?.lowest ?? [], staleAfter };
}
