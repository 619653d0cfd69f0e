// What an act would leave in the record, were it said now: nothing is recorded by asking.

import type { Command } from './commands.ts';
import { decide } from './decide.ts';
import type { NewEvent } from './history.ts';
import type { Moment } from './next-acts.ts';
import type { EpochMs } from './units.ts';

/** As if it had happened, so that no rule hides it; none where more would be asked first. */
export function wouldLeave({ shop, now }: Moment, command: Command, at: EpochMs): readonly NewEvent[] {
  const by = shop.crew.people[0]?.name ?? '';
  const decision = decide(shop, { command, by, now, at, stance: { is: 'happened' } });
  return decision.kind === 'accepted' ? decision.events : [];
}
