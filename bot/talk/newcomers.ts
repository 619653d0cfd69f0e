// Whoever has said nothing yet that stands in the record is new: with the first answer about what to do or how it is
// said they are offered to be led through their first shift, once, and to practise it.

import type { CrewId, PersonName } from '../../core/ids.ts';
import type { Store } from '../../core/ports.ts';
import { type Telling, tap, withLinesShown } from '../cards/card-context.ts';
import type { Reading } from '../language/reading.ts';
import { type Answer, makeAnswer } from './answer.ts';

export interface Newcomers {
  readonly offering: (telling: Telling, name: PersonName, reading: Reading, answer: Answer) => Promise<Answer>;
}

export function createNewcomers(store: Pick<Store, 'streamsLastTouched'>, crew: CrewId): Newcomers {
  const met = new Set<PersonName>();
  return {
    offering: async (telling, name, reading, answer) => {
      if (met.has(name) || !isAtALoss(reading)) return answer;
      met.add(name);
      if ((await store.streamsLastTouched(crew, name)).length > 0) return answer;
      const own = answer.card.actions.filter(({ id }) => id !== 'practice');
      const actions = [...own, tap(telling, 'first-shift', 'first-shift'), tap(telling, 'practice', 'practice')];
      return makeAnswer({ ...answer, card: withLinesShown(telling, { ...answer.card, actions }) });
    },
  };
}

/** Whoever asks for help or what to do. No tap under a line that was not understood records anything. */
const isAtALoss = (reading: Reading): boolean =>
  reading.kind === 'question' && (reading.question.ask === 'help' || reading.question.ask === 'what-now');
