// The two clocks of a batch: the blend (stirring, or an induction time) must last at least so long; the pot life may
// last at most so long, from the first contact of B with A, stirring included.

import { type ClockReading, dueAt, type Run, readClock, type TemperatureLog } from '../calc/clock.ts';
import type { ClockBasis } from '../calc/clock-sum.ts';
import { type DoseRules, paceAt } from '../calc/dose.ts';
import { lawTimes, potLifeFactor } from '../calc/pot-mass.ts';
import type { RateLaw } from '../calc/rate-law.ts';
import { isFailed } from '../failed.ts';
import { rateLaw, type Sheet } from '../products/sheet.ts';
import {
  type Celsius,
  type EpochMs,
  epochMs,
  type Grams,
  grams,
  type Minutes,
  minutes,
  minutesAfter,
} from '../units.ts';
import type { Batch } from './batch.ts';
import { openTooLongFrom } from './lid.ts';
import { speedsOutside } from './stir-speed.ts';

function blendRules(batch: Batch): DoseRules {
  const { time, withoutFigure } = batch.sheet.blend;
  return { law: rateLaw(time), caution: 'at-least', withoutFigure };
}

export function potLifeRules(batch: Batch): DoseRules {
  const { weighing, sheet, plannedGrams } = batch;
  const mass = weighing === undefined ? plannedGrams : grams(weighing.partAGrams + weighing.partBGrams);
  return { law: potLifeLaw(sheet, mass), caution: 'at-most', withoutFigure: 'nothing' };
}

/** The sheet's pot life for so much in one pot. */
export function potLifeLaw(sheet: Sheet, mass: Grams): RateLaw {
  const law = rateLaw(sheet.potLife.time);
  if (sheet.potLife.byMass === undefined) return law;
  const found = potLifeFactor(sheet.potLife.byMass.points, mass);
  return isFailed(found) ? law : lawTimes(law, found.factor);
}

/** From first contact to its end, for so much in one pot in air that stays as it is; at the sheet's fastest where it has no figure. */
export function potLifeMinutes(sheet: Sheet, mass: Grams, celsius: Celsius | undefined): Minutes {
  const rules: DoseRules = { law: potLifeLaw(sheet, mass), caution: 'at-most', withoutFigure: 'nothing' };
  return minutes(1 / paceAt(rules, celsius).perMinute);
}

/** What counts for the blend by `at`: nothing from before the last addition, since the whole must be made one again. */
function blendRuns(batch: Batch, at: EpochMs): readonly Run[] {
  const runs = batch.sheet.blend.way === 'stir' ? batch.stirring : potRuns(batch);
  const added = batch.additions.findLast((addition) => addition.at <= at)?.at;
  if (added === undefined) return runs;
  return runs
    .filter(({ to }) => to === undefined || to > added)
    .map(({ from, to }) => ({ from: epochMs(Math.max(from, added)), to }));
}

/** By the record as it is, whatever comes. */
const always = epochMs(Number.MAX_SAFE_INTEGER);

function potRuns(batch: Batch): readonly Run[] {
  if (batch.weighing === undefined) return [];
  return [{ from: batch.weighing.at, to: undefined }];
}

/** What the stirring or induction has earned by `now`. */
export function blendClock(batch: Batch, air: TemperatureLog, now: EpochMs): ClockReading {
  return readClock(blendRules(batch), blendRuns(batch, now), air, now);
}

/** What its stirring or induction is counted by. */
export const blendBasis = (batch: Batch, air: TemperatureLog): ClockBasis => ({
  rules: blendRules(batch),
  runs: blendRuns(batch, always),
  log: air,
});

/** What its pot life is counted by, as it is known by `now`. */
export const potBasis = (batch: Batch, air: TemperatureLog, now: EpochMs): ClockBasis => ({
  rules: potRulesBy(batch, now),
  runs: potRuns(batch),
  log: air,
});

interface Shortened {
  readonly from: EpochMs;
  /** What is left of the sheet's pot life. */
  readonly share: number;
}

/** What air costs it, where the sheet says how much: the lid off too long, the stirrer turned too fast. */
function shortenings(batch: Batch): readonly Shortened[] {
  const { covered, vortex } = batch.sheet.steps ?? {};
  const cut = (percent: number | undefined, since: (of: Batch) => EpochMs | undefined): readonly Shortened[] => {
    if (percent === undefined) return [];
    const from = since(batch);
    return from === undefined ? [] : [{ from, share: percent / 100 }];
  };
  return [...cut(covered?.potLifePercent, openTooLongFrom), ...cut(vortex?.speed?.fastPotLifePercent, tooFastFrom)];
}

