// Sheets of a shop's own, invented: the demo clear's figures under another name, 4 : 1 by volume.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { SheetShelf } from '../../../core/products/sheet.ts';
import { readSheetFolders } from '../../../core/store/sheet-files.ts';

export const demoFolder = join(import.meta.dirname, '../../../core/products/sheets');

/** 5 L are 4 L of A at 1.42 kg/L and 1 L of B at 0.97 kg/L: 5680 g and 970 g. `change`: figures that differ. */
export function ownSheet(id: string, change: Readonly<Record<string, unknown>> = {}): string {
  const demo = JSON.parse(readFileSync(join(demoFolder, 'demo-clear.json'), 'utf8'));
  const source = 'invented for the tests';
  const densities = { partAKilogramsPerLitre: 1.42, partBKilogramsPerLitre: 0.97 };
  const ratio = { basis: 'volume', partsA: 4, partsB: 1, tolerancePercent: 5, densities, source };
  return JSON.stringify({ ...demo, id, name: `Invented ${id}`, ratio, ...change });
}

/** A folder of these files, gone after the test. */
export function sheetFolder(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'batchbell-sheets-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  return folder;
}

/** As the program reads them with `--sheets`. */
export const shelfWith = (files: Readonly<Record<string, string>>): SheetShelf =>
  readSheetFolders([demoFolder, sheetFolder(files)]);
