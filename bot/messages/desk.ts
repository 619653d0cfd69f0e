// One crew as a chat platform needs it: who is who there, its channel, what is asked of its record, and its messages.

import type { CrewId, PersonName } from '../../core/ids.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import type { Overview } from '../talk/overview.ts';
import type { Messages } from './messages.ts';
import type { ToldAlone } from './told-alone.ts';

/** Who the crew's people are on the platform. */
export interface People {
  readonly idOf: (team: string, name: PersonName) => string | undefined;
  /** Their account is switched off, or is none: a mention of them and a message to them reach nobody. */
  readonly isGone: (user: string) => Promise<boolean>;
}

export interface MessageDesk {
  readonly crew: CrewId;
  readonly overview: Overview;
  readonly roster: People;
  readonly messages: Messages;
  readonly toldAlone: ToldAlone;
  /** The crew's channel; `undefined` while there is none. */
  readonly channel: () => string | undefined;
  /** That, or one of several that its file names. */
  readonly isOurs: (channel: string) => boolean;
  /** The PNG behind a card's `image`. */
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  /** Travellers and exports that were written. */
  readonly papers: Pick<PaperTray, 'read'>;
}

/** A paper that did not get into its place, or of which nobody knows since the platform gave no answer to its sharing. */
export type Missing = 'missing' | 'unsure';
