// The end of a clock or the time of a bell, on the minute and the second that err as it does: what must last at least so long
// is rounded up, what may last at most so long down.

import { DateTime } from 'luxon';
import type { Errs } from '../../core/noun-clock.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';
import { ringErrs } from '../../core/wanted-reminder.ts';
import type { Figures } from './figures.ts';
import { ringNamed } from './ring-key.ts';
import type { Profile } from './tongues/profile.ts';

export interface Ending {
  readonly errs: Errs;
  readonly dueAt: EpochMs;
}

export function timeOf(figures: Figures, { errs, dueAt }: Ending): string {
  return errs === 'at-least' ? figures.timeUp(dueAt) : figures.timeDown(dueAt);
}

/** To the second, so that the minute made from it is the same one. */
export function isoOf(figures: Figures, { errs, dueAt }: Ending): string {
  const round = errs === 'at-least' ? Math.ceil : Math.floor;
  return figures.iso(epochMs(round(dueAt / 1000) * 1000));
}

/** A bell of a later version is shown early rather than late. */
export function endingOfRing(key: string, dueAt: EpochMs): Ending {
  return { errs: errsOfRing(key), dueAt };
}

export function errsOfRing(key: string): Errs {
  const ring = ringNamed(key);
  return ring === undefined ? 'at-most' : ringErrs[ring.kind];
}

/**
 * When something was told, or will be, on the reader's clock at the place that its ISO text names: a bell on the minute that
 * cards gave for it. `from`: where it is read on another day, its day stands before it.
 */
export function stampOf(
  profile: Profile,
  told: { readonly at: string; readonly key: string | null },
  from = told.at,
): string {
  const isUp = told.key !== null && errsOfRing(told.key) === 'at-least';
  const at = DateTime.fromISO(told.at, { setZone: true, locale: profile.locale });
  const minute = at.startOf('minute');
  const shown = isUp && at > minute ? minute.plus({ minutes: 1 }) : minute;
  const today = DateTime.fromISO(from, { setZone: true });
  const clock = profile.clock(shown);
  return shown.hasSame(today, 'day') ? clock : `${profile.day(shown, today)}${profile.beforeClock}${clock}`;
}
