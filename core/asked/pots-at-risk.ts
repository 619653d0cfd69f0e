// What is mixed and will be lost unless it is used: the pots that live, those that die first before the others.

import type { Batch } from '../batch/batch.ts';
import { batchStatus } from '../batch/batch-status.ts';
import type { Moment } from '../next-acts.ts';
import type { AtMostClock } from '../noun-clock.ts';
import { liveBatches } from '../shop.ts';
import { type Grams, grams } from '../units.ts';

export interface PotAtRisk {
  readonly batch: Batch;
  /** As it was weighed: what was used of it since nobody weighs before the pot is empty. */
  readonly grams: Grams;
  readonly pot: AtMostClock<'pot'>;
}

export function potsAtRisk(moment: Moment): readonly PotAtRisk[] {
  return liveBatches(moment.shop)
    .flatMap((batch) => {
      const { pot } = batchStatus(moment, batch);
      const { weighing } = batch;
      if (pot === undefined || weighing === undefined) return [];
      return [{ batch, grams: grams(weighing.partAGrams + weighing.partBGrams), pot }];
    })
    .sort((one, other) => one.pot.dueAt - other.pot.dueAt);
}
