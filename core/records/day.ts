// The day as the record has it: figures only, from a shop in which the day's streams are loaded.

import { DateTime } from 'luxon';
import type { Batch } from '../batch/batch.ts';
import { type BlendTotals, blendTotals } from '../batch/batch-clocks.ts';
import { ratioError } from '../calc/mixing.ts';
import { isRefused } from '../calc/refusal.ts';
import { type Method, methods } from '../commands.ts';
import { type Correction, type Entry, isAct } from '../history.ts';
import type { PartName } from '../ids.ts';
import { phaseOfPart } from '../part/part.ts';
import { cureDueAt } from '../part/part-clocks.ts';
import { batchOf } from '../part/part-decide.ts';
import { mixRatio } from '../products/sheet.ts';
import { airLog, entriesIn, liveParts, type Shop } from '../shop.ts';
import { type Celsius, type EpochMs, epochMs, type Minutes, minutesBetween, type Percent } from '../units.ts';
import { type DayMaterial, dayMaterial } from './day-material.ts';
import { type DaySpraying, daySpraying } from './day-spraying.ts';
import { type Deviation, deviationsIn } from './deviations.ts';

/** From its first instant up to, and without, the next day's. */
export interface DaySpan {
  /** ISO, `2026-03-02`. */
  readonly date: string;
  readonly from: EpochMs;
  readonly to: EpochMs;
}

export interface DayBatch {
  readonly batch: Batch;
  /** A pot of yesterday that is still in use was not weighed today. */
  readonly weighedThatDay: boolean;
  /** Share of the sheet's B/A, in per cent; `undefined` before weighing. */
  readonly ratioErrorPercent: number | undefined;
  readonly blend: BlendTotals;
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
  const inside = (at: EpochMs) => at >= span.from && at < span.to;
  const entries = entriesIn(shop).filter((entry) => inside(entry.happenedAt));
  const air = entries.flatMap(({ fact }) => (fact.type === 'AirRead' ? [fact] : []));
  return {
    span,
    batches: batchesOf(shop, entries, inside, now),
    material: dayMaterial(shop, entries, inside, now),
    partsByMethod: partsOf(entries),
    curing: curingNow(shop),
    spraying: daySpraying(shop, entries),
    rings: ringsOf(shop, inside),
    deviations: deviationsIn(shop).filter(({ entry }) => inside(entry.happenedAt)),
    corrections: entriesIn(shop).flatMap((entry) =>
      entry.corrections.filter(({ at }) => inside(at)).map((correction) => ({ entry, correction })),
    ),
    airCelsius: air.flatMap(({ celsius }) => celsius ?? []),
    humidityPercent: air.flatMap(({ relativeHumidityPercent }) => relativeHumidityPercent ?? []),
    idle: !entries.some(isAct),
  };
}

/** Batches that something was done to on the day. */
function batchesOf(
  shop: Shop,
  entries: readonly Entry[],
  inside: (at: EpochMs) => boolean,
  now: EpochMs,
): readonly DayBatch[] {
  const touched = new Set(entries.filter(isAct).flatMap(({ stream, alsoUnder }) => [stream, ...alsoUnder]));
  return [...shop.batches.values()]
    .filter(({ number }) => touched.has(`batch/${number}`))
    .sort((a, b) => a.number - b.number)
    .map((batch) => {
      const error = batch.weighing === undefined ? undefined : ratioError(mixRatio(batch.sheet.ratio), batch.weighing);
      return {
        batch,
        weighedThatDay: batch.weighing !== undefined && inside(batch.weighing.at),
        ratioErrorPercent: error === undefined || isRefused(error) ? undefined : error * 100,
        blend: blendTotals(batch, airLog(shop, batch.place), now),
      };
    });
}

function partsOf(entries: readonly Entry[]): DayRecord['partsByMethod'] {
  const coats = entries.flatMap(({ fact }) => (fact.type === 'CoatApplied' ? [fact] : []));
  return methods
    .map((method) => ({
      method,
      parts: [...new Set(coats.filter((coat) => coat.method === method).map(({ part }) => part))],
    }))
    .filter(({ parts }) => parts.length > 0);
}

function curingNow(shop: Shop): DayRecord['curing'] {
  return liveParts(shop)
    .filter((part) => phaseOfPart(part).is === 'curing')
    .map((part) => {
      const batch = batchOf(shop, part);
      return { part: part.name, dueAt: batch && cureDueAt(part, batch.sheet, airLog(shop, batch.place)) };
    });
}

/** Answered by name, or by going on with the work: any later act on the same batch or part. */
function ringsOf(shop: Shop, inside: (at: EpochMs) => boolean): readonly DayRing[] {
  const nouns = [
    ...shop.batches.values(),
    ...shop.cans.values(),
    ...shop.parts.values(),
    ...shop.places.values(),
    ...shop.sessions.values(),
  ];
  return nouns.flatMap(({ rings, entries }) => {
    const acts = entries.filter(isAct);
    return [...rings].flatMap(([key, list]) =>
      list
        .filter((ring) => inside(ring.rangAt))
        .map((ring) => ({
          key: ring.ring === 1 ? key : `${key}/${ring.ring}`,
          lateMinutes: minutesBetween(ring.dueAt, ring.rangAt),
          answered: ring.answered !== undefined || acts.some((entry) => entry.seq > ring.seq),
        })),
    );
  });
}
