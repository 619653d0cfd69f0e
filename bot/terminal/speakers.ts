// The last card that each speaker saw, so that `tap ID` presses one of its actions.

import type { PersonName } from '../../core/ids.ts';
import type { CardAction } from '../cards/card.ts';
import { type Answer, hasMovedOn } from '../talk/answer.ts';
import type { Moved } from '../talk/pressed.ts';

export interface Speakers {
  readonly saw: (answer: Answer) => void;
  readonly tapsOf: (name: PersonName) => readonly CardAction[];
  /** How that card had moved: what it tells of may have been recorded upon by another since. */
  readonly movedFor: (name: PersonName) => Moved;
}

interface Seen {
  readonly answer: Answer;
  readonly isOlder: boolean;
}

export function createSpeakers(): Speakers {
  const last = new Map<PersonName, Seen>();
  return {
    saw: (answer) => {
      for (const [name, seen] of last) if (hasMovedOn(seen.answer, answer)) last.set(name, { ...seen, isOlder: true });
      for (const name of new Set([...answer.to, ...(answer.as === null ? [] : [answer.as])])) {
        last.set(name, { answer, isOlder: false });
      }
    },
    tapsOf: (name) => last.get(name)?.answer.card.actions ?? [],
    movedFor: (name) => (last.get(name)?.isOlder === true ? { is: 'older', now: undefined } : { is: 'not' }),
  };
}
