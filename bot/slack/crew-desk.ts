// One crew's desk: everything that belongs to that crew in Slack. Several crews work side by side, and none sees
// another's.

import type { MessageDesk } from '../messages/desk.ts';
import type { Where } from '../messages/platform.ts';
import type { Answer } from '../talk/answer.ts';
import type { Host } from '../talk/host.ts';
import type { Voice } from '../talk/overview.ts';
import type { Picture } from '../talk/picture-filing.ts';
import type { Roster } from './roster.ts';
import type { SlackCrew } from './slack-crew.ts';

export interface Desk extends MessageDesk {
  readonly slackCrew: SlackCrew;
  readonly roster: Roster;
  readonly host: Pick<Host, 'handle'>;
  /** How somebody in Slack is spoken to. */
  readonly voiceOf: (where: Pick<Where, 'team' | 'user'>) => Promise<Voice>;
  readonly filePicture: (picture: Picture) => Promise<Answer>;
  /** Something was recorded: the next bell may have moved. */
  readonly wake: () => void;
}
