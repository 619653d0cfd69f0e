// Batches that something was done to within a stretch of time, with how they were weighed and stirred.

import type { Batch } from '../batch/batch.ts';
import { type BlendTotals, blendTotals } from '../batch/batch-clocks.ts';
import { ratioError } from '../calc/mixing.ts';
import { isFailed } from '../failed.ts';
import { type Entry, isAct } from '../history.ts';
import { batchStream } from '../ids.ts';
import { mixRatio } from '../products/sheet.ts';
import { streamsTouched } from '../seal.ts';
import { airLog, type Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';

export interface BatchTouched {
  readonly batch: Batch;
  /** Share of the sheet's B/A, in per cent; `undefined` before weighing. */
  readonly ratioErrorPercent: number | undefined;
  readonly blend: BlendTotals;
}

/** `entries`: those of the stretch. */
export function batchesTouched(shop: Shop, entries: readonly Entry[], now: EpochMs): readonly BatchTouched[] {
  const touched = streamsTouched(entries.filter(isAct));
  return [...shop.batches.values()]
    .filter(({ number }) => touched.has(batchStream(number)))
    .sort((a, b) => a.number - b.number)
    .map((batch) => {
      const error = batch.weighing === undefined ? undefined : ratioError(mixRatio(batch.sheet.ratio), batch.weighing);
      return {
        batch,
        ratioErrorPercent: error === undefined || isFailed(error) ? undefined : error * 100,
        blend: blendTotals(batch, airLog(shop, batch.place), now),
      };
    });
}
