// The shop's sheets: every JSON file of the given folders, faulty ones kept with their faults. A later folder's sheet
// stands in place of an earlier one of the same id.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type ReadSheet, readSheet, type SheetFault, type SheetShelf } from '../products/sheet.ts';

export function readSheetFolders(folders: readonly string[]): SheetShelf {
  const shelf = new Map<string, ReadSheet>();
  for (const folder of folders) {
    for (const file of readdirSync(folder)
      .filter((name) => name.endsWith('.json'))
      .sort()) {
      const read = readSheet(file, readFileSync(join(folder, file), 'utf8'));
      shelf.set(read.kind === 'sheet' ? read.sheet.id : read.id, read);
    }
  }
  return shelf;
}

export function faultsOf(shelf: SheetShelf): readonly SheetFault[] {
  return [...shelf.values()].flatMap((read) => (read.kind === 'faulty' ? read.faults : []));
}
