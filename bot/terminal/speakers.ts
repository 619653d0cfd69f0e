// The last card that each speaker saw, so that `tap ID` presses one of its actions.

import type { PersonName } from '../../core/ids.ts';
import type { Answer } from '../answer.ts';
import type { CardAction } from '../cards/card.ts';

export interface Speakers {
  readonly saw: (answer: Answer) => void;
  readonly tapsOf: (name: PersonName) => readonly CardAction[];
}

export function createSpeakers(): Speakers {
  const lastTaps = new Map<PersonName, readonly CardAction[]>();
  return {
    saw: (answer) => {
      for (const name of new Set([...answer.to, ...(answer.as === null ? [] : [answer.as])])) {
        lastTaps.set(name, answer.card.actions);
      }
    },
    tapsOf: (name) => lastTaps.get(name) ?? [],
  };
}
