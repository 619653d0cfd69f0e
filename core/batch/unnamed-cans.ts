// What went into a pot of which nobody has said from which can it came, for a crew that keeps track of its cans; and which
// one of it a weighing asks about.

import { isGasSensitive } from '../can/can.ts';
import { type Component, components } from '../components.ts';
import type { Entry, Fact } from '../history.ts';
import { liveCans, type Shop } from '../shop.ts';
import type { Grams } from '../units.ts';
import type { Batch } from './batch.ts';

export interface Unnamed {
  readonly weighing: Entry;
  readonly component: Component;
  readonly grams: Grams;
}

/** `weighing`: by its number in the record. */
const isNamed = ({ entries }: Batch, weighing: number, component: Component): boolean =>
  entries.some(({ fact }) => fact.type === 'CanNamed' && fact.weighing === weighing && fact.component === component);

/** As they were weighed, whatever was named since. */
function weighedWithoutCan({ entries }: Batch): readonly Unnamed[] {
  return entries.flatMap((weighing) => {
    const { fact } = weighing;
    const isFrom = (component: Component) =>
      'fromCans' in fact && fact.fromCans?.some((from) => from.component === component) === true;
    const weighed = weighedIn(fact).filter(({ component }) => !isFrom(component));
    return weighed.map((each) => ({ weighing, ...each }));
  });
}

/** What of each part a fact tells to have been weighed. */
export function weighedIn(fact: Fact): readonly Pick<Unnamed, 'component' | 'grams'>[] {
  if (fact.type === 'PartWeighed' || fact.type === 'PartAdded') return [fact];
  if (fact.type !== 'PartsWeighed') return [];
  return [
    { component: 'part-a', grams: fact.partAGrams },
    { component: 'part-b', grams: fact.partBGrams },
  ];
}

export function unnamedIn(batch: Batch): readonly Unnamed[] {
  return weighedWithoutCan(batch).filter(({ weighing, component }) => !isNamed(batch, weighing.seq, component));
}

/** A part has its cans tracked from the first of them on; one that needs gas, from the first can of either part on. */
export function keepsCans(shop: Shop, { sheet }: Batch, component: Component): boolean {
  const kept = [...shop.pouredFromCans, ...liveCans(shop).map((can) => can.component)];
  return isGasSensitive({ sheet, component }) ? kept.length > 0 : kept.includes(component);
}

/** The parts whose lot nobody has said, of a crew that keeps track of it. */
export function unnamedParts(shop: Shop, batch: Batch): readonly Component[] {
  const open = new Set(unnamedIn(batch).map(({ component }) => component));
  return components.filter((component) => open.has(component) && keepsCans(shop, batch, component));
}

const leftOpen = (shop: Shop, batch: Batch): readonly Unnamed[] =>
  weighedWithoutCan(batch).filter(({ component }) => keepsCans(shop, batch, component));

/** Whether the batch has had its question of the cans, answered or not. */
export const hasAskedOfCans = (shop: Shop, batch: Batch): boolean => leftOpen(shop, batch).length > 0;

/** Asked once a batch: by the first of its weighings that left it open, and of Part A before Part B. */
export function canAsked(shop: Shop, batch: Batch, seqs: readonly number[]): Component | undefined {
  const kept = leftOpen(shop, batch);
  const first = Math.min(...kept.map(({ weighing }) => weighing.seq));
  if (!seqs.includes(first)) return undefined;
  return components.find((component) =>
    kept.some((each) => each.weighing.seq === first && each.component === component),
  );
}

/** The open cans that may be meant. */
export function cansFitting(shop: Shop, { sheet }: Batch, component: Component) {
  return liveCans(shop).filter((can) => can.component === component && can.sheet.id === sheet.id);
}
