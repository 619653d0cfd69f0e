// What an act would leave in the record, were it said now: nothing is recorded by asking.

import type { Command } from './commands.ts';
import { roles } from './crew/crew-commands.ts';
import { peopleFrom } from './crew/who-may.ts';
import { decide } from './decide.ts';
import type { NewEvent } from './history.ts';
import type { Moment } from './next-acts.ts';
import type { EpochMs } from './units.ts';

/** As if it had happened, and said by whoever may most, so that no rule and no role hides it; none where more would be asked first. */
export function wouldLeave({ shop, now }: Moment, command: Command, at: EpochMs): readonly NewEvent[] {
  const by = roles.toReversed().flatMap((role) => peopleFrom(shop.crew, role))[0] ?? '';
  const decision = decide(shop, { command, by, now, at, stance: { is: 'happened' } });
  return decision.kind === 'accepted' ? decision.events : [];
}
