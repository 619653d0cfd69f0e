// The day as the record has it: figures only, from a shop in which the day's streams are loaded.

import { DateTime } from 'luxon';
import type { Entry } from '../history.ts';
import { nounOf, numberIn, type PartName } from '../ids.ts';
import { type Method, methods } from '../methods.ts';
import { inNaturalOrder } from '../natural-order.ts';
import { heldParts } from '../part/held-reminders.ts';
import { type Part, phaseOfPart } from '../part/part.ts';
import { cureDueAt } from '../part/part-clocks.ts';
import { streamsTouched } from '../seal.ts';
import type { Session } from '../session/session.ts';
import { airLog, batchOf, byName, liveParts, type Shop } from '../shop.ts';
import { type Celsius, type EpochMs, epochMs, type Minutes, minutesBetween, type Percent } from '../units.ts';
import { numberedKey } from '../wanted-reminder.ts';
import type { BatchTouched } from './batches-touched.ts';
import { type DayMaterial, dayMaterial } from './day-material.ts';
import { ringsHeard } from './rings-heard.ts';
import { isWithin } from './span.ts';
import { type Stretch, stretchOf } from './stretch.ts';

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

export interface DayRecord extends Stretch {
  readonly span: DaySpan;
  readonly batches: readonly DayBatch[];
  readonly material: DayMaterial;
  /** What was said of surfaces before their coat. */
  readonly prepared: readonly Entry[];
  readonly partsByMethod: readonly { readonly method: Method; readonly parts: readonly PartName[] }[];
  readonly curing: readonly { readonly part: PartName; readonly dueAt: EpochMs | undefined }[];
  /** Dry, and in no cure yet. */
  readonly waiting: readonly { readonly part: PartName; readonly dryAt: EpochMs }[];
  /** As it stands now, and so of no day that is over. */
  readonly onHold: readonly Part[];
  readonly sessions: readonly Session[];
  readonly rings: readonly DayRing[];
  readonly airCelsius: readonly Celsius[];
  readonly humidityPercent: readonly Percent[];
}

/** `undefined` for a date that the calendar does not have. Days of 23 and 25 hours come out as such. */
export function daySpan(date: string, zone: string): DaySpan | undefined {
  const start = DateTime.fromISO(date, { zone }).startOf('day');
  if (!start.isValid) return undefined;
  return { date, from: epochMs(start.toMillis()), to: epochMs(start.plus({ days: 1 }).toMillis()) };
}

export function dayRecord(shop: Shop, span: DaySpan, now: EpochMs): DayRecord {
  const stretch = stretchOf(shop, span, now);
  const { entries, coats, air } = stretch;
  return {
    ...stretch,
    span,
    batches: stretch.batches.map((touched) => ({
      ...touched,
      weighedThatDay: touched.batch.weighing !== undefined && isWithin(span, touched.batch.weighing.at),
    })),
    material: dayMaterial(shop, entries, span, now),
    prepared: entries.filter(({ fact }) => fact.type === 'SurfacePrepared'),
    partsByMethod: byMethod(coats.map(({ fact }) => fact)),
    curing: curingNow(shop),
    waiting: waitingNow(shop),
    onHold: isWithin(span, now) ? heldParts(shop).map(({ part }) => part) : [],
    sessions: [...streamsTouched(entries)]
      .flatMap((stream) => (nounOf(stream) === 'session' ? (shop.sessions.get(numberIn(stream)) ?? []) : []))
      .sort((a, b) => a.number - b.number),
    rings: ringsHeard(shop, span).map(({ key, ring, heardAt }) => ({
      key: numberedKey(key, ring.ring),
      lateMinutes: minutesBetween(ring.dueAt, ring.rangAt),
      answered: heardAt !== undefined,
    })),
    airCelsius: air.flatMap(({ fact }) => fact.celsius ?? []),
    humidityPercent: air.flatMap(({ fact }) => fact.relativeHumidityPercent ?? []),
  };
}

function byMethod(coats: readonly { readonly method: Method; readonly part: PartName }[]): DayRecord['partsByMethod'] {
  return methods
    .map((method) => ({
      method,
      parts: [...new Set(coats.filter((coat) => coat.method === method).map(({ part }) => part))].sort(inNaturalOrder),
    }))
    .filter(({ parts }) => parts.length > 0);
}

function waitingNow(shop: Shop): DayRecord['waiting'] {
  return byName(liveParts(shop)).flatMap((part) => {
    const phase = phaseOfPart(part);
    return phase.is === 'dry' ? [{ part: part.name, dryAt: phase.dryAt }] : [];
  });
}

function curingNow(shop: Shop): DayRecord['curing'] {
  return byName(liveParts(shop).filter((part) => phaseOfPart(part).is === 'curing')).map((part) => {
    const batch = batchOf(shop, part);
    return { part: part.name, dueAt: batch && cureDueAt(part, batch.sheet, airLog(shop, batch.place)) };
  });
}
