// How near the shop is to the limits that it set from its permit: by day, by month, over rolling twelve months.

import { DateTime } from 'luxon';
import type { SettingOf } from '../settings.ts';
import { type EpochMs, epochMs, type Grams } from '../units.ts';
import { type LedgerEntry, ledgerTotals } from './solvent-ledger.ts';

/** From here on it is told, before the limit itself: our own choice, no source. */
const warnShare = 0.8;

type VocLimit = SettingOf<'voc-limit'>;

export interface LimitStanding {
  readonly limit: VocLimit;
  readonly usedGrams: Grams;
  /** Of the limit; 1 is all of it. */
  readonly share: number;
  readonly state: 'below' | 'near' | 'over';
}

/** `entries` must reach back to `windowStart` of the longest limit. */
export function limitStandings(
  limits: readonly VocLimit[],
  entries: readonly LedgerEntry[],
  at: EpochMs,
  zone: string,
): readonly LimitStanding[] {
  return limits.map((limit) => {
    const from = windowStart(limit.per, at, zone);
    const { vocGrams } = ledgerTotals(entries.filter((entry) => entry.at >= from && entry.at <= at));
    const share = limit.grams === 0 ? Number.POSITIVE_INFINITY : vocGrams / limit.grams;
    return { limit, usedGrams: vocGrams, share, state: share > 1 ? 'over' : share >= warnShare ? 'near' : 'below' };
  });
}

/** The day and the month by the calendar; the year as the twelve months that end now. */
export function windowStart(per: VocLimit['per'], at: EpochMs, zone: string): EpochMs {
  const local = DateTime.fromMillis(at, { zone });
  switch (per) {
    case 'day':
    case 'month':
      return epochMs(local.startOf(per).toMillis());
    case 'year':
      return epochMs(local.startOf('day').plus({ days: 1 }).minus({ years: 1 }).toMillis());
  }
}
