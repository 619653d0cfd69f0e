// What one person breathed over a working day, task by task, against the law of the crew's country. Hours that nobody measured
// are taken at the highest that was told, never as clean air; and a mean over hours says nothing of its worst quarter of an hour.

import { type DayLimit, dayLimit, type ShortLimits, shortLimits } from '../calc/day-limit.ts';
import { checkPeaks, dayAverage, milligramsFromPpm, mixtureIndex, type Sampled } from '../calc/exposure.ts';
import { type ExposureLimit, type SubstanceId, substanceIds, substances } from '../calc/exposure-limits.ts';
import { isFailed } from '../failed.ts';
import type { PersonName } from '../ids.ts';
import {
  type EpochMs,
  type Hours,
  hours,
  type MilligramsPerCubicMetre,
  minutes,
  type PartsPerMillion,
  partsPerMillion,
} from '../units.ts';
import type { Exposure, SpraySettings } from './spray-settings.ts';

/** `may-be`: unless the time that nobody measured was better than the worst that was told. */
export type Verdict = 'over' | 'may-be' | 'not-measured' | 'within';

export interface ShortVerdict {
  readonly limit: ExposureLimit;
  /** The highest mean of a task. */
  readonly highest: PartsPerMillion;
  readonly is: Verdict;
}

export interface Breathed {
  readonly substance: SubstanceId;
  /** The rest of eight hours counted as clean air, as the rule does. */
  readonly measured: PartsPerMillion;
  /** The rest at the highest told. */
  readonly assumed: PartsPerMillion;
  /** The same by mass. */
  readonly milligrams: MilligramsPerCubicMetre | undefined;
  readonly highest: PartsPerMillion;
  readonly rest: Hours;
  /** `undefined`: nobody's is kept. */
  readonly limit: DayLimit | undefined;
  readonly is: Verdict;
  readonly short: readonly ShortVerdict[];
  /** Of NIOSH over a quarter of an hour, lower than all that gates, and passed. */
  readonly advisedShort: ShortVerdict | undefined;
}

export interface ExposureDay {
  readonly person: PersonName;
  readonly breathed: readonly Breathed[];
  /** Shares of their limits together, where there is more than one; above 1 they pass it. */
  readonly mixture: { readonly measured: number; readonly assumed: number; readonly is: Verdict } | undefined;
  readonly is: Verdict;
}

/** Between two working days nobody rests for less: Directive 2003/88/EC, article 3, taken everywhere. */
const restMs = 11 * 3_600_000;

/** That person's tasks by working day, over midnight too. */
function workdays(all: readonly Exposure[], person: PersonName): readonly (readonly Exposure[])[] {
  const days: Exposure[][] = [];
  for (const task of all.filter((each) => each.person === person).toSorted((a, b) => a.at - b.at)) {
    const day = days.at(-1);
    const last = day?.at(-1);
    if (day !== undefined && last !== undefined && task.at - last.at < restMs) day.push(task);
    else days.push([task]);
  }
  return days;
}

/** The tasks of the working day of this one, itself among them. */
export const workdayWith = (all: readonly Exposure[], task: Exposure): readonly Exposure[] =>
  workdays([...all, task], task.person).find((day) => day.includes(task)) ?? [task];

/** The last working day on which that person had a task at `at`. */
export function exposureDayAt(spray: SpraySettings, person: PersonName, at: EpochMs): ExposureDay | undefined {
  const tasks = workdays(spray.exposures ?? [], person).find((day) => day.some((task) => task.at === at));
  return tasks && judgedDay(person, tasks, spray);
}

/** Everybody's working days that began in the span, or that go on in it still. */
export function exposureDays(spray: SpraySettings, span: Span, now: EpochMs): readonly ExposureDay[] {
  const all = spray.exposures ?? [];
  const isNow = span.from <= now && now < span.to;
  return [...new Set(all.map(({ person }) => person))].flatMap((person) =>
    workdays(all, person)
      .filter((day) => {
        const [first, last] = [day[0]?.at ?? now, day.at(-1)?.at ?? now];
        return (span.from <= first && first < span.to) || (isNow && last <= now && now - last < restMs);
      })
      .map((day) => judgedDay(person, day, spray)),
  );
}

interface Span {
  readonly from: EpochMs;
  readonly to: EpochMs;
}

function judgedDay(person: PersonName, tasks: readonly Exposure[], spray: SpraySettings): ExposureDay {
  const breathed = substanceIds.flatMap((substance) => {
    const of = tasks.filter((task) => task.substance === substance);
    return of.length === 0 ? [] : [breathedOf(substance, of, spray)];
  });
  const mixture = mixtureOf(breathed);
  const each = breathed.flatMap(({ is, short }) => [is, ...short.map((short) => short.is)]);
  return { person, breathed, mixture, is: worstOf(mixture === undefined ? each : [...each, mixture.is]) };
}

