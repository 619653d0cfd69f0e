// One crew as a chat platform needs it: who is who there, its channel, what is asked of its record, and its messages; and
// one answer on its way to it.

import type { CrewId, PersonName } from '../../core/ids.ts';
import type { Log } from '../../core/ports.ts';
import type { Answer } from '../talk/answer.ts';
import type { Overview, Voice } from '../talk/overview.ts';
import type { FileDesk, Files } from './files.ts';
import type { Mail } from './mail.ts';
import type { Messages } from './messages.ts';
import type { Where } from './platform.ts';
import type { ToldAlone } from './told-alone.ts';

/** Who the crew's people are on the platform. */
export interface People {
  readonly idOf: (team: string, name: PersonName) => string | undefined;
  /** Their account is switched off, or is none: a mention of them and a message to them reach nobody. */
  readonly isGone: (user: string) => Promise<boolean>;
}

export interface MessageDesk extends FileDesk {
  readonly crew: CrewId;
  readonly overview: Overview;
  readonly roster: People;
  readonly messages: Messages;
  readonly toldAlone: ToldAlone;
  /** The crew's channel; `undefined` while there is none. */
  readonly channel: () => string | undefined;
  /** That, or one of several that its file names. */
  readonly isOurs: (channel: string) => boolean;
}

export interface AnswerDeps {
  readonly mail: Mail;
  readonly files: Files;
  readonly log: Log;
}

export interface Telling {
  readonly desk: MessageDesk;
  readonly answer: Answer;
  readonly where: Where;
  /** Of the delivery. */
  readonly id: string;
  /** How whoever said it is spoken to, and how the crew is. */
  readonly own: Voice;
  readonly crew: Voice;
}
