// What one crew's messages share: where they go, what is known of them, and what is being done to them.

import type { CrewId, StreamId } from '../../core/ids.ts';
import type { KeptPost, Log, Postbox } from '../../core/ports.ts';
import type { Overview } from '../talk/overview.ts';
import type { Pace } from '../time/pace.ts';
import type { Turns } from '../time/turns.ts';
import type { Mail } from './mail.ts';
import type { Showings } from './showings.ts';

export interface RoomNeeds {
  readonly crew: CrewId;
  readonly overview: Pick<Overview, 'standing' | 'liveSubjects' | 'voice'>;
  readonly mail: Mail;
  readonly postbox: Postbox;
  readonly team: () => string | undefined;
  /** The crew's; `undefined` while there is none. */
  readonly channel: () => string | undefined;
  readonly pace: Pace;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly log: Log;
}

export interface Room extends RoomNeeds {
  readonly showings: Showings;
  /** One change at a time of a message. */
  readonly turns: Turns<string>;
  readonly posting: Map<StreamId, Promise<Standing | undefined>>;
  /** Touched last, to be shown before all others. */
  readonly urgent: Set<StreamId>;
}

/** The message of a batch or session; posted now if it was not there (`fresh`). */
export interface Standing {
  readonly post: KeptPost;
  readonly fresh: boolean;
}

export const keyOf = ({ channel, ts }: Pick<KeptPost, 'channel' | 'ts'>): string => `${channel}/${ts}`;
