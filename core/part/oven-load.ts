// What went into the oven together and is still in it: one load, until its parts come out.

import { byName, liveParts, type Shop } from '../shop.ts';
import type { Part } from './part.ts';
import { phaseOfPart } from './part.ts';

/** Each load's parts by name; the loads in the order in which they went in. */
export function ovenLoads(shop: Shop): readonly (readonly Part[])[] {
  const loads = new Map<string, Part[]>();
  for (const part of liveParts(shop)) {
    const phase = phaseOfPart(part);
    if (phase.is !== 'curing' || phase.cure.way !== 'oven') continue;
    const { request } = phase.cure.entry;
    loads.set(request, [...(loads.get(request) ?? []), part]);
  }
  const wentIn = (load: readonly Part[]) => load[0]?.cure?.run.from ?? 0;
  return [...loads.values()].map(byName).sort((a, b) => wentIn(a) - wentIn(b));
}
