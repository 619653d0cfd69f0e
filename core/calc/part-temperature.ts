// What thermocouple readings on the part prove. For an at-least clock a stretch counts as warm as its colder end, for a
// limit or an at-most clock as its hotter: nobody knows when between two readings a temperature was crossed, and no
// straight line is drawn through it. So the hour at 90 degC begins with the first reading at 90, not before.

import { type Celsius, celsius, type EpochMs, type Minutes, minutes, minutesBetween } from '../units.ts';
import type { Caution, Piece } from './dose.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

export interface PartReading {
  readonly at: EpochMs;
  readonly celsius: Celsius;
}

export interface ProvedTime {
  /** The first reading at or above the temperature; `undefined`: none was. */
  readonly reachedAt: EpochMs | undefined;
  /** Sum of the stretches proved, and the longest of them without a break. */
  readonly totalMinutes: Minutes;
  readonly longestMinutes: Minutes;
  /** When the last proved stretch ends; what came after the last reading proves nothing. */
  readonly provedUntil: EpochMs | undefined;
  /** Time between two warm readings too far apart to prove what lay between. */
  readonly unprovedMinutes: Minutes;
  readonly highestCelsius: Celsius;
}

/**
 * The part's own time at or above a temperature. Readings in order of time; two that are more than `furthestApart` from
 * each other prove nothing about what lay between.
 */
export function provedTime(
  readings: readonly PartReading[],
  least: Celsius,
  furthestApart: Minutes,
): Result<ProvedTime> {
  if (readings.length === 0) return { failed: 'does-not-apply', what: 'part readings', given: 0, limit: 1 };
  const refused = refuseReadings(readings) ?? refuseTemperature('least temperature', least) ?? refuseGap(furthestApart);
  if (refused !== undefined) return refused;
  let total = 0;
  let longest = 0;
  let unbroken = 0;
  let unproved = 0;
  let provedUntil: EpochMs | undefined;
  for (const { from, to, colder, lasted } of stretches(readings)) {
    const warm = colder >= least;
    if (warm && lasted <= furthestApart) {
      total += lasted;
      unbroken += lasted;
      longest = Math.max(longest, unbroken);
      if (lasted > 0) provedUntil = to;
    } else {
      unbroken = 0;
      if (warm) unproved += minutesBetween(from, to);
    }
  }
  return {
    reachedAt: readings.find((reading) => reading.celsius >= least)?.at,
    totalMinutes: minutes(total),
    longestMinutes: minutes(longest),
    provedUntil,
    unprovedMinutes: minutes(unproved),
    highestCelsius: celsius(Math.max(...readings.map((reading) => reading.celsius))),
  };
}

/** The same readings as pieces for a dose; a stretch too long to prove anything has no temperature. */
export function piecesFromReadings(
  readings: readonly PartReading[],
  caution: Caution,
  furthestApart: Minutes,
): Result<readonly Piece[]> {
  const refused = refuseReadings(readings) ?? refuseGap(furthestApart);
  if (refused !== undefined) return refused;
  return stretches(readings).map(({ from, to, colder, hotter, lasted }) => {
    const counted = caution === 'at-least' ? colder : hotter;
    return { from, to, celsius: lasted <= furthestApart ? counted : undefined };
  });
}

interface Stretch {
  readonly from: EpochMs;
  readonly to: EpochMs;
  readonly colder: Celsius;
  readonly hotter: Celsius;
  readonly lasted: number;
}

function stretches(readings: readonly PartReading[]): readonly Stretch[] {
  const found: Stretch[] = [];
  let start: PartReading | undefined;
  for (const end of readings) {
    if (start !== undefined) {
      found.push({
        from: start.at,
        to: end.at,
        colder: celsius(Math.min(start.celsius, end.celsius)),
        hotter: celsius(Math.max(start.celsius, end.celsius)),
        lasted: minutesBetween(start.at, end.at),
      });
    }
    start = end;
  }
  return found;
}

/** No part is in an oven for longer. */
const minutesOfAYear = 366 * 24 * 60;

/** Where dates end, in milliseconds either side of 1970. */
const furthestFromEpoch = 8.64e15;

function refuseReadings(readings: readonly PartReading[]): Refusal | undefined {
  let before = -furthestFromEpoch;
  for (const reading of readings) {
    const refused =
      refuseTemperature('part reading', reading.celsius) ??
      outOfRange('time of reading', reading.at, before, furthestFromEpoch);
    if (refused !== undefined) return refused;
    before = reading.at;
  }
  return undefined;
}

function refuseTemperature(what: string, temperature: Celsius): Refusal | undefined {
  return outOfRange(what, temperature, -200, 2000);
}

function refuseGap(furthestApart: Minutes): Refusal | undefined {
  return outOfRange('furthest apart', furthestApart, 0, minutesOfAYear);
}
