// Any stretch of days as the record has it, from a shop in which its streams are loaded: the fuller page behind the day,
// the week, the month.

import type { Shop } from '../shop.ts';
import { type EpochMs, type Minutes, minutesBetween } from '../units.ts';
import type { BatchTouched } from './batches-touched.ts';
import { type BatchMaterial, type MaterialTotals, materialOf, totalsOf } from './material.ts';
import { ringsHeard } from './rings-heard.ts';
import { isWithin, type Span } from './span.ts';
import { type CanTouched, cansTouched, type Stretch, stretchOf } from './stretch.ts';

export type PeriodBatch = BatchMaterial & BatchTouched;

export interface PeriodRings {
  readonly count: number;
  readonly late: number;
  readonly unanswered: number;
  /** From a ring until it was heard: the middle one, and the slowest. */
  readonly medianMinutes: Minutes | undefined;
  readonly slowest: { readonly key: string; readonly minutes: Minutes } | undefined;
}

export interface PeriodRecord extends Stretch {
  readonly span: Span;
  readonly batches: readonly PeriodBatch[];
  readonly totals: MaterialTotals;
  readonly rings: PeriodRings;
  readonly cans: readonly CanTouched[];
}

/** Later than this, a ring was late. */
const onTimeMinutes = 1;

export function periodRecord(shop: Shop, span: Span, now: EpochMs): PeriodRecord {
  const stretch = stretchOf(shop, span, now);
  const batches = stretch.batches.map((touched) => ({ ...touched, ...materialOf(shop, touched.batch) }));
  return {
    ...stretch,
    span,
    batches,
    totals: totalsOf(batches.filter(({ batch }) => batch.weighing !== undefined && isWithin(span, batch.weighing.at))),
    rings: ringsWithin(shop, span),
    cans: cansTouched(shop, span, stretch.entries),
  };
}

function ringsWithin(shop: Shop, span: Span): PeriodRings {
  const rings = ringsHeard(shop, span);
  const waits = rings
    .flatMap(({ key, ring, heardAt: at }) =>
      at === undefined ? [] : [{ key, minutes: minutesBetween(ring.rangAt, at) }],
    )
    .sort((a, b) => a.minutes - b.minutes);
  return {
    count: rings.length,
    late: rings.filter(({ ring }) => minutesBetween(ring.dueAt, ring.rangAt) > onTimeMinutes).length,
    unanswered: rings.filter(({ heardAt: at }) => at === undefined).length,
    medianMinutes: waits[Math.floor((waits.length - 1) / 2)]?.minutes,
    slowest: waits.at(-1),
  };
}