const byWeight: readonly Verdict[] = ['over', 'may-be', 'not-measured', 'within'];
const worstOf = (all: readonly Verdict[]): Verdict => byWeight.find((each) => all.includes(each)) ?? 'within';

function breathedOf(substance: SubstanceId, tasks: readonly Exposure[], { law, dayLimits }: SpraySettings): Breathed {
  const samples = tasks.map(({ ppm, taskMinutes }): Sampled => ({ ppm, hours: hours(taskMinutes / 60) }));
  const found = dayAverage(samples);
  // No more than a day's hours are recorded; what a correction made of them counts by the highest alone.
  const average = isFailed(found) ? { ppm: highestOf(tasks), unsampledHours: hours(0) } : found;
  const highest = highestOf(tasks);
  const assumed = partsPerMillion(average.ppm + (highest * average.unsampledHours) / 8);
  const mass = milligramsFromPpm(assumed, substances[substance].molarMass);
  const own = new Map<string, PartsPerMillion>(dayLimits);
  const kept = dayLimit(substances[substance], law.frame, own.get(substance));
  const limit = isFailed(kept) ? undefined : kept;
  const gates = shortLimits(substances[substance], law.frame);
  const short = [gates.shortTerm, gates.ceiling].flatMap((gate) => (gate ? [shortVerdict(gate, tasks, samples)] : []));
  return {
    ...{ substance, measured: average.ppm, assumed, highest, rest: average.unsampledHours, limit, short },
    milligrams: isFailed(mass) ? undefined : mass,
    is: limit === undefined ? 'not-measured' : against(average.ppm, assumed, limit.ppm),
    advisedShort: advisedShort(gates, tasks, samples),
  };
}

const highestOf = (tasks: readonly Exposure[]) => partsPerMillion(Math.max(...tasks.map(({ ppm }) => ppm)));

/** A slip of the last bit passes no limit. */
const passes = (value: number, limit: number): boolean => value > limit * (1 + 1e-9);

function against(measured: number, assumed: number, limit: number): Verdict {
  if (passes(measured, limit)) return 'over';
  return passes(assumed, limit) ? 'may-be' : 'within';
}

const quarter = 15;

function shortVerdict(limit: ExposureLimit, tasks: readonly Exposure[], samples: readonly Sampled[]): ShortVerdict {
  const highest = highestOf(tasks);
  const isOver =
    limit.kind === 'ceiling' ? passesCeiling(limit, samples) : tasks.some((task) => passesQuarter(task, limit.ppm));
  if (isOver) return { limit, highest, is: 'over' };
  if (limit.kind === 'short-term' && passes(highest, limit.ppm)) return { limit, highest, is: 'may-be' };
  const isWhole = tasks.every(({ taskMinutes }) => taskMinutes <= quarter);
  return { limit, highest, is: isWhole ? 'within' : 'not-measured' };
}

/** Somewhere in a longer task a quarter of an hour is as bad as its mean; a shorter one is only part of its own. */
const passesQuarter = ({ ppm, taskMinutes }: Exposure, limit: PartsPerMillion): boolean =>
  passes(ppm * Math.min(1, taskMinutes / quarter), limit);

function passesCeiling(
  { ppm, peak = { ppm, minutes: minutes(0) } }: ExposureLimit,
  samples: readonly Sampled[],
): boolean {
  const verdict = checkPeaks(
    { averagePpm: ppm, ceilingPpm: ppm, peakPpm: peak.ppm, peakMinutes: peak.minutes },
    samples,
  );
  return !isFailed(verdict) && verdict.breaches.some((breach) => breach !== 'average');
}

function advisedShort({ advised }: ShortLimits, tasks: readonly Exposure[], samples: readonly Sampled[]) {
  const verdict = advised && shortVerdict(advised, tasks, samples);
  return verdict !== undefined && (verdict.is === 'over' || verdict.is === 'may-be') ? verdict : undefined;
}

function mixtureOf(breathed: readonly Breathed[]): ExposureDay['mixture'] {
  const limited = breathed.flatMap(({ limit, ...each }) =>
    limit === undefined ? [] : [{ ...each, limitPpm: limit.ppm }],
  );
  if (limited.length < 2) return undefined;
  const measured = mixtureIndex(limited.map(({ measured: ppm, limitPpm }) => ({ ppm, limitPpm })));
  const assumed = mixtureIndex(limited.map(({ assumed: ppm, limitPpm }) => ({ ppm, limitPpm })));
  if (isFailed(measured) || isFailed(assumed)) return undefined;
  return { measured, assumed, is: against(measured, assumed, 1) };
}
