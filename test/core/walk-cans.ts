// What a crew might say next of its cans, of weighing in pieces, and of what a pot goes through.

import { type Batch, phaseOf } from '../../core/batch/batch.ts';
import { type Can, isCanLive } from '../../core/can/can.ts';
import { blanketTimes, preStirTimes } from '../../core/can/can-clocks.ts';
import type { Command } from '../../core/commands.ts';
import type { Shop } from '../../core/shop.ts';
import { type EpochMs, grams, litres, squareMetresPerHour } from '../../core/units.ts';
import { type Draw, oneOf, type Say } from './walk-acts.ts';

export function canActs(shop: Shop): readonly Say[] {
  const cans = [...shop.cans.values()].slice(-3);
  const live = cans.filter(isCanLive);
  const batches = [...shop.batches.values()].slice(-2);
  const toWeigh = batches.findLast((batch) => phaseOf(batch).is === 'to-weigh');
  return [
    ...Array.from({ length: live.length < 2 ? 3 : 1 }, (): Say => open),
    ...cans.flatMap((can) => actsOnCan(can, toWeigh)),
    ...cans.flatMap((can) => fromWrongCan(can, batches)),
    ...batches.flatMap(actsOnPot),
    (draw) => ({ verb: 'blanket', ...(draw(2) === 0 ? {} : { can: 98 }) }),
    (draw) => ({
      verb: 'set',
      setting: oneOf(draw, [
        { name: 'morning', hour: 6 },
        { name: 'rate', squareMetresPerHour: squareMetresPerHour(4) },
      ]),
    }),
  ];
}

function handlingOf(draw: Draw) {
  const handling = oneOf(draw, [undefined, 'gas', 'gas', 'whole'] as const);
  return handling === undefined ? {} : { handling };
}

function open(draw: Draw): Command {
  const expires = oneOf(draw, [undefined, undefined, '2026-03-01', '2026-03-02', '2026-03-04']);
  return {
    ...{ verb: 'open', component: oneOf(draw, ['part-a', 'part-a', 'part-b']), lot: `lot-${draw(9)}` },
    grams: grams(oneOf(draw, [5000, 20_000, 1000])),
    // Without a name it is the usual one's, or asked.
    ...oneOf(draw, [
      {},
      {},
      ...['own-clear', 'own-clear', 'own-build', 'none', 'own-faulty'].map((sheet) => ({ sheet })),
    ]),
    ...(expires === undefined ? {} : { expires }),
    ...handlingOf(draw),
  };
}

function actsOnCan(can: Can, toWeigh: Batch | undefined): readonly Say[] {
  const { number, component } = can;
  const prestir: Say = (draw) => ({ verb: 'prestir', can: number, ...handlingOf(draw) });
  const pour: Say = (draw) => ({
    ...{
      verb: 'weigh',
      cans: [number],
      ...handlingOf(draw),
      ...(toWeigh === undefined ? {} : { batch: toWeigh.number }),
    },
    ...(draw(4) === 0
      ? { partAGrams: grams(1200) }
      : { partAGrams: grams(1200), partBGrams: grams(oneOf(draw, [1200, 1200, 1140])) }),
  });
  const alone: Say = () => ({
    ...{ verb: 'weigh', cans: [number], ...(toWeigh === undefined ? {} : { batch: toWeigh.number }) },
    ...(component === 'part-a' ? { partAGrams: grams(1200) } : { partBGrams: grams(1200) }),
  });
  const discard: Say = () => ({ verb: 'discard', can: number, why: 'gelled in the can' });
  return [
    () => ({ verb: 'blanket', can: number }),
    () => ({ verb: 'shut', can: number }),
    () => ({ verb: 'shut', can: number }),
    () => ({ verb: 'shut', can: number, handling: 'gas' }),
    (draw) => ({ verb: 'lid', can: number, ...handlingOf(draw) }),
    () => ({ verb: 'shut', can: number, handling: 'whole' }),
    () => ({ verb: 'check', can: number }),
    prestir,
    prestir,
    ...(toWeigh === undefined ? [] : [pour, pour, alone]),
    ...(isCanLive(can) ? [discard, discard] : [pour, pour, pour, pour]),
  ];
}

