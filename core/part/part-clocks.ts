// The clocks of a part: how long its wet film takes another pass, flash-off by plain minutes (warmth never shortens the
// least), the recoat window, and the cure by the part's own temperature in an oven or by the room's.

import { type ClockReading, dueAt, type Run, readClock, type TemperatureLog } from '../calc/clock.ts';
import { type ClockBasis, expectedStretch, type Stretch, stretchesOf, stretchesTo } from '../calc/clock-sum.ts';
import { type DoseRules, projectedDone } from '../calc/dose.ts';
import { partStream } from '../ids.ts';
import type { AirLog } from '../place/place.ts';
import { ovenLaw, rateLaw, type Sheet } from '../products/sheet.ts';
import type { StageName } from '../products/sheet-part.ts';
import { type EpochMs, epochMs, minutes, minutesAfter, minutesBetween } from '../units.ts';
import { runsExpected, runsThatCount } from './cure-humidity.ts';
import { isBracketed, provedClock, provedPieces } from './cure-proof.ts';
import { heatUp } from './heat-up.ts';
import type { Coat, Cure, Part } from './part.ts';

export interface FlashTimes {
  readonly leastAt: EpochMs;
  readonly mostAt: EpochMs;
}

export function flashTimes(sheet: Sheet, coatedAt: EpochMs): FlashTimes {
  return {
    leastAt: minutesAfter(coatedAt, sheet.flashOff.leastMinutes),
    mostAt: minutesAfter(coatedAt, sheet.flashOff.mostMinutes),
  };
}

/** Until when the wet film takes another pass, on the early side; `undefined` where the sheet gives no open time. */
export function openUntil(sheet: Sheet, coat: Coat, air: TemperatureLog): EpochMs | undefined {
  const basis = openBasis(sheet, coat, air);
  const end = basis && dueAt(basis.rules, basis.runs, basis.log);
  return end === undefined ? undefined : epochMs(Math.floor(end));
}

export function openBasis({ openTime }: Sheet, coat: Coat, log: TemperatureLog): ClockBasis | undefined {
  if (openTime === undefined) return undefined;
  const rules = { law: rateLaw(openTime), caution: 'at-most', withoutFigure: 'nothing' } as const;
  return { rules, runs: [{ from: coat.firstAt, to: undefined }], log };
}

export interface RecoatTimes {
  readonly opensAt: EpochMs;
  readonly closesAt: EpochMs;
}

/** Opens after the last pass, closes after the first; `undefined` where the sheet has no window. */
export function recoatTimes({ recoat }: Sheet, coat: Coat): RecoatTimes | undefined {
  if (recoat.rule !== 'window') return undefined;
  return {
    opensAt: minutesAfter(coat.at, recoat.opensMinutes),
    closesAt: minutesAfter(coat.firstAt, recoat.closesMinutes),
  };
}

/** `undefined` where the sheet knows no such cure. */
function cureRules(sheet: Sheet, way: Cure['way']): DoseRules | undefined {
  switch (way) {
    case 'oven':
      return sheet.cure.oven && { law: ovenLaw(sheet.cure.oven), caution: 'at-least', withoutFigure: 'nothing' };
    case 'room':
      return sheet.cure.room && { law: rateLaw(sheet.cure.room.time), caution: 'at-least', withoutFigure: 'nothing' };
  }
}

/** In an oven the part's own readings count, from the one at or before its start; in a room the room's. */
function cureLog(part: Part, way: Cure['way'], air: TemperatureLog): TemperatureLog {
  return way === 'oven' ? { readings: part.temperatures, lowest: [], staleAfter: air.staleAfter } : air;
}

