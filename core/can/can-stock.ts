// What is left in which can, how long it has been open, and what somebody must see to. Figures only.

import { DateTime } from 'luxon';
import type { HeatSign } from '../heat-care.ts';
import { liveCans, type Shop } from '../shop.ts';
import { type EpochMs, epochMs, type Grams } from '../units.ts';
import { type Can, isGasSensitive, leftGrams } from './can.ts';
import { blanketTimes, type Doubt, doubtOf, type Headspace, headspaceOf } from './can-clocks.ts';

/** The last day, ISO, on which the sheet lets it be poured from; `undefined` where it says nothing of that. */
export function openUntil({ sheet, component, openedAt }: Can, zone: string): string | undefined {
  const { openCans } = sheet;
  if (openCans === undefined || !openCans.components.includes(component)) return undefined;
  return DateTime.fromMillis(openedAt, { zone }).plus({ days: openCans.mostDays }).toISODate() ?? undefined;
}

export type GasState =
  | { readonly is: 'not-needed' }
  | { readonly is: 'blanketed'; readonly at: EpochMs }
  | { readonly is: 'lid-off'; readonly since: EpochMs; readonly isShut: boolean }
  | ({ readonly is: 'doubtful' } & Doubt)
  | { readonly is: 'reacts'; readonly since: EpochMs; readonly seen: HeatSign };

export interface StockRow {
  readonly can: Can;
  readonly leftGrams: Grams;
  /** Whole local days since it was opened: 0 on the first. */
  readonly daysOpen: number;
  /** 0 on its last day, below 0 after it; `undefined` where nobody said when it expires. */
  readonly daysToExpiry: number | undefined;
  /** The same of the days that the sheet lets it stand open. */
  readonly daysOpenLeft: number | undefined;
  readonly gas: GasState;
  readonly headspace: Headspace | undefined;
  readonly isLow: boolean;
}

/** A fifth of what was in it: our own figure, no source. */
const lowShare = 0.2;
/** A week before: time to use it up or to order. Our own figure, no source. */
export const expiryNoticeDays = 7;
/** Of a can that may stand open so long and no longer: time to plan a batch. Our own figure, no source. */
export const openNoticeDays = 2;

export function stockOf(shop: Shop, at: EpochMs): readonly StockRow[] {
  return liveCans(shop).map((can) => stockRow(can, shop.crew.zone, at));
}

export function stockRow(can: Can, zone: string, at: EpochMs): StockRow {
  const today = DateTime.fromMillis(at, { zone }).startOf('day');
  const opened = DateTime.fromMillis(can.openedAt, { zone }).startOf('day');
  const left = leftGrams(can);
  return {
    can,
    leftGrams: left,
    daysOpen: Math.round(today.diff(opened, 'days').days),
    daysToExpiry: daysTo(can.expires, zone, at),
    daysOpenLeft: daysTo(openUntil(can, zone), zone, at),
    gas: gasState(can, at),
    headspace: headspaceOf(can),
    isLow: left < lowShare * can.openedGrams,
  };
}

/** 0 on the day itself, below 0 after it. */
export function daysTo(day: string | undefined, zone: string, at: EpochMs): number | undefined {
  if (day === undefined) return undefined;
  const today = DateTime.fromMillis(at, { zone }).startOf('day');
  return Math.round(DateTime.fromISO(day, { zone }).startOf('day').diff(today, 'days').days);
}

export function gasState(can: Can, at: EpochMs): GasState {
  if (can.reacts !== undefined) return { is: 'reacts', since: can.reacts.at, seen: can.reacts.seen };
  if (!isGasSensitive(can)) return { is: 'not-needed' };
  const doubt = doubtOf(can, at);
  if (doubt !== undefined) return { is: 'doubtful', ...doubt };
  const times = blanketTimes(can);
  return times === undefined
    ? { is: 'blanketed', at: can.blanketedAt ?? can.openedAt }
    : { is: 'lid-off', since: times.since, isShut: can.shutOverAirAt !== undefined };
}

export interface Need {
  readonly is: 'doubtful' | 'reacts' | 'low' | 'lid-off' | LastDayNeed;
  /** `undefined`: of cans that stand sealed. */
  readonly can: Can | undefined;
  readonly from: EpochMs;
}

/** What of the stock needs somebody, and from when on; what is still to come (an expiry) included. */
export function stockNeeds(shop: Shop, at: EpochMs): readonly Need[] {
  return [...openNeeds(shop, at), ...sealedNeeds(shop)];
}

/** Nobody pours from what has expired, opened or not. */
function sealedNeeds({ crew }: Shop): readonly Need[] {
  return crew.sealed
    .filter(({ left }) => left > 0)
    .flatMap(({ expires }) =>
      lastDayNeeds(undefined, crew.zone, expires, expiryNoticeDays, ['expires-soon', 'expired']),
    );
}

function openNeeds(shop: Shop, at: EpochMs): readonly Need[] {
  return liveCans(shop).flatMap((can): readonly Need[] => {
    const { gas, isLow } = stockRow(can, shop.crew.zone, at);
    const lastPour = can.pours.at(-1)?.at ?? can.openedAt;
    return [
      ...(gas.is === 'doubtful' || gas.is === 'lid-off' || gas.is === 'reacts'
        ? [{ is: gas.is, can, from: gas.since }]
        : []),
      ...(isLow ? [{ is: 'low' as const, can, from: lastPour }] : []),
      ...lastDayNeeds(can, shop.crew.zone, can.expires, expiryNoticeDays, ['expires-soon', 'expired']),
      ...lastDayNeeds(can, shop.crew.zone, openUntil(can, shop.crew.zone), openNoticeDays, [
        'open-long',
        'open-too-long',
      ]),
    ];
  });
}

type LastDayNeed = 'expires-soon' | 'expired' | 'open-long' | 'open-too-long';

/** Some days before the last one, and from the day after it on. */
function lastDayNeeds(
  can: Can | undefined,
  zone: string,
  day: string | undefined,
  noticeDays: number,
  [near, past]: readonly [LastDayNeed, LastDayNeed],
): readonly Need[] {
  if (day === undefined) return [];
  const lastDay = DateTime.fromISO(day, { zone }).startOf('day');
  const soon = epochMs(lastDay.minus({ days: noticeDays }).toMillis());
  const gone = epochMs(lastDay.plus({ days: 1 }).toMillis());
  return [
    { is: near, can, from: soon },
    { is: past, can, from: gone },
  ];
}
