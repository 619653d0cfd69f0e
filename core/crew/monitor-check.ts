// Whether the gas monitor is in check, bumped and calibrated, on the day of a reading: by what was said of it last.

import { lastSaid } from '../settled.ts';
import type { Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';
import { localDay } from './local-day.ts';

export type MonitorCheck = { readonly is: 'never' | 'in' } | { readonly is: 'out'; readonly until: string };

/** `never`: nobody has said it. */
export function monitorCheck({ crew }: Pick<Shop, 'crew'>, at: EpochMs): MonitorCheck {
  const until = lastSaid(crew, 'monitor')?.until;
  if (until === undefined) return { is: 'never' };
  return until < localDay(crew.zone, at) ? { is: 'out', until } : { is: 'in' };
}
