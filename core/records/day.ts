// The day as the record has it: figures only, from a shop in which the day's streams are loaded.

import { DateTime } from 'luxon';
import { type Correction, type Entry, isAct } from '../history.ts';
import type { PartName } from '../ids.ts';
import { type Method, methods } from '../methods.ts';
import { inNaturalOrder } from '../natural-order.ts';
import { phaseOfPart } from '../part/part.ts';
import { cureDueAt } from '../part/part-clocks.ts';
import { airLog, batchOf, byName, entriesIn, liveParts, type Shop } from '../shop.ts';
import { type Celsius, type EpochMs, epochMs, type Minutes, minutesBetween, type Percent } from '../units.ts';
import { type BatchTouched, batchesTouched } from './batches-touched.ts';
import { type DayMaterial, dayMaterial } from './day-material.ts';
import { type DaySpraying, daySpraying } from './day-spraying.ts';
import { type Deviation, deviationsIn } from './deviations.ts';
import { ringsHeard } from './rings-heard.ts';
import { isWithin } from './span.ts';

/** From its first instant up to, and without, the next day's. */
export interface DaySpan {
  /** ISO, `2026-03-02`. */
  readonly date: string;
  readonly from: EpochMs;
  readonly to: EpochMs;
}

export interface DayBatch extends BatchTouched {
  /** A pot of yesterday that is still in use was not weighed today. */
  readonly weighedThatDay: boolean;
}

export interface DayRing {
  readonly key: string;
  readonly lateMinutes: Minutes;
  readonly answered: boolean;
}

export interface DayRecord {
  readonly span: DaySpan;
  readonly batches: readonly DayBatch[];
  readonly material: DayMaterial;
  readonly partsByMethod: readonly { readonly method: Method; readonly parts: readonly PartName[] }[];
  readonly curing: readonly { readonly part: PartName; readonly dueAt: EpochMs | undefined }[];
  readonly spraying: DaySpraying;
  readonly rings: readonly DayRing[];
  readonly deviations: readonly Deviation[];
  readonly corrections: readonly { readonly entry: Entry; readonly correction: Correction }[];
  readonly airCelsius: readonly Celsius[];
  readonly humidityPercent: readonly Percent[];
  readonly idle: boolean;
}

/** `undefined` for a date that the calendar does not have. Days of 23 and 25 hours come out as such. */
export function daySpan(date: string, zone: string): DaySpan | undefined {
  const start = DateTime.fromISO(date, { zone }).startOf('day');
  if (!start.isValid) return undefined;
  return { date, from: epochMs(start.toMillis()), to: epochMs(start.plus({ days: 1 }).toMillis()) };
}

export function localDate(at: EpochMs, zone: string, daysBefore = 0): string {
  return DateTime.fromMillis(at, { zone }).minus({ days: daysBefore }).toISODate() ?? '';
}

export function dayRecord(shop: Shop, span: DaySpan, now: EpochMs): DayRecord {
  const inside = (at: EpochMs) => isWithin(span, at);
  const entries = entriesIn(shop).filter((entry) => inside(entry.happenedAt));
  const air = entries.flatMap(({ fact }) => (fact.type === 'AirRead' ? [fact] : []));
  return {
    span,
    batches: batchesTouched(shop, entries, now).map((touched) => ({
      ...touched,
      weighedThatDay: touched.batch.weighing !== undefined && inside(touched.batch.weighing.at),
    })),
    material: dayMaterial(shop, entries, inside, now),
    partsByMethod: partsOf(entries),
    curing: curingNow(shop),
    spraying: daySpraying(shop, entries),
    rings: ringsHeard(shop, span).map(({ key, ring, heardAt }) => ({
      key: ring.ring === 1 ? key : `${key}/${ring.ring}`,
      lateMinutes: minutesBetween(ring.dueAt, ring.rangAt),
      answered: heardAt !== undefined,
    })),
    deviations: deviationsIn(shop, ({ happenedAt }) => inside(happenedAt)),
    corrections: entriesIn(shop).flatMap((entry) =>
      entry.corrections.filter(({ at }) => inside(at)).map((correction) => ({ entry, correction })),
    ),
    airCelsius: air.flatMap(({ celsius }) => celsius ?? []),
    humidityPercent: air.flatMap(({ relativeHumidityPercent }) => relativeHumidityPercent ?? []),
    idle: !entries.some(isAct),
  };
}

function partsOf(entries: readonly Entry[]): DayRecord['partsByMethod'] {
  const coats = entries.flatMap(({ fact }) => (fact.type === 'CoatApplied' ? [fact] : []));
  return methods
    .map((method) => ({
      method,
      parts: [...new Set(coats.filter((coat) => coat.method === method).map(({ part }) => part))].sort(inNaturalOrder),
    }))
    .filter(({ parts }) => parts.length > 0);
}

function curingNow(shop: Shop): DayRecord['curing'] {
  return byName(liveParts(shop).filter((part) => phaseOfPart(part).is === 'curing')).map((part) => {
    const batch = batchOf(shop, part);
    return { part: part.name, dueAt: batch && cureDueAt(part, batch.sheet, airLog(shop, batch.place)) };
  });
}
