// What a decision can be. Decisions are pure: shop, command and speaker in; events, objections or a question out.

import type { Command, CommandOf, Stance, Verb } from './commands.ts';
import type { EventBody, NewEvent } from './history.ts';
import { crewStream } from './ids.ts';
import type { Objection, Unclear } from './objections.ts';
import type { Shop, Speaker } from './shop.ts';
import type { EpochMs } from './units.ts';

export type Decision =
  | { readonly kind: 'accepted'; readonly events: readonly NewEvent[] }
  | { readonly kind: 'objected'; readonly objections: readonly Objection[] }
  | { readonly kind: 'unclear'; readonly unclear: Unclear };

/** A command as it was said: when the act was, and whether it is still to come. */
export interface Said<C extends Command = Command> extends Speaker {
  readonly command: C;
  readonly at: EpochMs;
  readonly stance: Stance;
}

/** Who decides each of these verbs. */
export type Deciders<V extends Verb> = {
  readonly [Each in V]: (shop: Shop, said: Said<CommandOf<Each>>) => Decision;
};

export const accepted = (...events: readonly NewEvent[]): Decision => ({ kind: 'accepted', events });

/** Said of the crew, and never objected to. */
export const onCrew = (said: Said, body: EventBody): Decision =>
  accepted({ streams: [crewStream], happenedAt: said.at, body });

export const unclear = (because: Unclear): Decision => ({ kind: 'unclear', unclear: because });
