// What a decision can be. Decisions are pure: shop, command and speaker in; events, objections or a question out.

import type { Command, Stance } from './commands.ts';
import type { NewEvent } from './history.ts';
import type { Objection, Unclear } from './objections.ts';
import type { Speaker } from './shop.ts';
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

export const unclear = (because: Unclear): Decision => ({ kind: 'unclear', unclear: because });