/** Says that a part came from a can of the other. */
function fromWrongCan({ number, component }: Can, batches: readonly Batch[]): readonly Say[] {
  const batch = batches.at(-1);
  if (batch === undefined) return [];
  const other = component === 'part-a' ? 'part-b' : 'part-a';
  return [() => ({ verb: 'add', batch: batch.number, component: other, grams: grams(14), cans: [number] })];
}

/** Of Part B, which nothing asks of gas: it is opened by its lot, or not where nobody received that. */
export const delivery = {
  ...{ verb: 'received', component: 'part-b', lot: 'delivery-1', grams: grams(1000) },
  ...{ count: 2, sheet: 'own-clear', expires: '2026-03-04' },
} as const satisfies Command;
export const openedOf = (lot: string): Command => ({ verb: 'open', component: 'part-b', sheet: 'own-clear', lot });

/** From the newest can what was weighed last of its part, whether or not that waits to hear of it. */
export function namedAfterwards({ batches, cans }: Shop): Command | undefined {
  const can = [...cans.values()].at(-1);
  const batch = [...batches.values()].findLast(({ inVessel }) => can && inVessel[can.component] !== undefined);
  if (can === undefined || batch === undefined) return undefined;
  return { verb: 'drawn', batch: batch.number, component: can.component, cans: [can.number] };
}

function actsOnPot(batch: Batch): readonly Say[] {
  const named = { batch: batch.number };
  const half = batch.plannedGrams / 2;
  const oneOnly =
    (part: 'partAGrams' | 'partBGrams'): Say =>
    () =>
      part === 'partAGrams'
        ? { verb: 'weigh', ...named, partAGrams: grams(half) }
        : { verb: 'weigh', ...named, partBGrams: grams(half) };
  const slip: Say = () => ({ verb: 'weigh', ...named, partAGrams: grams(half / 28.349523125) });
  const add: Say = (draw) => ({
    ...{ verb: 'add', ...named, component: oneOf(draw, ['part-b', 'part-a']) },
    grams: grams(oneOf(draw, [14, 60, 5000, 12_000, 12_000])),
  });
  const lids: readonly Say[] = [() => ({ verb: 'uncover', ...named }), () => ({ verb: 'cover', ...named })];
  const caught: Say = (draw) => ({ verb: 'catch', ...named, grams: grams(oneOf(draw, [300, 300, 12_000])) });
  const coat: Say = (draw) => ({ verb: 'coat', parts: [`plate-${draw(30)}`], ...named, method: 'flow' });
  const filter: Say = () => ({ verb: 'filter', ...named });
  switch (phaseOf(batch).is) {
    case 'to-weigh':
      return [oneOnly('partAGrams'), oneOnly('partBGrams'), slip];
    case 'blending':
    case 'paused':
      return [add, add, ...lids, caught];
    case 'filtered':
      return [coat, caught, caught, coat, coat, filter, ...lids, add];
    default:
      return [caught, add];
  }
}

/** A vessel that the mix just fits, now and then, or one that it never does. */
export function vesselOf(draw: Draw) {
  return draw(3) === 0 ? { vesselLitres: litres(draw(6) === 0 ? 1 : 3) } : {};
}

/** Times at which something about a can turns. */
export function canEdges(shop: Shop): readonly (EpochMs | undefined)[] {
  return [...shop.cans.values()].slice(-3).flatMap((can) => {
    const blanket = blanketTimes(can);
    const last = can.stirs.at(-1);
    const stir = last === undefined ? undefined : preStirTimes(can, last.at);
    return [blanket?.ringAt, blanket?.leadAt, blanket?.doubtfulAt, stir?.doneAt, stir?.servesUntil];
  });
}
