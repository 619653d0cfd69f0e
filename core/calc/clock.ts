// A clock over a log of readings: when it ran, what was read, which reading holds when, what may be believed. Its due
// time depends on the record alone, not on the moment it is asked, so that a reminder stands still until something new
// is said.

import type { Celsius, EpochMs, Minutes } from '../units.ts';
import { epochMs, minutes, minutesAfter } from '../units.ts';
import { type Dose, type DoseRules, dose, type NoFigure, type Piece, paceAt, projectedDone } from './dose.ts';

export interface Run {
  readonly from: EpochMs;
  /** `undefined`: it still runs. */
  readonly to: EpochMs | undefined;
}

export interface TemperatureReading {
  readonly at: EpochMs;
  readonly celsius: Celsius;
}

export interface TemperatureLog {
  /** In order of time. Each holds until the next, or until it is too old. */
  readonly readings: readonly TemperatureReading[];
  /** Lowest temperatures of times that nobody read. They serve clocks that must last at least so long. */
  readonly lowest: readonly { readonly from: EpochMs; readonly to: EpochMs; readonly celsius: Celsius }[];
  readonly staleAfter: Minutes;
}

export interface ClockReading {
  readonly dose: Dose;
  /** Proved done, at this time. */
  readonly doneAt: EpochMs | undefined;
  /** When it rings: proved or projected. `undefined` while a stopped clock has no end. */
  readonly dueAt: EpochMs | undefined;
  readonly running: boolean;
  /** The temperature that counts now, when it was read, and why the sheet has no figure for it, if so. */
  readonly celsius: Celsius | undefined;
  readonly readAt: EpochMs | undefined;
  readonly withoutFigure: NoFigure | undefined;
}

/** What the clock shows at `now`. Runs and readings must be in order of time. */
export function readClock(rules: DoseRules, runs: readonly Run[], log: TemperatureLog, now: EpochMs): ClockReading {
  const given = dose(rules, piecesOf(rules, runs, log, now));
  const last = lastReading(log, now);
  const believed = last !== undefined && minutesAfter(last.at, log.staleAfter) >= now ? last.celsius : undefined;
  return {
    dose: given,
    doneAt: given.doneAt,
    dueAt: given.doneAt ?? dueAt(rules, runs, log),
    running: runs.at(-1)?.to === undefined && runs.length > 0,
    celsius: believed,
    readAt: last?.at,
    withoutFigure: paceAt(rules, believed).why,
  };
}

const twoDays = minutes(2 * 1440);

/**
 * When the clock reaches `target` by the record. At-least: readings so far, then the last one held. At-most: the last
 * reading until it is too old, then the sheet's fastest. `undefined` where the clock stopped before it got there.
 */
export function dueAt(rules: DoseRules, runs: readonly Run[], log: TemperatureLog, target = 1): EpochMs | undefined {
  const last = runs.at(-1);
  if (last === undefined) return undefined;
  const running = last.to === undefined;
  const horizon = readUpTo(rules, last, log);
  // Most are done within two days: a record of years is cut up only for those that are not.
  const soon = minutesAfter(last.from, twoDays);
  if (soon < horizon) {
    const { doneAt } = dose(rules, piecesOf(rules, runs, log, soon), target);
    if (doneAt !== undefined) return doneAt;
  }
  const soFar = dose(rules, piecesOf(rules, runs, log, horizon), target);
  if (soFar.doneAt !== undefined) return soFar.doneAt;
  if (!running) return undefined;
  return projectedDone(rules, soFar.progress, horizon, heldFrom(rules, log, horizon), target);
}

/** As far as the last run goes by readings: from there on a due time is only expected. */
export function readUpTo(rules: Pick<DoseRules, 'caution'>, last: Run, log: TemperatureLog): EpochMs {
  const newest = log.readings.at(-1);
  const known = newest === undefined ? last.from : knownUntil(rules, newest, log);
  return last.to ?? epochMs(Math.max(known, last.from));
}

/** The temperature that is expected to hold from then on; `undefined` where nothing is. */
export function heldFrom(rules: Pick<DoseRules, 'caution'>, log: TemperatureLog, at: EpochMs): Celsius | undefined {
  return rules.caution === 'at-least' ? lastReading(log, at)?.celsius : undefined;
}

function knownUntil(rules: Pick<DoseRules, 'caution'>, newest: TemperatureReading, log: TemperatureLog): EpochMs {
  return rules.caution === 'at-least' ? newest.at : minutesAfter(newest.at, log.staleAfter);
}

/** Of several at one time the last counts. */
function lastReading({ readings }: TemperatureLog, at: EpochMs): TemperatureReading | undefined {
  return readings[readUntil(readings, at) - 1];
}

/** How many had been read by then. Halving: a place's log may hold years. */
export function readUntil(readings: TemperatureLog['readings'], at: EpochMs): number {
  let low = 0;
  let high = readings.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const reading = readings[middle];
    if (reading !== undefined && reading.at <= at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The runs cut at every change of what is known, up to `until`. */
export function piecesOf(
  rules: Pick<DoseRules, 'caution'>,
  runs: readonly Run[],
  log: TemperatureLog,
  until: EpochMs,
): readonly Piece[] {
  const pieces: Piece[] = [];
  for (const run of runs) {
    const end = epochMs(Math.min(run.to ?? until, until));
    const cuts = cutsWithin(run.from, end, log);
    for (let i = 0; i + 1 < cuts.length; i++) {
      const from = cuts[i];
      const to = cuts[i + 1];
      if (from === undefined || to === undefined) continue;
      pieces.push({ from, to, celsius: believedAt(rules, log, from) });
    }
  }
  return pieces;
}

function cutsWithin(from: EpochMs, to: EpochMs, log: TemperatureLog): readonly EpochMs[] {
  if (to <= from) return [];
  const inside = new Set<EpochMs>();
  const add = (at: EpochMs) => {
    if (at > from && at < to) inside.add(at);
  };
  // Only what was read not long before, or meanwhile, can begin to hold or grow too old in between; a minute for rounding.
  const first = readUntil(log.readings, minutesAfter(from, minutes(-log.staleAfter - 1)));
  for (const reading of log.readings.slice(first, readUntil(log.readings, to))) {
    add(reading.at);
    add(minutesAfter(reading.at, log.staleAfter));
  }
  for (const night of log.lowest) {
    add(night.from);
    add(night.to);
  }
  return inside.size === 0 ? [from, to] : [from, ...[...inside].sort((a, b) => a - b), to];
}

function believedAt(rules: Pick<DoseRules, 'caution'>, log: TemperatureLog, at: EpochMs): Celsius | undefined {
  const reading = lastReading(log, at);
  if (reading !== undefined && at < minutesAfter(reading.at, log.staleAfter)) return reading.celsius;
  if (rules.caution === 'at-most') return undefined;
  return log.lowest.find((night) => night.from <= at && at < night.to)?.celsius;
}
