// Whoever has said nothing yet that stands in the record is new: with the first answer that is only words they are offered
// to be led through their first shift, once.

import type { CrewId, PersonName } from '../../core/ids.ts';
import type { Store } from '../../core/ports.ts';
import { type Telling, tap, withLinesShown } from '../cards/card-context.ts';
import { type Answer, makeAnswer } from './answer.ts';

export interface Newcomers {
  readonly offering: (telling: Telling, name: PersonName, answer: Answer) => Promise<Answer>;
}

export function createNewcomers(store: Pick<Store, 'streamsLastTouched'>, crew: CrewId): Newcomers {
  const met = new Set<PersonName>();
  return {
    offering: async (telling, name, answer) => {
      if (met.has(name) || answer.kind === 'error' || isOfNeed(answer)) return answer;
      met.add(name);
      if ((await store.streamsLastTouched(crew, name)).length > 0) return answer;
      const actions = [...answer.card.actions, tap(telling, 'first-shift', 'first-shift')];
      return makeAnswer({ ...answer, card: withLinesShown(telling, { ...answer.card, actions }) });
    },
  };
}

/** Whoever may be calling for help is offered nothing else. */
const isOfNeed = ({ card, code }: Answer): boolean => card.alarm === true || code === 'no-cry' || code === 'which-cry';
