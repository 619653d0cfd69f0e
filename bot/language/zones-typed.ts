// Time zones as they are typed: `Europe/Madrid`, `europe/madrid`, `madrid`, `new york`.

import { IANAZone } from 'luxon';
import { nearest } from './suggestions.ts';

export interface ZoneTyped {
  readonly zone: string | undefined;
  /** Where it is none: what may have been meant, nearest first. */
  readonly likely: readonly string[];
}

const shown = 3;

/** Asked for once in a crew's life: the list is made then. */
export function zonesNamed(typed: string): ZoneTyped {
  const all = Intl.supportedValuesOf('timeZone');
  const wanted = asWritten(typed);
  const exact = all.find((zone) => asWritten(zone) === wanted);
  if (exact !== undefined) return { zone: exact, likely: [] };
  const ofCity = all.filter((zone) => cityOf(zone) === wanted);
  const [only, ...others] = ofCity;
  if (only !== undefined && others.length === 0) return { zone: only, likely: [] };
  const older = olderName(wanted);
  if (older !== undefined) return { zone: older, likely: [] };
  const cities = ofCity.length > 0 ? [] : nearest(wanted, all.map(cityOf));
  const near = all.filter((zone) => cities.includes(cityOf(zone)) || wanted.endsWith(`/${cityOf(zone)}`));
  return { zone: undefined, likely: [...ofCity, ...near].slice(0, shown) };
}

/**
 * UTC, and names that a list of today leaves out. Bare abbreviations are refused: EST stays on winter time all year, which
 * is never what somebody who types it means.
 */
function olderName(wanted: string): string | undefined {
  if (wanted !== 'utc' && !wanted.includes('/')) return undefined;
  return IANAZone.isValidZone(wanted)
    ? new Intl.DateTimeFormat('en', { timeZone: wanted }).resolvedOptions().timeZone
    : undefined;
}

const asWritten = (name: string): string => name.trim().toLowerCase().replaceAll(/\s+/g, '_');
const cityOf = (zone: string): string => asWritten(zone).slice(zone.lastIndexOf('/') + 1);
