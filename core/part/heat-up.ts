// When a part in the oven should have come up to the sheet's temperature, by its metal and wall: an estimate that asks
// for a reading and proves nothing. Each reading on the part starts it anew, and from the second one on it goes by the pace
// that the part itself showed.

import type { TemperatureLog } from '../calc/clock.ts';
import { lumpOfWall, minutesToReach, minutesToReachByPace } from '../calc/heating.ts';
import { type HeatProperties, heatProperties } from '../calc/metals.ts';
import { isFailed } from '../failed.ts';
import { isOwnKey } from '../own-key.ts';
import type { Sheet } from '../products/sheet.ts';
import { type Celsius, celsius, type EpochMs, type Minutes, minutes, minutesAfter, minutesBetween } from '../units.ts';
import type { Part } from './part.ts';

/** W/(m2 K), from memory, no source: the low end of an oven with a gentle fan. Fit it by one thermocouple run. */
export const assumedHeatTransfer = 10;
/** A casting hangs or stands free: its wall takes heat on both faces. An assumption, told on the card. */
const heatedFaces = 2;
/** An oven set no hotter than the sheet asks is never quite reached; within this of it counts as come up. */
const nearEnough = 1;

export interface HeatUp {
  readonly reachesAt: EpochMs;
  readonly by: 'metal-and-wall' | 'last-readings';
  readonly startCelsius: Celsius;
  /** What the start rests on. */
  readonly start: 'part-reading' | 'surface' | 'room' | 'lowest-of-sheet';
  /** When the part was so warm: of a reading, when it was read. */
  readonly startAt: EpochMs;
  readonly ovenCelsius: Celsius;
}

export function metalOf(part: Part): HeatProperties | undefined {
  const { metal } = part.details;
  return metal === undefined || !isMetal(metal) ? undefined : heatProperties[metal];
}

const isMetal = (name: string): name is keyof typeof heatProperties => isOwnKey(heatProperties, name);

/**
 * `undefined` where nothing tells how fast it warms (no two readings that rose, and metal or wall not known or too thick for
 * the sum), the oven is colder than the sheet asks, or a reading has shown that the part is there.
 */
export function heatUp(part: Part, sheet: Sheet, room: TemperatureLog): HeatUp | undefined {
  const { cure } = part;
  const { oven } = sheet.cure;
  if (cure?.way !== 'oven' || oven === undefined) return undefined;
  const ovenCelsius = cure.setCelsius ?? oven.atCelsius;
  if (ovenCelsius < oven.atCelsius) return undefined;
  const begin = startOf(part, sheet, room, cure.run.from);
  if (begin.celsius >= oven.atCelsius) return undefined;
  const target = celsius(Math.min(oven.atCelsius, ovenCelsius - nearEnough));
  const from = { startCelsius: begin.celsius, start: begin.is, startAt: begin.at, ovenCelsius };
  const byPace = paceWanted(part, cure.run.from, ovenCelsius, target);
  if (byPace !== undefined) return { ...from, reachesAt: minutesAfter(begin.at, byPace), by: 'last-readings' };
  const wanted = begin.celsius >= target ? minutes(0) : metalWanted(part, ovenCelsius, begin.celsius, target);
  return wanted === undefined
    ? undefined
    : { ...from, reachesAt: minutesAfter(begin.at, wanted), by: 'metal-and-wall' };
}

/** By the last two readings in the oven, where the part has warmed between them. */
function paceWanted(part: Part, since: EpochMs, oven: Celsius, target: Celsius): Minutes | undefined {
  const [earlier, later] = part.temperatures.filter(({ at }) => at >= since).slice(-2);
  if (earlier === undefined || later === undefined) return undefined;
  const apart = minutesBetween(earlier.at, later.at);
  const wanted = minutesToReachByPace({ earlier: earlier.celsius, later: later.celsius, apart }, oven, target);
  return isFailed(wanted) ? undefined : wanted;
}

function metalWanted(part: Part, oven: Celsius, start: Celsius, target: Celsius): Minutes | undefined {
  const metal = metalOf(part);
  const { wallMillimetres } = part.details;
  if (metal === undefined || wallMillimetres === undefined) return undefined;
  const air = { celsius: oven, wattsPerSquareMetreKelvin: assumedHeatTransfer };
  const wanted = minutesToReach(lumpOfWall(metal, wallMillimetres, heatedFaces), air, start, target);
  return isFailed(wanted) ? undefined : wanted;
}

interface Start {
  readonly is: HeatUp['start'];
  readonly celsius: Celsius;
  readonly at: EpochMs;
}

function startOf(part: Part, sheet: Sheet, room: TemperatureLog, from: EpochMs): Start {
  const read = part.temperatures.findLast((reading) => reading.at >= from);
  if (read !== undefined) return { is: 'part-reading', celsius: read.celsius, at: read.at };
  const surface = part.surfaces.findLast((reading) => reading.at <= from);
  if (surface !== undefined) return { is: 'surface', celsius: surface.celsius, at: from };
  const air = room.readings.findLast((reading) => reading.at <= from);
  if (air !== undefined) return { is: 'room', celsius: air.celsius, at: from };
  return { is: 'lowest-of-sheet', celsius: sheet.air.lowestCelsius, at: from };
}

/** Which part of a load warms last; `undefined` where metal or wall of one of them is not known. */
export function slowestToWarm(parts: readonly Part[]): Part | undefined {
  let slowest: { readonly part: Part; readonly weight: number } | undefined;
  for (const part of parts) {
    const metal = metalOf(part);
    const wall = part.details.wallMillimetres;
    if (metal === undefined || wall === undefined) return parts.length === 1 ? part : undefined;
    const weight = metal.kilogramsPerCubicMetre * metal.joulesPerKilogramKelvin * wall;
    if (slowest === undefined || weight > slowest.weight) slowest = { part, weight };
  }
  return slowest?.part;
}
