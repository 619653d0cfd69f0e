// The local day of an instant, as the crew's clocks on the wall show it.

import { DateTime } from 'luxon';
import type { EpochMs } from '../units.ts';

/** ISO, `2026-03-02`. */
export function localDay(zone: string, at: EpochMs, daysBefore = 0): string {
  return DateTime.fromMillis(at, { zone }).minus({ days: daysBefore }).toISODate() ?? '';
}
