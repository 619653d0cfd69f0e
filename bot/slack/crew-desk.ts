// Everything that belongs to one crew in Slack. Several crews work side by side, and none sees another's.

import type { CrewId } from '../../core/ids.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import type { Answer } from '../talk/answer.ts';
import type { Host } from '../talk/host.ts';
import type { Overview, Voice } from '../talk/overview.ts';
import type { Picture } from '../talk/picture-filing.ts';
import type { Where } from './inbound.ts';
import type { Roster } from './roster.ts';
import type { SlackCrew } from './slack-crew.ts';
import type { StandingMessages } from './standing-messages.ts';
import type { ThreadEvents } from './thread-events.ts';

export interface Desk {
  readonly crew: CrewId;
  readonly slackCrew: SlackCrew;
  readonly roster: Roster;
  readonly host: Pick<Host, 'handle'>;
  readonly overview: Overview;
  /** How somebody in Slack is spoken to. */
  readonly voiceOf: (where: Pick<Where, 'team' | 'user'>) => Promise<Voice>;
  readonly filePicture: (picture: Picture) => Promise<Answer>;
  /** The PNG behind a card's `image`. */
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  /** Travellers and exports that were written. */
  readonly papers: Pick<PaperTray, 'read'>;
  readonly standing: StandingMessages;
  readonly thread: ThreadEvents;
  /** The crew's channel; `undefined` while there is none. */
  readonly channel: () => string | undefined;
  /** Something was recorded: the next bell may have moved. */
  readonly wake: () => void;
}
