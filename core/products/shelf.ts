// Which of the shop's sheets is meant, and which are offered. As soon as the shop has a sheet of its own, readable or not,
// the products that come with the program are invented things beside real ones: only their full name brings them.

import { type Failed, failed, isFailed } from '../failed.ts';
import type { SheetId } from '../ids.ts';
import type { ReadSheet, Sheet, SheetShelf } from './sheet.ts';
import type { SheetUnclear } from './sheet-objections.ts';

/** The products that come with the program, all invented; the first is usual where there is nothing else. */
export const demoSheetIds: readonly SheetId[] = ['demo-clear', 'demo-build'];

export type SheetMeant = Sheet | Failed<SheetUnclear>;

const isReadable = ([, read]: readonly [SheetId, ReadSheet]): boolean => read.kind === 'sheet';

/** What is faulty under a demo's id is a file of the shop's: the program's own are held to by tests. */
const isDemo = ([id, read]: readonly [SheetId, ReadSheet]): boolean =>
  demoSheetIds.includes(id) && read.kind === 'sheet';

/** The shop's own; where it has none, the demo's. */
function inUse(shelf: SheetShelf): readonly (readonly [SheetId, ReadSheet])[] {
  const own = [...shelf].filter((entry) => !isDemo(entry));
  return own.length > 0 ? own : [...shelf];
}

/** On taps, on forms, and wherever the sheets are listed. */
export function offeredSheets(shelf: SheetShelf): readonly SheetId[] {
  return inUse(shelf)
    .filter(isReadable)
    .map(([id]) => id);
}

/** Those that a part of the name brings, faulty ones too, which say why not; and those that only the full name brings. */
export function sheetNames(shelf: SheetShelf) {
  const byPart = inUse(shelf).flatMap(([id]) => (id === '' ? [] : [id]));
  return { sheetIds: byPart, sheetsByFullName: [...shelf.keys()].filter((id) => id !== '' && !byPart.includes(id)) };
}

/** Whether it may be the usual one: a demo's may not beside the shop's own. */
export const maybeUsual = (shelf: SheetShelf, id: SheetId): boolean => inUse(shelf).some(([used]) => used === id);

/** `set`: the usual one as the crew has set it. Nothing is guessed, and nothing faulty is stood in for by another. */
export function sheetMeant(shelf: SheetShelf, set: SheetId | undefined, named?: SheetId): SheetMeant {
  const known = offeredSheets(shelf);
  const used = inUse(shelf);
  const usual = set !== undefined && (maybeUsual(shelf, set) || !shelf.has(set)) ? set : undefined;
  const isDemoOnly = used.every(isDemo);
  const only = set === undefined && used.length === 1 ? known[0] : undefined;
  const id = named ?? usual ?? (isDemoOnly ? demoSheetIds[0] : only);
  const found = id === undefined ? undefined : shelf.get(id);
  if (found?.kind === 'sheet') return found.sheet;
  if (id === undefined) {
    const faults = used.flatMap(([, read]) => (read.kind === 'faulty' ? read.faults : []));
    return failed({ code: 'which-sheet', known, faults, invented: set });
  }
  if (found === undefined) return failed({ code: 'no-such-sheet', sheet: id, known });
  return failed({ code: 'sheet-faulty', sheet: id, faults: found.faults });
}

/** By which what no batch decides is looked at: the usual one; where none is, every one that may be meant. */
export function sheetsLikely(shelf: SheetShelf, set: SheetId | undefined): readonly Sheet[] {
  const meant = sheetMeant(shelf, set);
  if (!isFailed(meant)) return [meant];
  return inUse(shelf).flatMap(([, read]) => (read.kind === 'sheet' ? [read.sheet] : []));
}
