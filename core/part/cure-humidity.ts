// What cures by moisture fails when the air is too dry, and some when it is too damp: the stretches of a cure in the
// room that count, by the humidity that was read. The sheet's range decides; a sheet without one lets all of it count.

import type { Run } from '../calc/clock.ts';
import type { AirLog } from '../place/place.ts';
import type { Sheet } from '../products/sheet.ts';
import { type EpochMs, epochMs, type Minutes, minutes, minutesAfter, minutesBetween } from '../units.ts';

type HumidityRange = NonNullable<NonNullable<Sheet['cure']['room']>['humidity']>;

type Humidity = 'within' | 'outside' | 'unknown';

/**
 * A night whose lowest temperature was told counts as within where the last reading before it was, and the next after
 * it (if there is one): nobody's hygrometer stood by, and the cards say so.
 */
function humidityAt(range: HumidityRange, air: AirLog, at: EpochMs): Humidity {
  const judged = (percent: number): Humidity =>
    percent >= range.lowestPercent && percent <= range.highestPercent ? 'within' : 'outside';
  const last = air.humidities.findLast((reading) => reading.at <= at);
  if (last === undefined) return 'unknown';
  if (at < minutesAfter(last.at, air.staleAfter)) return judged(last.percent);
  const night = air.lowest.find(({ from, to }) => from <= at && at < to);
  if (night === undefined) return 'unknown';
  const next = air.humidities.find((reading) => reading.at > at);
  return judged(last.percent) === 'within' && (next === undefined || judged(next.percent) === 'within')
    ? 'within'
    : 'unknown';
}

interface Stretch {
  readonly from: EpochMs;
  readonly to: EpochMs;
  readonly humidity: Humidity;
}

function stretches(range: HumidityRange, air: AirLog, from: EpochMs, to: EpochMs): readonly Stretch[] {
  const changes = [
    ...air.humidities.flatMap(({ at }) => [at, minutesAfter(at, air.staleAfter)]),
    ...air.lowest.flatMap((night) => [night.from, night.to]),
  ].filter((at) => at > from && at < to);
  const cuts = [from, ...[...new Set(changes)].sort((a, b) => a - b), to];
  return cuts.slice(0, -1).flatMap((start, i) => {
    const end = cuts[i + 1];
    return end === undefined || end <= start ? [] : [{ from: start, to: end, humidity: humidityAt(range, air, start) }];
  });
}

/** The parts of a cure's run that count by `until`; all of it where the sheet gives no range. */
export function runsThatCount(run: Run, range: HumidityRange | undefined, air: AirLog, until: EpochMs): readonly Run[] {
  if (range === undefined) return [run];
  const end = epochMs(Math.min(run.to ?? until, until));
  return stretches(range, air, run.from, end)
    .filter(({ humidity }) => humidity === 'within')
    .map(({ from, to }) => ({ from, to }));
}

/** For the due time: what counted up to the last reading of the humidity, and from there on as if it stayed within. */
export function runsExpected(run: Run, range: HumidityRange | undefined, air: AirLog): readonly Run[] {
  if (range === undefined || run.to !== undefined) return runsThatCount(run, range, air, run.to ?? run.from);
  const newest = epochMs(Math.max(run.from, air.humidities.at(-1)?.at ?? run.from));
  return [...runsThatCount(run, range, air, newest), { from: newest, to: undefined }];
}

/** Minutes without credit for their humidity, by reason. */
export function humidityHeldBack(
  run: Run,
  range: HumidityRange | undefined,
  air: AirLog,
  until: EpochMs,
): { readonly outside: Minutes; readonly unknown: Minutes } {
  const end = epochMs(Math.min(run.to ?? until, until));
  const held = range === undefined ? [] : stretches(range, air, run.from, end);
  const sum = (why: Humidity): Minutes =>
    minutes(
      held
        .filter(({ humidity }) => humidity === why)
        .reduce((total, { from, to }) => total + minutesBetween(from, to), 0),
    );
  return { outside: sum('outside'), unknown: sum('unknown') };
}
