// The day's material: from which cans and lots it came, what pots yielded, what was added, how long they stood open.

import type { Batch } from '../batch/batch.ts';
import { uncoveredMinutes } from '../batch/lid.ts';
import { type Entry, isAct } from '../history.ts';
import type { Shop } from '../shop.ts';
import { type EpochMs, type Grams, grams, type Minutes } from '../units.ts';
import { isWithin, type Span } from './span.ts';
import { type CanTouched, cansTouched } from './stretch.ts';

export interface PotYield {
  /** A and B together, what was added later included. */
  readonly mixedGrams: Grams;
  readonly caughtGrams: Grams;
  /** Of it, what was not filtered again. */
  readonly unfilteredGrams: Grams;
  /** `undefined`: nobody has said. */
  readonly leftOverGrams: Grams | undefined;
}

export interface DayPot extends PotYield {
  readonly batch: Batch;
  readonly uncoveredMinutes: Minutes;
}

export interface DayMaterial {
  /** Cans that something was done to on the day. */
  readonly cans: readonly CanTouched[];
  /** Pots weighed on the day. */
  readonly pots: readonly DayPot[];
}

export function dayMaterial(
  shop: Shop,
  entries: readonly Entry[],
  span: Pick<Span, 'from' | 'to'>,
  now: EpochMs,
): DayMaterial {
  const pots = [...shop.batches.values()].filter(
    ({ weighing }) => weighing !== undefined && isWithin(span, weighing.at),
  );
  return {
    cans: cansTouched(shop, span, entries.filter(isAct)),
    pots: pots
      .sort((a, b) => a.number - b.number)
      .map((batch) => ({
        batch,
        mixedGrams: sum([batch.weighing?.partAGrams ?? 0, batch.weighing?.partBGrams ?? 0]),
        caughtGrams: sum(batch.caught.map((each) => each.grams)),
        unfilteredGrams: sum(batch.caught.flatMap((each) => (each.filteredAt === undefined ? [each.grams] : []))),
        leftOverGrams: batch.emptied?.leftGrams,
        uncoveredMinutes: uncoveredMinutes(batch, now),
      })),
  };
}

function sum(masses: readonly number[]): Grams {
  return grams(masses.reduce((total, mass) => total + mass, 0));
}
