// What one reader was shown and nobody keeps: a whispered question with its taps. Once what it tells of has been recorded
// upon, or where an earlier life showed it, it is an older card.

import { type Answer, hasMovedOn } from '../talk/answer.ts';

export interface ToldAlone {
  readonly told: (showing: string, answer: Answer) => void;
  readonly recorded: (later: Answer) => void;
  readonly isOlder: (showing: string) => boolean;
}

/** The newest; who presses on another reads the question once more. */
const kept = 200;

export function createToldAlone(): ToldAlone {
  const current = new Map<string, Answer>();
  return {
    told: (showing, answer) => {
      current.delete(showing);
      current.set(showing, answer);
      for (const [other] of current) if (current.size > kept) current.delete(other);
    },
    recorded: (later) => {
      for (const [showing, answer] of current) if (hasMovedOn(answer, later)) current.delete(showing);
    },
    isOlder: (showing) => !current.has(showing),
  };
}
