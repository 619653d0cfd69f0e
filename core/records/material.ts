// Where the material of a batch went: planned, mixed, caught and used again, applied, thrown away and why.

import type { Batch } from '../batch/batch.ts';
import { potLifeTimes } from '../batch/batch-clocks.ts';
import type { SeenOfPot } from '../heat-care.ts';
import { airLog, type Shop } from '../shop.ts';
import { type EpochMs, type Grams, grams, type SquareMetres, squareMetres } from '../units.ts';

/** `left-over`: the pot was emptied within its life. */
export type ThrownWhy = 'left-over' | 'past-pot-life' | SeenOfPot;

export interface BatchMaterial {
  readonly batch: Batch;
  readonly plannedGrams: Grams;
  /** A and B together, with what was added later. */
  readonly mixedGrams: Grams;
  readonly caughtGrams: Grams;
  /** `undefined` while the pot is not said to be empty, or nobody said what was left. */
  readonly thrown: { readonly grams: Grams; readonly why: ThrownWhy } | undefined;
  /** Left the pot for the parts, with what the hose, filter and overspray took; `undefined` where `thrown` is. */
  readonly appliedGrams: Grams | undefined;
  /** Of the parts coated from it whose area is known, each once. */
  readonly coatedSquareMetres: SquareMetres;
  readonly partsWithoutArea: number;
}

export function materialOf(shop: Shop, batch: Batch): BatchMaterial {
  const mixed = [batch.inVessel['part-a'], batch.inVessel['part-b']].reduce((sum, part) => sum + (part?.grams ?? 0), 0);
  const left = batch.emptied?.leftGrams;
  const parts = [...new Set(batch.coats.map(({ part }) => part))];
  const areas = parts.map((name) => shop.parts.get(name)?.details.areaSquareMetres);
  return {
    batch,
    plannedGrams: batch.plannedGrams,
    mixedGrams: grams(mixed),
    caughtGrams: grams(batch.caught.reduce((sum, each) => sum + each.grams, 0)),
    thrown: left === undefined ? undefined : { grams: left, why: whyThrown(shop, batch) },
    appliedGrams: left === undefined ? undefined : grams(Math.max(0, mixed - left)),
    coatedSquareMetres: squareMetres(areas.reduce<number>((sum, area) => sum + (area ?? 0), 0)),
    partsWithoutArea: areas.filter((area) => area === undefined).length,
  };
}

function whyThrown(shop: Shop, batch: Batch): ThrownWhy {
  if (batch.thickened !== undefined) return batch.thickened.seen;
  const endAt: EpochMs | undefined = potLifeTimes(batch, airLog(shop, batch.place))?.endAt;
  return endAt !== undefined && batch.emptied !== undefined && batch.emptied.at >= endAt
    ? 'past-pot-life'
    : 'left-over';
}

export interface MaterialTotals {
  readonly plannedGrams: Grams;
  readonly mixedGrams: Grams;
  readonly caughtGrams: Grams;
  readonly appliedGrams: Grams;
  readonly thrownGrams: Grams;
  /** Batches of which nobody said yet what was left. */
  readonly notSaid: number;
  readonly coatedSquareMetres: SquareMetres;
}

export function totalsOf(materials: readonly BatchMaterial[]): MaterialTotals {
  const sum = (of: (material: BatchMaterial) => number) => materials.reduce((total, each) => total + of(each), 0);
  return {
    plannedGrams: grams(sum((each) => each.plannedGrams)),
    mixedGrams: grams(sum((each) => each.mixedGrams)),
    caughtGrams: grams(sum((each) => each.caughtGrams)),
    appliedGrams: grams(sum((each) => each.appliedGrams ?? 0)),
    thrownGrams: grams(sum((each) => each.thrown?.grams ?? 0)),
    notSaid: materials.filter((each) => each.thrown === undefined).length,
    coatedSquareMetres: squareMetres(sum((each) => each.coatedSquareMetres)),
  };
}
