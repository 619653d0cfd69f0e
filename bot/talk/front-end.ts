// What a front end is: it renders cards, sends text and taps to the host, and knows nothing of nouns or the store.

import type { PersonName, StreamId } from '../../core/ids.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Answer } from './answer.ts';
import type { Pressed } from './pressed.ts';

export interface Delivery {
  readonly text: string;
  readonly as: PersonName;
  /** Names the line or delivery in its answer. */
  readonly in: string;
  /** The platform's own id. It may deliver it again under the same: then it is one event and the same answer. */
  readonly id: string | undefined;
  /** When it was typed, where it reached us later than that. */
  readonly saidAt?: EpochMs;
  /** The batch in whose thread it was said: the line need not name it. */
  readonly about?: StreamId;
  /** Of a tap, where its front end changes cards in place. */
  readonly pressed?: Pressed;
  /** Typed at the machine that keeps the record: may name its files. */
  readonly atConsole?: true;
}

export interface FrontEnd {
  readonly name: string;
  /** What rings by itself. `unknown`: no answer in time. */
  readonly tell: (answer: Answer) => Promise<'posted' | 'rejected' | 'unknown'>;
  readonly wasTold: (numberedKey: string) => Promise<'yes' | 'no' | 'unknown'>;
  readonly stop: () => Promise<void>;
}
