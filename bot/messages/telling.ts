// One answer on its way, and what it takes to show it.

import type { Log } from '../../core/ports.ts';
import type { Answer } from '../talk/answer.ts';
import type { Voice } from '../talk/overview.ts';
import type { MessageDesk } from './desk.ts';
import type { Files } from './files.ts';
import type { Mail } from './mail.ts';
import type { Where } from './platform.ts';

export interface AnswerNeeds {
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
