// How long a can has stood without gas over it, and what its headspace needs. The clock counts from the lid coming off,
// or from a lead's check while it is off; nothing but gas over it, or its last gram, stops it.

import { volumeFromMass } from '../calc/density.ts';
import { cleanGas, oxygenInAir, purgeVolume } from '../calc/gas.ts';
import { preStir } from '../calc/pre-stir.ts';
import { isFailed } from '../failed.ts';
import { componentDensity } from '../products/sheet.ts';
import type { Blanket } from '../products/sheet-material.ts';
import { type Edition, editionOfToday } from '../rule-editions.ts';
import { type EpochMs, epochMs, type Litres, litres, type Minutes, minutesAfter, minutesBetween } from '../units.ts';
import { type Can, isGasSensitive, leftGrams } from './can.ts';

export interface BlanketTimes {
  /** From here the minutes count. */
  readonly since: EpochMs;
  readonly ringAt: EpochMs;
  readonly leadAt: EpochMs;
  readonly doubtfulAt: EpochMs;
}

/** `undefined` while gas is over it, and for a can that needs none. */
export function blanketTimes(can: Can): BlanketTimes | undefined {
  const last = can.lidOff.at(-1);
  const { blanket } = can.sheet;
  if (blanket === undefined || !isGasSensitive(can) || last === undefined || last.to !== undefined) return undefined;
  return timesFrom(countsFrom(can, last.from, undefined), blanket);
}

function timesFrom(since: EpochMs, { ringMinutes, leadMinutes, doubtfulMinutes }: Blanket): BlanketTimes {
  return {
    since,
    ringAt: minutesAfter(since, ringMinutes),
    leadAt: minutesAfter(since, leadMinutes),
    doubtfulAt: minutesAfter(since, doubtfulMinutes),
  };
}

/** A check takes the can as it is: what it has stood until then no longer counts. */
function countsFrom(can: Can, from: EpochMs, by: EpochMs | undefined): EpochMs {
  const checks = can.checkedAt.filter((at) => by === undefined || at <= by);
  return epochMs(Math.max(from, ...checks));
}

export interface Doubt {
  readonly since: EpochMs;
  /** It stood too long without gas, or some was left where it was to be used whole. */
  readonly because: 'stood-open' | 'left-over';
}

/** `undefined` where it is not in doubt at `at`, or was looked at since. */
export function doubtOf(can: Can, at: EpochMs): Doubt | undefined {
  const since = openTooLongSince(can, at);
  if (since !== undefined) return { since, because: 'stood-open' };
  const { leftOverAt, checkedAt } = can;
  if (leftOverAt === undefined || leftOverAt > at) return undefined;
  const isChecked = checkedAt.some((checked) => leftOverAt <= checked && checked <= at);
  return isChecked ? undefined : { since: leftOverAt, because: 'left-over' };
}

function openTooLongSince(can: Can, at: EpochMs): EpochMs | undefined {
  const { blanket } = can.sheet;
  if (blanket === undefined || !isGasSensitive(can)) return undefined;
  for (const { from, to } of can.lidOff) {
    const doubtfulAt = minutesAfter(countsFrom(can, from, at), blanket.doubtfulMinutes);
    if (doubtfulAt <= Math.min(to ?? at, at)) return doubtfulAt;
  }
  return undefined;
}

export type GasAfter =
  | { readonly is: 'over-it'; readonly at: EpochMs; readonly openMinutes: Minutes }
  | { readonly is: 'not-told' };

/** When gas went over what was left after `at`, how long it had stood open by then; `undefined` where it needs none. */
export function gasAfter(can: Can, at: EpochMs | undefined): GasAfter | undefined {
  if (at === undefined || !isGasSensitive(can)) return undefined;
  const open = can.lidOff.findLast(({ from, to }) => from <= at && (to === undefined || to >= at));
  if (open === undefined) return undefined;
  const { from, to } = open;
  const isBlanketed = can.entries.some(({ fact, happenedAt }) => fact.type === 'CanBlanketed' && happenedAt === to);
  if (to !== undefined && isBlanketed) return { is: 'over-it', at: to, openMinutes: minutesBetween(from, to) };
  // Poured to the last gram: nothing was left to be kept from the air.
  return to === can.pours.at(-1)?.at && leftGrams(can) === 0 ? undefined : { is: 'not-told' };
}

export interface Headspace {
  readonly headspaceLitres: Litres;
  /** Gas for the sheet's oxygen target, let in slowly enough to mix. */
  readonly gasLitres: Litres;
}

/** By its label, else as the sheet knows a can of what it was sold with. */
export const brimfulOf = ({ litres, openedGrams, sheet }: Can): Litres | undefined =>
  litres ?? sheet.blanket?.cans.find(({ soldWithGrams }) => soldWithGrams === openedGrams)?.litres;

/** `undefined` where the sheet gives no density, or neither sheet nor label says how big the can is. */
export function headspaceOf(can: Can): Headspace | undefined {
  const { blanket } = can.sheet;
  const density = componentDensity(can.sheet, can.component);
  const brimful = brimfulOf(can);
  if (blanket === undefined || density === undefined || brimful === undefined) return undefined;
  const filled = volumeFromMass(leftGrams(can), density);
  if (isFailed(filled) || filled >= brimful) return undefined;
  const headspaceLitres = litres(brimful - filled);
  const purge = { headspace: headspaceLitres, from: oxygenInAir, gasOxygen: cleanGas };
  const gasLitres = purgeVolume(purge, blanket.oxygenTargetPercent);
  return isFailed(gasLitres) ? undefined : { headspaceLitres, gasLitres };
}

export interface PreStirTimes {
  readonly wantedMinutes: Minutes;
  /** False: more or less in the can than the sheet gives a time for; its longest stands. */
  readonly withinPoints: boolean;
  /** By the last stir at or before the time asked, up to then; `undefined` where there was none. */
  readonly givenMinutes: Minutes | undefined;
  /** Of that stir; `undefined` where it ended before its time was given. */
  readonly doneAt: EpochMs | undefined;
  readonly servesUntil: EpochMs | undefined;
}

/**
 * `undefined` where the sheet does not ask for it, or this is no Part A. Before edition 3 a stir was taken to run on for its
 * time, whatever was done with the can.
 */
export function preStirTimes(can: Can, at: EpochMs, edition: Edition = editionOfToday): PreStirTimes | undefined {
  const { preStir: asked } = can.sheet;
  if (asked === undefined || can.component !== 'part-a') return undefined;
  const last = can.stirs.findLast((stir) => stir.at <= at);
  const wanted = preStir(asked.points, last?.grams ?? leftGrams(can));
  if (isFailed(wanted)) return undefined;
  const over = last && minutesAfter(last.at, wanted.minutes);
  const isCutShort = edition >= 3 && last?.endedAt !== undefined && over !== undefined && last.endedAt < over;
  const doneAt = isCutShort ? undefined : over;
  return {
    wantedMinutes: wanted.minutes,
    withinPoints: wanted.withinPoints,
    givenMinutes: last && minutesBetween(last.at, epochMs(Math.min(last.endedAt ?? at, at))),
    doneAt,
    servesUntil: doneAt && minutesAfter(doneAt, asked.servesMinutes),
  };
}