/** The sum behind its cure up to `end`: in an oven what the readings prove, in a room what its air earned. */
export function cureStretches(part: Part, sheet: Sheet, air: AirLog, now: EpochMs, end: EpochMs): readonly Stretch[] {
  const { cure } = part;
  const rules = cure && cureRules(sheet, cure.way);
  if (cure === undefined || rules === undefined) return [];
  if (!isBracketed(cure)) {
    const log = cureLog(part, cure.way, air);
    return stretchesTo({ rules, runs: expectedRuns(cure, sheet, air), log }, end);
  }
  const proved = stretchesOf(rules, provedPieces(part, cure, air.staleAfter, now));
  const last = part.temperatures.at(-1);
  const from = epochMs(Math.max(cure.run.from, last?.at ?? cure.run.from));
  if (end <= from || cure.run.to !== undefined) return proved;
  const warmAt = isAtTemperature(part, sheet) ? undefined : heatUp(part, sheet, air)?.reachesAt;
  if (warmAt === undefined || warmAt <= from || warmAt >= end)
    return [...proved, expectedStretch(rules, { from, to: end, celsius: last?.celsius })];
  const warms = { from, to: warmAt, celsius: undefined, perMinute: 0, why: 'unknown', expected: true } as const;
  return [...proved, warms, expectedStretch(rules, { from: warmAt, to: end, celsius: sheet.cure.oven?.atCelsius })];
}

/** `undefined` while the part is not in cure, or where the sheet has no such cure. */
export function cureClock(part: Part, sheet: Sheet, air: AirLog, now: EpochMs): ClockReading | undefined {
  const { cure } = part;
  if (cure === undefined) return undefined;
  const rules = cureRules(sheet, cure.way);
  if (rules === undefined) return undefined;
  if (isBracketed(cure)) return provedClock(part, cure, rules, air.staleAfter, now);
  const log = cureLog(part, cure.way, air);
  const clock = readClock(rules, countedRuns(cure, sheet, air, now), log, now);
  const { run } = cure;
  const expected = clock.doneAt ?? dueByRecord(rules, cure, sheet, air, log);
  return { ...clock, dueAt: expected, running: run.to === undefined };
}

function countedRuns({ way, run }: Cure, sheet: Sheet, air: AirLog, now: EpochMs): readonly Run[] {
  return way === 'room' ? runsThatCount(run, sheet.cure.room?.humidity, air, now) : [run];
}

function expectedRuns({ way, run }: Cure, sheet: Sheet, air: AirLog): readonly Run[] {
  return way === 'room' ? runsExpected(run, sheet.cure.room?.humidity, air) : [run];
}

/**
 * Of a humidity that nobody read it is hoped that it is still told. Where the time is over and something has been read since,
 * what is still lacking counts from that reading: no bell lies in a past that proved nothing.
 */
function dueByRecord(
  rules: DoseRules,
  cure: Cure,
  sheet: Sheet,
  air: AirLog,
  log: TemperatureLog,
): EpochMs | undefined {
  const due = dueAt(rules, expectedRuns(cure, sheet, air), log);
  const newest = log.readings.at(-1)?.at;
  const isPast = due !== undefined && newest !== undefined && due <= newest;
  if (cure.way !== 'room' || cure.run.to !== undefined || !isPast || newest <= cure.run.from) return due;
  return dueAt(rules, [...countedRuns(cure, sheet, air, newest), { from: newest, to: undefined }], log);
}

export interface CureDue {
  readonly at: EpochMs;
  /** `estimate`: by metal and wall. `clock`: by nothing but the clock. Neither was measured. */
  readonly basis: 'readings' | 'estimate' | 'clock';
}

