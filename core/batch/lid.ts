// The lid of a pot while its mix is stirred, from first contact until it is filtered or used: how long it stood open, when
// that rings, and from when it is longer than the sheet allows.

import type { Run } from '../calc/clock.ts';
import { hadHappened, type Rule } from '../rules.ts';
import { type EpochMs, epochMs, type Minutes, minutes, minutesAfter, minutesBetween } from '../units.ts';
import type { Batch } from './batch.ts';

/** How long the pot has stood uncovered by `now`, whatever was in it. */
export function uncoveredMinutes(batch: Batch, now: EpochMs): Minutes {
  const spans = batch.uncovered.map(({ from, to }) => minutesBetween(from, to ?? now));
  return minutes(spans.reduce<number>((sum, span) => sum + Math.max(0, span), 0));
}

/** What of that fell into the stirring; the last may still go on. */
function openInStir({ uncovered, weighing, filteredAt, coats, thickened }: Batch): readonly Run[] {
  if (weighing === undefined) return [];
  const ends = [filteredAt, coats[0]?.at, thickened?.at].filter((at) => at !== undefined);
  const end = ends.length === 0 ? undefined : epochMs(Math.min(...ends));
  return uncovered
    .map(({ from, to = end }) => ({
      from: epochMs(Math.max(from, weighing.at)),
      to: to === undefined ? undefined : epochMs(Math.min(to, end ?? to)),
    }))
    .filter(({ from, to }) => to === undefined || to > from);
}

/** When the open lid rings, while it is off. */
export function lidRingsAt(batch: Batch): EpochMs | undefined {
  const { covered } = batch.sheet.steps ?? {};
  const open = openInStir(batch).at(-1);
  return covered === undefined || open === undefined || open.to !== undefined
    ? undefined
    : minutesAfter(open.from, covered.ringMinutes);
}

/** From when it was longer in all than the sheet allows; where the lid is still off, from when it will be. */
export function openTooLongFrom(batch: Batch): EpochMs | undefined {
  const { covered } = batch.sheet.steps ?? {};
  if (covered === undefined) return undefined;
  let left: number = covered.mostMinutes;
  for (const { from, to } of openInStir(batch)) {
    const at = minutesAfter(from, minutes(left));
    if (to === undefined || to > at) return at;
    left -= minutesBetween(from, to);
  }
  return undefined;
}

export interface LidCase {
  readonly batch: Batch;
  /** When the lid came off. */
  readonly from: EpochMs;
}

/** A deviation of the last time that it came off, as far as the record knows that it was still off. */
export const lidRules: readonly Rule<LidCase>[] = [
  {
    code: 'uncovered-too-long',
    source: 'sheet',
    liftedBy: 'nobody',
    since: 4,
    check: ({ batch, from }) => {
      const mostMinutes = batch.sheet.steps?.covered?.mostMinutes;
      const past = openTooLongFrom(batch);
      const run = openInStir(batch).find((each) => each.from === Math.max(from, batch.weighing?.at ?? from));
      if (mostMinutes === undefined || past === undefined || run === undefined || past < run.from) return undefined;
      const until = run.to ?? epochMs(Math.max(...batch.entries.map(({ happenedAt }) => happenedAt)));
      if (until === past || !hadHappened(past, until)) return undefined;
      return {
        code: 'uncovered-too-long',
        openMinutes: minutes(mostMinutes + minutesBetween(past, until)),
        mostMinutes,
      };
    },
  },
];
