// Where a clock becomes text: the one place that decides on which minute its end is shown, whatever card or board it stands
// on.

import type { NounClock } from '../../core/noun-clock.ts';
import type { ClockId } from '../../core/status.ts';
import type { EpochMs } from '../../core/units.ts';
import { type Ending, endingOfRing, isoOf, timeOf } from '../language/ending.ts';
import type { Card, CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { type FactsOf, timedFact } from './facts.ts';

export const timeShown = ({ figures }: Pick<Telling, 'figures'>, ending: Ending): string => timeOf(figures, ending);

export const timeFact = (telling: Telling, id: FactsOf<'time'>, ending: Ending): CardFact =>
  timedFact(telling, id, isoOf(telling.figures, ending), timeOf(telling.figures, ending));

const factOf = {
  stir: 'stir-done-at',
  induction: 'stir-done-at',
  pot: 'pot-life-ends',
  'lid-off': 'blanket-by',
  'pre-stir': 'can-stir-done-at',
  surface: 'surface-ends-at',
  flash: 'flash-least-at',
  'flash-most': 'flash-most-at',
  open: 'open-until',
  'recoat-opens': 'recoat-opens-at',
  'recoat-closes': 'recoat-closes-at',
  warm: 'temp-due-at',
  'stage-handle': 'stage-handle-at',
  'stage-service': 'stage-service-at',
  'stage-full': 'stage-full-at',
  cure: 'cure-done-at',
  spell: 'spell-ends-at',
  fan: 'fan-until',
} as const satisfies Record<ClockId, FactsOf<'time'>>;

/** The ends of these clocks, as far as they are known. */
export function clockFacts(
  telling: Telling,
  clocks: readonly NounClock<ClockId>[],
  ids: readonly ClockId[],
): readonly CardFact[] {
  return clocks.flatMap(({ id, errs, dueAt }) =>
    dueAt === undefined || !ids.includes(id) ? [] : [timeFact(telling, factOf[id], { errs, dueAt })],
  );
}

/** When a bell rings, by its key. */
export const ringTime = (telling: Pick<Telling, 'figures'>, key: string, dueAt: EpochMs): string =>
  timeOf(telling.figures, endingOfRing(key, dueAt));

export const ringFact = (telling: Telling, id: FactsOf<'time'>, key: string, dueAt: EpochMs): CardFact =>
  timeFact(telling, id, endingOfRing(key, dueAt));

export const ringNext = (telling: Pick<Telling, 'figures'>, key: string, dueAt: EpochMs): Card['next'][number] => ({
  key,
  dueAt: isoOf(telling.figures, endingOfRing(key, dueAt)),
});
