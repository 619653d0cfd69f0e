// Opens what every run needs: the product sheets and the record, with the folder in which it lies.

import { existsSync, mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type Failed, failed, isFailed } from '../../core/failed.ts';
import type { Store } from '../../core/ports.ts';
import type { SheetShelf } from '../../core/products/sheet.ts';
import { lockData } from '../../core/store/data-lock.ts';
import { faultsOf, readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { type Flags, readEnvironment } from '../config/config.ts';
import { type RecordPlace, recordPlace } from '../config/record-place.ts';
import { complain, exitCodes } from './exit-codes.ts';
import { stderrLog } from './log.ts';

export interface OpenedRecord {
  readonly shelf: SheetShelf;
  /** Some sheet cannot be read; the others serve. */
  readonly hasSheetFaults: boolean;
  /** `undefined`: the record is in memory. */
  readonly place: RecordPlace | undefined;
  readonly store: Store;
}

/** `inMemory`: where no flag names a folder. Or the code to end with. */
export function openRecord(flags: Flags, inMemory: boolean): OpenedRecord | Failed<number> {
  const shelf = readSheets(flags);
  if (isFailed(shelf)) return failed(complain(shelf.failed));
  const faults = faultsOf(shelf);
  for (const fault of faults) stderrLog.error('sheet-fault', { ...fault });
  const usual = inMemory ? undefined : (readEnvironment(process.env).BATCHBELL_DATA ?? 'data');
  const place = recordPlace(flags.data ?? usual);
  const store = openStore(place);
  if (isFailed(store)) {
    stderrLog.error('store-not-opened', { fault: store.failed });
    complain(store.failed);
    return failed(exitCodes.cannotWrite);
  }
  return { shelf, hasSheetFaults: faults.length > 0, place, store };
}

/** Where package.json lies: three folders up in a build, two in the source. */
export function packageFolder(): string {
  const bot = dirname(import.meta.dirname);
  return bot.endsWith(join('dist', 'bot')) ? dirname(dirname(bot)) : dirname(bot);
}

/** The invented shift is played with the invented products alone. */
function readSheets(flags: Flags): SheetShelf | Failed<string> {
  const own = join(packageFolder(), 'core/products/sheets');
  try {
    return readSheetFolders(flags.sheets === undefined || flags.demo ? [own] : [own, flags.sheets]);
  } catch (error) {
    return { failed: `--sheets: ${error instanceof Error ? error.message : String(error)}` };
  }
}

/** In memory where no folder is named. */
function openStore(place: RecordPlace | undefined): Store | Failed<string> {
  try {
    if (place === undefined) return openSqliteStore(':memory:');
    makeFolder(place.folder);
    const lock = lockData(place.folder);
    const store = openSqliteStore(place.file);
    return {
      ...store,
      close: () => {
        store.close();
        lock.release();
      },
    };
  } catch (error) {
    return { failed: `${place?.file}: ${error instanceof Error ? error.message : String(error)}` };
  }
}

/** Node's own recursive making never ends where a file system refuses it with "no such file": /proc, for one. */
function makeFolder(folder: string): void {
  if (existsSync(folder)) return;
  makeFolder(dirname(folder));
  mkdirSync(folder);
}
