// What one reader was shown and nobody keeps: a whispered question with its taps. Once what it tells of has been recorded
// upon, or where an earlier life showed it, it is an older card.

import { type Answer, hasMovedOn } from '../talk/answer.ts';

export type ToldAlone = ReturnType<typeof createToldAlone>;

/** The newest; who presses on another reads the question once more. */
const kept = 200;

export function createToldAlone() {
  const current = new Map<string, Answer>();
  return {
    told: (showing: string, answer: Answer): void => {
      current.delete(showing);
      current.set(showing, answer);
      for (const [other] of current) if (current.size > kept) current.delete(other);
    },
    recorded: (later: Answer): void => {
      for (const [showing, answer] of current) if (hasMovedOn(answer, later)) current.delete(showing);
    },
    isOlder: (showing: string): boolean => !current.has(showing),
  };
}
