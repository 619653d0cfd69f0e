// When the first of the pots that a spray session sprays from no longer holds mix: until then its vessels are in use, and
// nobody flushes them.

import { potLifeTimes } from '../batch/batch-clocks.ts';
import { potsOf, type Session } from '../session/session.ts';
import { airLog, type Shop } from '../shop.ts';
import { type EpochMs, epochMs } from '../units.ts';

/** `undefined` where it sprays from no pot that anybody weighed. */
export function vesselsFreeAt(shop: Shop, session: Session): EpochMs | undefined {
  const ends = potsOf(session).flatMap((number) => {
    const batch = shop.batches.get(number);
    if (batch === undefined) return [];
    const { emptied, thickened, place } = batch;
    const saidAt = [emptied?.at, thickened?.at].filter((at) => at !== undefined);
    return saidAt.length > 0 ? Math.min(...saidAt) : (potLifeTimes(batch, airLog(shop, place))?.endAt ?? []);
  });
  return ends.length === 0 ? undefined : epochMs(Math.min(...ends));
}
