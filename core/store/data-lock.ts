// One process a data folder. An exclusive transaction on a file of its own, held for as long as the process lives: the
// operating system lets go of it however the process ends.

import { join } from 'node:path';
import Database from 'better-sqlite3';

export interface DataLock {
  readonly release: () => void;
}

/** Throws where another process holds the folder. Keep what it returns: a forgotten handle lets go. */
export function lockData(folder: string): DataLock {
  const database = new Database(join(folder, 'batchbell.lock'), { timeout: 500 });
  try {
    database.exec('begin exclusive');
  } catch (cause) {
    database.close();
    const held = cause instanceof Database.SqliteError && cause.code.startsWith('SQLITE_BUSY');
    throw held ? new Error('another Batchbell works on this data', { cause }) : cause;
  }
  return { release: () => database.close() };
}
