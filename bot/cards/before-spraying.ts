// What is said round the gun: of a pot that is not fit to be sprayed yet, before anybody holds the gun, and how long the extraction
// stays on after it.

import { phaseOf } from '../../core/batch/batch.ts';
import { blendDueAt } from '../../core/batch/batch-clocks.ts';
import type { Session } from '../../core/session/session.ts';
import { fanMinutesAfter } from '../../core/session/session-air.ts';
import { airLog } from '../../core/shop.ts';
import { type EpochMs, minutesAfter } from '../../core/units.ts';
import type { Telling } from './card-context.ts';

/** Not weighed, not mixed for long enough, or over. */
export function potLines(telling: Telling, session: Session): readonly string[] {
  const batch = session.batch === undefined ? undefined : telling.shop.batches.get(session.batch);
  if (batch === undefined) return [];
  const { is } = phaseOf(batch);
  const dueAt = is === 'blending' ? blendDueAt(batch, airLog(telling.shop, batch.place)) : undefined;
  // An induction that is over is sprayed from as it stands.
  const isReady =
    is === 'filtered' || (batch.sheet.blend.way === 'induction' && dueAt !== undefined && dueAt <= telling.now);
  return isReady
    ? []
    : [telling.words.session.potNotFit(batch.number, telling.words.phases[is], dueAt, telling.figures)];
}

/** Until when the extraction stays on, counted from this flush: the sheet's time or the sum's, whichever is longer. */
export function fanStaysLines(telling: Telling, session: Session): readonly string[] {
  if (session.spraying.length === 0 || session.closedAt !== undefined) return [];
  return [telling.words.session.fanStays(fanStaysUntil(telling, session), telling.figures)];
}

/** The bell to flush the gun: one line, until when the extraction stays on within it. */
export function flushBellLine(telling: Telling, session: Session): string {
  const until = fanStaysUntil(telling, session);
  return until === undefined ? telling.words.rings.flush.act : telling.words.session.flushNow(until, telling.figures);
}

function fanStaysUntil({ shop, now }: Telling, session: Session): EpochMs | undefined {
  const stays = fanMinutesAfter(session, shop.crew.spray);
  return stays === undefined ? undefined : minutesAfter(now, stays);
}
