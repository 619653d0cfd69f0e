// What readings on a part in the oven prove: between two neighbours the colder counts, past the last one nothing does, nor
// from the door's opening to the next reading. When it is due goes on from the last reading as if it held: so it rings, and
// asks for the next. A cure begun before edition 5 stands as it was judged then, each reading held until the next.

import type { ClockReading } from '../calc/clock.ts';
import { type DoseRules, dose, type Piece, paceAt, projectedDone } from '../calc/dose.ts';
import { piecesFromReadings, provedTime } from '../calc/part-temperature.ts';
import { isFailed } from '../failed.ts';
import { holdsIn } from '../rule-editions.ts';
import { type Celsius, type EpochMs, epochMs, type Minutes, minutes, minutesAfter } from '../units.ts';
import type { Cure, Part } from './part.ts';

export function isBracketed({ way, entry }: Cure): boolean {
  return way === 'oven' && holdsIn({ since: 5 }, entry.edition);
}

/** `furthestApart`: two readings that are more than this apart prove nothing of what lay between. */
export function provedClock(
  part: Part,
  cure: Cure,
  rules: DoseRules,
  furthestApart: Minutes,
  now: EpochMs,
): ClockReading {
  const given = dose(rules, provedPieces(part, cure, furthestApart, now));
  const last = part.temperatures.findLast(({ at }) => at <= now);
  const believed = last !== undefined && minutesAfter(last.at, furthestApart) >= now ? last.celsius : undefined;
  const running = cure.run.to === undefined;
  return {
    ...{ dose: given, doneAt: given.doneAt, running, celsius: believed, readAt: last?.at },
    dueAt: given.doneAt ?? (running ? goingOn(part, cure, rules, given.progress) : undefined),
    withoutFigure: paceAt(rules, believed).why,
  };
}

/** From the last reading on; a door that was open since takes its time off. */
function goingOn({ temperatures }: Part, { run, doors }: Cure, rules: DoseRules, progress: number): EpochMs {
  const last = temperatures.at(-1);
  const from = epochMs(Math.max(run.from, last?.at ?? run.from));
  const open = doors.reduce((sum, { at, openMinutes = 0 }) => (at > from ? sum + openMinutes : sum), 0);
  return minutesAfter(projectedDone(rules, progress, from, last?.celsius), minutes(open));
}

/** Its time in the oven up to the last reading by `until`, without a temperature where nothing proves one. */
export function provedPieces(part: Part, cure: Cure, furthestApart: Minutes, until: EpochMs): readonly Piece[] {
  const { from, to } = cure.run;
  const readAt = part.temperatures.findLast(({ at }) => at <= until)?.at ?? from;
  const end = Math.max(from, Math.min(to ?? until, readAt));
  const stretches = piecesFromReadings(part.temperatures, 'at-least', furthestApart);
  if (isFailed(stretches)) return [];
  const open = doorsOpen(part, cure, epochMs(end));
  const cuts = [from, end, ...[...stretches, ...open].flatMap((each) => [each.from, each.to])];
  const inOrder = [...new Set(cuts)].filter((at) => at >= from && at <= end).sort((a, b) => a - b);
  return inOrder.slice(1).map((cut, i) => {
    const piece = { from: epochMs(inOrder[i] ?? from), to: epochMs(cut) };
    const covers = (each: { readonly from: EpochMs; readonly to: EpochMs }) =>
      each.from <= piece.from && piece.to <= each.to;
    const celsius = open.some(covers) ? undefined : stretches.find(covers)?.celsius;
    return { ...piece, celsius };
  });
}

/** At that temperature or above, as readings prove it: in all, and the longest without a break. A door that opens is one. */
export function atTemperature(
  { temperatures }: Part,
  { run, doors }: Cure,
  least: Celsius,
  furthestApart: Minutes,
): { readonly totalMinutes: Minutes; readonly longestMinutes: Minutes } {
  const opened = [...doors.map(({ at }) => at), run.to ?? epochMs(Number.MAX_SAFE_INTEGER)];
  const stretches = opened.flatMap((until, i) => {
    const shut = opened[i - 1];
    const proved = provedTime(
      temperatures.filter(({ at }) => (shut === undefined ? at >= run.from : at > shut) && at <= until),
      least,
      furthestApart,
    );
    return isFailed(proved) ? [] : [proved];
  });
  return {
    totalMinutes: minutes(stretches.reduce((sum, { totalMinutes }) => sum + totalMinutes, 0)),
    longestMinutes: minutes(Math.max(0, ...stretches.map(({ longestMinutes }) => longestMinutes))),
  };
}

/** From each opening until the part was read again, and at the least for as long as was said. */
function doorsOpen(
  { temperatures }: Part,
  { doors }: Cure,
  end: EpochMs,
): readonly { readonly from: EpochMs; readonly to: EpochMs }[] {
  return doors.map(({ at, openMinutes = minutes(0) }) => {
    const readAt = temperatures.find((reading) => reading.at >= at)?.at ?? end;
    return { from: at, to: epochMs(Math.max(readAt, minutesAfter(at, openMinutes))) };
  });
}
