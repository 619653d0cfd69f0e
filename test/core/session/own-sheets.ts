// Sheets of which something is not known, made from the demo's. Invented.

import { readSheet, type SheetShelf } from '../../../core/products/sheet.ts';
import { demoShelf } from '../given.ts';

/** The demo clear alone on the shelf, with these groups in place of its own; `undefined` leaves one out. */
export function shelfWith(groups: Readonly<Record<string, unknown>>): SheetShelf {
  const found = demoShelf.get('demo-clear');
  if (found?.kind !== 'sheet') throw new Error('the demo clear has a fault');
  const read = readSheet('demo-clear.json', JSON.stringify({ ...found.sheet, ...groups }));
  if (read.kind !== 'sheet') throw new Error(JSON.stringify(read.faults));
  return new Map([['demo-clear', read]]);
}

/** The demo's figures with another solvent in it. */
export const sprayOf = (solvent: string) => ({
  ...{ longestSpellMinutes: 60, airRecheckMinutes: 20, ventilateAfterMinutes: 30, source: 'invented' },
  solvents: [{ solvent, percentByMass: 40 }],
});
