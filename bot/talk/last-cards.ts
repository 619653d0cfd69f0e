// The last cards that each person was given, newest first: what a bare answer answers, and what `why` asks about. Bells count. After a
// restart, or said to another process, the last answered request of theirs still stands.

import type { Question } from '../../core/commands.ts';
import type { CrewId, PersonName } from '../../core/ids.ts';
import type { Store } from '../../core/ports.ts';
import { type Answer, answerFrom } from './answer.ts';

export interface LastCards {
  readonly saw: (answer: Answer) => void;
  /** Newest first. */
  readonly of: (person: PersonName) => Promise<readonly Answer[]>;
}

/** What explains a card is not asked about itself: it leaves the one before where it is. */
const explains: readonly Question['ask'][] = ['why', 'what-is', 'help'];

/** More than anybody asks back about. */
const most = 8;

export function createLastCards(store: Pick<Store, 'lastAnswerTo'>, crew: CrewId): LastCards {
  const seen = new Map<PersonName, readonly Answer[]>();
  return {
    saw: (answer) => {
      if (answer.asked !== undefined && explains.includes(answer.asked.ask)) return;
      for (const name of new Set([...(answer.as === null ? [] : [answer.as]), ...answer.to])) {
        seen.set(name, [answer, ...(seen.get(name) ?? [])].slice(0, most));
      }
    },
    of: async (person) => {
      const cards = seen.get(person);
      if (cards !== undefined) return cards;
      const kept = await store.lastAnswerTo(crew, person);
      return kept === undefined ? [] : [answerFrom(kept)];
    },
  };
}
