// What is live in the shop, for lines said in other words. Asked only where the strict reader could not read one.

import { phaseOf } from '../../core/batch/batch.ts';
import { gasState } from '../../core/can/can-stock.ts';
import { methodLikely } from '../../core/coats-waiting.ts';
import type { Component } from '../../core/components.ts';
import { known } from '../../core/known.ts';
import { phaseOfPart } from '../../core/part/part.ts';
import { liveBatches, liveCans, liveParts, type Shop } from '../../core/shop.ts';
import type { EpochMs } from '../../core/units.ts';
import type { LiveNow } from '../language/live-now.ts';

const letterOf = (component: Component) => (component === 'part-a' ? 'A' : 'B');

export const liveNow = (shop: Shop, now: EpochMs): LiveNow => ({
  parts: liveParts(shop).map((part) => {
    const { serial, job, metal } = part.details;
    const { is } = phaseOfPart(part);
    // What is to be coated anew is told of as what has no coat yet.
    return { name: part.name, phase: is === 'rework' ? 'bare' : is, ...known({ serial, job, metal }) };
  }),
  batches: liveBatches(shop).map((batch) => ({
    number: batch.number,
    phase: phaseOf(batch).is,
    grams: batch.plannedGrams,
    ...known({ method: methodLikely(shop, batch) }),
  })),
  sealed: shop.crew.sealed
    .filter(({ left }) => left > 0)
    .map(({ component, lot, left }) => ({ component: letterOf(component), lot, left })),
  cans: liveCans(shop).map((can) => ({
    ...{ number: can.number, component: letterOf(can.component) },
    isLidOff: gasState(can, now).is === 'lid-off',
  })),
});