/** When the cure rings, on the late side. A sheet without such a cure rings after a day, to be asked about. */
export function cureDue(part: Part, sheet: Sheet, air: AirLog): CureDue | undefined {
  const { cure } = part;
  if (cure === undefined) return undefined;
  const rules = cureRules(sheet, cure.way);
  if (rules === undefined) return { at: minutesAfter(cure.run.from, dayWithoutFigure), basis: 'clock' };
  const newest = part.temperatures.at(-1)?.at;
  const due = isBracketed(cure)
    ? provedClock(part, cure, rules, air.staleAfter, epochMs(Math.max(cure.run.from, newest ?? cure.run.from))).dueAt
    : dueByRecord(rules, cure, sheet, air, cureLog(part, cure.way, air));
  if (due === undefined) return undefined;
  const isProved = cure.run.to !== undefined || (newest !== undefined && due <= newest);
  if (cure.way === 'room' || isProved || isAtTemperature(part, sheet)) {
    return { at: epochMs(Math.ceil(due)), basis: 'readings' };
  }
  const warming = heatUp(part, sheet, air);
  if (warming === undefined) return { at: epochMs(Math.ceil(due)), basis: 'clock' };
  // The plain sum counts from the newest reading, or the start: what is still to heat comes on top.
  const counted = epochMs(Math.max(cure.run.from, newest ?? cure.run.from));
  const at = minutesAfter(epochMs(due), minutesBetween(counted, warming.reachesAt));
  return { at: epochMs(Math.ceil(at)), basis: 'estimate' };
}

/**
 * When a cure in the room that is not given ends, as seen at `now`: once its bell has rung, what is lacking begins now, at
 * the last reading as far as it is believed.
 */
export function roomCureEnd(part: Part, sheet: Sheet, air: AirLog, now: EpochMs): RoomCureEnd | undefined {
  const due = cureDueAt(part, sheet, air);
  const rules = cureRules(sheet, 'room');
  const clock = cureClock(part, sheet, air, now);
  if (due === undefined) return undefined;
  const rang = part.rings.get(`${partStream(part.name)}/cure-done`)?.at(-1);
  const isLate = due < now && rang !== undefined && rang.rangAt >= due;
  if (!isLate || rules === undefined || clock === undefined) return { at: due, isLate: false };
  return { at: epochMs(Math.ceil(projectedDone(rules, clock.dose.progress, now, clock.celsius))), isLate: true };
}

export interface RoomCureEnd {
  readonly at: EpochMs;
  /** Its bell has rung without a proof. */
  readonly isLate: boolean;
}

/** The newest reading on the part shows the sheet's temperature. */
function isAtTemperature(part: Part, { cure: { oven } }: Sheet): boolean {
  const read = part.temperatures.at(-1);
  return (
    oven !== undefined && read !== undefined && read.celsius >= oven.atCelsius && read.celsius <= oven.highestCelsius
  );
}

export function cureDueAt(part: Part, sheet: Sheet, air: AirLog): EpochMs | undefined {
  return cureDue(part, sheet, air)?.at;
}

export interface StageDue {
  readonly stage: StageName;
  readonly at: EpochMs;
  /** By the record, at the moment that was asked about. */
  readonly proved: boolean;
}

/** The sheet's stages of a cure in the room, each on the late side; none in an oven. */
export function stagesDue(part: Part, sheet: Sheet, air: AirLog, now: EpochMs): readonly StageDue[] {
  const { cure } = part;
  const { room } = sheet.cure;
  if (cure?.way !== 'room' || room === undefined) return [];
  return room.stages.flatMap(({ stage, time }): readonly StageDue[] => {
    const rules: DoseRules = { law: rateLaw(time), caution: 'at-least', withoutFigure: 'nothing' };
    const at = dueByRecord(rules, cure, sheet, air, air);
    const { doneAt } = readClock(rules, countedRuns(cure, sheet, air, now), air, now);
    return at === undefined
      ? []
      : [{ stage, at: epochMs(Math.ceil(at)), proved: doneAt !== undefined && doneAt <= now }];
  });
}

/** What a stage of its cure in the room is counted by; `undefined` where the sheet has no such stage. */
export function stageBasis({ cure }: Part, sheet: Sheet, air: AirLog, stage: StageName): ClockBasis | undefined {
  const time = sheet.cure.room?.stages.find((each) => each.stage === stage)?.time;
  if (cure?.way !== 'room' || time === undefined) return undefined;
  const rules = { law: rateLaw(time), caution: 'at-least', withoutFigure: 'nothing' } as const;
  return { rules, runs: expectedRuns(cure, sheet, air), log: air };
}

const dayWithoutFigure = minutes(1440);
