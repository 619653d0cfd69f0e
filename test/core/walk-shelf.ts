// The sheets that a crew at random takes its material from.

import { readSheet, type SheetShelf } from '../../core/products/sheet.ts';
import { demoShelf } from './given.ts';

/** So short that a walk comes past it. */
const openCans = { components: ['part-a', 'part-b'], mostDays: 0, source: 'invented' };

/** A cure in the room that asks for no reading, and what it promises after it. */
const soonServing = {
  time: { kind: 'plain', minutes: 20, source: 'invented' },
  after: { serviceMinutes: 30, fullMinutes: 60, improvesMinutes: 90, source: 'invented' },
};

/** Beside the demo's: the same two as the shop's own, one that cannot be read, and one by weight that gives no densities. */
export const walkShelf: SheetShelf = new Map([
  ...demoShelf,
  ownAs('own-clear', 'demo-clear'),
  ownAs('own-build', 'demo-build'),
  ['own-faulty', readSheet('own-faulty.json', '{}')],
  noLitres(),
]);

function demo(id: string) {
  const found = demoShelf.get(id);
  if (found?.kind !== 'sheet') throw new Error(`${id} has a fault`);
  return found.sheet;
}

function ownAs(id: string, as: string) {
  const { cure } = demo(as);
  const own = { ...demo(as), id, openCans, cure: as === 'demo-clear' ? { ...cure, room: soonServing } : cure };
  return [id, readSheet(`${id}.json`, JSON.stringify(own))] as const;
}

function noLitres() {
  const { densities: _, ...ratio } = demo('demo-clear').ratio;
  const read = readSheet('no-litres.json', JSON.stringify({ ...demo('demo-clear'), id: 'no-litres', ratio }));
  return ['no-litres', read] as const;
}
