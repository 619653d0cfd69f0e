// Any stretch of days as the record has it, from a shop in which its streams are loaded: the fuller page behind the day,
// the week, the month.

import { type Can, leftGrams } from '../can/can.ts';
import { type Correction, type Entry, isAct } from '../history.ts';
import type { BatchNumber, PartName } from '../ids.ts';
import { inNaturalOrder } from '../natural-order.ts';
import { entriesIn, type Shop } from '../shop.ts';
import { type EpochMs, type Grams, grams, type Minutes, minutesBetween } from '../units.ts';
import { type BatchTouched, batchesTouched } from './batches-touched.ts';
import { type Deviation, deviationsIn } from './deviations.ts';
import { type BatchMaterial, type MaterialTotals, materialOf, totalsOf } from './material.ts';
import { ringsHeard } from './rings-heard.ts';
import { isWithin, type Span } from './span.ts';

export type PeriodBatch = BatchMaterial & BatchTouched;

export interface PeriodCan {
  readonly can: Can;
  readonly pouredGrams: Grams;
  readonly leftGrams: Grams;
}

export interface PeriodRings {
  readonly count: number;
  readonly late: number;
  readonly unanswered: number;
  /** From a ring until it was heard: the middle one, and the slowest. */
  readonly medianMinutes: Minutes | undefined;
  readonly slowest: { readonly key: string; readonly minutes: Minutes } | undefined;
}

export interface PeriodRecord {
  readonly span: Span;
  readonly batches: readonly PeriodBatch[];
  readonly totals: MaterialTotals;
  readonly coats: readonly { readonly part: PartName; readonly batch: BatchNumber; readonly entry: Entry }[];
  readonly released: readonly PartName[];
  readonly held: readonly { readonly part: PartName; readonly entry: Entry }[];
  readonly air: readonly Entry[];
  readonly deviations: readonly Deviation[];
  readonly corrections: readonly { readonly entry: Entry; readonly correction: Correction }[];
  /** Near misses and alarms. */
  readonly alarms: readonly Entry[];
  readonly rings: PeriodRings;
  readonly cans: readonly PeriodCan[];
  readonly idle: boolean;
}

/** Later than this, a ring was late. */
const onTimeMinutes = 1;

export function periodRecord(shop: Shop, span: Span, now: EpochMs): PeriodRecord {
  const all = entriesIn(shop);
  const entries = all.filter((entry) => isWithin(span, entry.happenedAt));
  const batches = batchesTouched(shop, entries, now).map((touched) => ({
    ...touched,
    ...materialOf(shop, touched.batch),
  }));
  return {
    span,
    batches,
    totals: totalsOf(batches.filter(({ batch }) => batch.weighing !== undefined && isWithin(span, batch.weighing.at))),
    coats: entries.flatMap((entry) =>
      entry.fact.type === 'CoatApplied' ? [{ part: entry.fact.part, batch: entry.fact.batch, entry }] : [],
    ),
    released: partsOf(entries, 'PartReleased'),
    held: entries.flatMap((entry) => (entry.fact.type === 'PartHeld' ? [{ part: nameOf(entry), entry }] : [])),
    air: entries.filter(({ fact }) => fact.type === 'AirRead'),
    deviations: deviationsIn(shop, ({ happenedAt }) => isWithin(span, happenedAt)),
    corrections: all.flatMap((entry) =>
      entry.corrections.filter(({ at }) => isWithin(span, at)).map((correction) => ({ entry, correction })),
    ),
    alarms: entries.filter(({ fact }) => fact.type === 'NearMissTold' || fact.type === 'AlarmRaised'),
    rings: ringsWithin(shop, span),
    cans: cansWithin(shop, span, entries),
    idle: !entries.some(isAct),
  };
}

const nameOf = (entry: Entry): PartName => entry.stream.slice(entry.stream.indexOf('/') + 1);

function partsOf(entries: readonly Entry[], type: Entry['fact']['type']): readonly PartName[] {
  return [...new Set(entries.filter(({ fact }) => fact.type === type).map(nameOf))].sort(inNaturalOrder);
}

function cansWithin(shop: Shop, span: Span, entries: readonly Entry[]): readonly PeriodCan[] {
  const touched = new Set(entries.flatMap(({ stream, alsoUnder }) => [stream, ...alsoUnder]));
  return [...shop.cans.values()]
    .filter(({ number }) => touched.has(`can/${number}`))
    .sort((a, b) => a.number - b.number)
    .map((can) => {
      const poured = can.pours.filter(({ at }) => isWithin(span, at)).reduce((sum, pour) => sum + pour.grams, 0);
      return { can, pouredGrams: grams(poured), leftGrams: leftGrams(can) };
    });
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