function tooFastFrom(batch: Batch): EpochMs | undefined {
  return speedsOutside(batch).find(({ is }) => is === 'too-fast')?.at;
}

/** How much of the pot life is gone by `now`, by the dose alone: what eyes saw stands in `batch.thickened`. */
export function potLifeClock(batch: Batch, air: TemperatureLog, now: EpochMs): ClockReading {
  return readClock(potRulesBy(batch, now), potRuns(batch), air, now);
}

function potRulesBy(batch: Batch, now: EpochMs): DoseRules {
  const rules = potLifeRules(batch);
  return { ...rules, law: lawTimes(rules.law, shortenedTo(batch, now)) };
}

/** What is left of the sheet's pot life by `now`, air having cost the rest. */
export function shortenedTo(batch: Batch, now: EpochMs): number {
  return Math.min(1, ...shortenings(batch).flatMap(({ from, share }) => (from <= now ? [share] : [])));
}

/** When a share of the pot life is gone: shortened from the moment at which that was known, never before it. */
function potDueAt(batch: Batch, air: TemperatureLog, target?: number): EpochMs | undefined {
  const rules = potLifeRules(batch);
  const whole = dueAt(rules, potRuns(batch), air, target);
  if (whole === undefined) return undefined;
  const sooner = shortenings(batch).flatMap(({ from, share }) => {
    const end = dueAt({ ...rules, law: lawTimes(rules.law, share) }, potRuns(batch), air, target);
    return end === undefined ? [] : [Math.max(end, from)];
  });
  return epochMs(Math.min(whole, ...sooner));
}

export interface PotLifeTimes {
  readonly halfAt: EpochMs;
  /** Time left to empty the pot and flush the gear begins here. */
  readonly marginAt: EpochMs;
  readonly endAt: EpochMs;
}

/** `undefined` before B met A. Each on the early side, to the millisecond. */
export function potLifeTimes(batch: Batch, air: TemperatureLog): PotLifeTimes | undefined {
  const half = potDueAt(batch, air, 0.5);
  const end = potDueAt(batch, air);
  if (half === undefined || end === undefined || batch.weighing === undefined) return undefined;
  const margin = minutesAfter(end, minutes(-batch.sheet.potLife.marginMinutes));
  return {
    halfAt: epochMs(Math.floor(half)),
    marginAt: epochMs(Math.floor(Math.max(margin, batch.weighing.at))),
    endAt: epochMs(Math.floor(end)),
  };
}

/** When the blend rings, on the late side; `undefined` while the stirrer stands still before its time. */
export function blendDueAt(batch: Batch, air: TemperatureLog): EpochMs | undefined {
  const due = dueAt(blendRules(batch), blendRuns(batch, always), air);
  return due === undefined ? undefined : epochMs(Math.ceil(due));
}

/** Minutes the sheet wants at the temperature that its clock counts by; `undefined` where it gives no figure. */
export function blendWantedMinutes(batch: Batch, { celsius }: Pick<ClockReading, 'celsius'>): Minutes | undefined {
  const pace = paceAt(blendRules(batch), celsius);
  return pace.why === undefined ? minutes(1 / pace.perMinute) : undefined;
}

export interface BlendTotals {
  /** What the sheet asked over the temperatures that there were; `undefined` where it never gave a figure. */
  readonly wantedMinutes: Minutes | undefined;
  readonly givenMinutes: Minutes;
}

/**
 * Wanted and given in whole, for the day's summary. Wanted is the sheet's figure over the temperatures that earned
 * credit; what ran on after the blend was done in an induction, or after the pot was dead, is not given.
 */
export function blendTotals(batch: Batch, air: TemperatureLog, now: EpochMs): BlendTotals {
  const whole = blendClock(batch, air, now);
  const ends = [batch.sheet.blend.way === 'induction' ? whole.doneAt : undefined, potLifeTimes(batch, air)?.endAt, now];
  const until = epochMs(Math.min(...ends.filter((at) => at !== undefined)));
  const ran = blendClock(batch, air, until);
  const { ranMinutes: givenMinutes } = ran.dose;
  const { dose } = blendClock(batch, air, epochMs(Math.min(whole.doneAt ?? until, until)));
  const { unknown, below, above } = dose.withoutFigureMinutes;
  const uncredited = batch.sheet.blend.withoutFigure === 'slowest' ? 0 : unknown + below + above;
  const credited = dose.ranMinutes - uncredited;
  if (dose.progress > 0 && credited > 0) return { wantedMinutes: minutes(credited / dose.progress), givenMinutes };
  return { wantedMinutes: blendWantedMinutes(batch, ran), givenMinutes };
}
