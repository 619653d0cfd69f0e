// What rang in the last hours and nobody answered, by name or by going on with the work, of what still runs.

import type { Moment } from '../next-acts.ts';
import { type RingHeard, ringsHeard } from '../records/rings-heard.ts';
import { minutes, minutesAfter } from '../units.ts';

/** A shift: what nobody heard yesterday is in the day's card. */
const heardWithin = minutes(12 * 60);

export function unheardRings({ shop, now }: Moment): readonly RingHeard[] {
  const span = { from: minutesAfter(now, minutes(-heardWithin)), to: minutesAfter(now, minutes(1)) };
  const unheard = ringsHeard(shop, span).filter(({ heardAt }) => heardAt === undefined);
  // Of one that rang again and again only the last.
  return [...new Map(unheard.map((each) => [each.key, each])).values()];
}
