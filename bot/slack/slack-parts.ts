// What everything that is said in Slack is worked off with.

import type { Postbox } from '../../core/ports.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import type { AnswerDeps } from '../messages/desk.ts';
import type { BackgroundWork } from '../time/background-work.ts';
import type { Pace } from '../time/pace.ts';
import type { Turns } from '../time/turns.ts';
import type { Desk } from './crew-desk.ts';
import type { Homes } from './homes.ts';
import type { Respond } from './respond.ts';
import type { Call } from './slack-client.ts';
import type { WhichCrew } from './which-crew.ts';

export interface SlackParts extends AnswerDeps {
  readonly which: WhichCrew;
  readonly homes: Homes;
  readonly call: Call;
  readonly respond: Respond;
  readonly tongues: Tongues;
  readonly postbox: Postbox;
  readonly background: BackgroundWork;
  /** What a crew is told is told in turn. */
  readonly turns: Turns<Desk>;
  /** By showing: the last press on it. */
  readonly presses: Map<string, { readonly id: string; readonly at: number }>;
  readonly pace: Pace;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}
