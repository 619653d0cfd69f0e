// The shop's sheets: every JSON file of the given folders, faulty ones kept with their faults. The first folder comes with
// the program; what is in a later one is the shop's own, and never stands in a demo's place.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type ReadSheet, readSheet, type SheetShelf } from '../products/sheet.ts';
import type { SheetFault } from '../products/sheet-fault.ts';
import { demoSheetIds } from '../products/shelf.ts';

export function readSheetFolders([programs, ...own]: readonly string[]): SheetShelf {
  const shelf = new Map<string, ReadSheet>();
  const put = (read: ReadSheet) => void shelf.set(read.kind === 'sheet' ? read.sheet.id : read.id, read);
  if (programs !== undefined) for (const read of sheetsIn(programs)) put(read);
  const demoNames = [...shelf.values()].flatMap((read) =>
    read.kind === 'sheet' ? [read.sheet.name.toLowerCase()] : [],
  );
  for (const folder of own) {
    const reads = sheetsIn(folder);
    for (const read of reads) put(notTheDemos(read, demoNames));
    // A folder was given, so the demo's products are not what is meant.
    if (reads.length === 0) put(faulty('', { file: '--sheets', field: '', problem: { is: 'no-files' } }));
  }
  return shelf;
}

function sheetsIn(folder: string): readonly ReadSheet[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((file) => {
      const read = readSheet(file, readFileSync(join(folder, file), 'utf8'));
      return read.kind === 'sheet' ? { ...read, papersIn: join(folder, read.sheet.id) } : read;
    });
}

/** Whoever means the shop's own product must not get the invented one, nor the other way round. */
function notTheDemos(read: ReadSheet, demoNames: readonly string[]): ReadSheet {
  if (read.kind === 'faulty') return read;
  const { id, name } = read.sheet;
  const file = `${id}.json`;
  if (demoSheetIds.includes(id)) {
    return faulty(id, {
      file,
      field: 'id',
      problem: { is: 'demos-own', what: 'id', value: id },
    });
  }
  if (!demoNames.includes(name.toLowerCase())) return read;
  return faulty(id, { file, field: 'name', problem: { is: 'demos-own', what: 'name', value: name } });
}

const faulty = (id: string, fault: SheetFault): ReadSheet => ({ kind: 'faulty', id, faults: [fault] });

export function faultsOf(shelf: SheetShelf): readonly SheetFault[] {
  return [...shelf.values()].flatMap((read) => (read.kind === 'faulty' ? read.faults : []));
}
