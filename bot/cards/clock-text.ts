// Where a clock becomes text: the one place that decides on which minute its end is shown, whatever card or board it stands
// on.

import type { EpochMs } from '../../core/units.ts';
import { type Ending, endingOfRing, isoOf, timeOf } from '../language/ending.ts';
import type { Card, CardFact } from './card.ts';
import { type FactsOf, fact, type Telling } from './card-context.ts';

const timeFact = (t: Telling, id: FactsOf<'time'>, ending: Ending): CardFact =>
  fact(t, id, isoOf(t.f, ending), timeOf(t.f, ending));

/** When a bell rings, by its key. */
export const ringTime = (t: Pick<Telling, 'f'>, key: string, dueAt: EpochMs): string =>
  timeOf(t.f, endingOfRing(key, dueAt));

export const ringFact = (t: Telling, id: FactsOf<'time'>, key: string, dueAt: EpochMs): CardFact =>
  timeFact(t, id, endingOfRing(key, dueAt));

export const ringNext = (t: Pick<Telling, 'f'>, key: string, dueAt: EpochMs): Card['next'][number] => ({
  key,
  dueAt: isoOf(t.f, endingOfRing(key, dueAt)),
});
