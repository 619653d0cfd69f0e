// Opens the record's file the same way every time: WAL, `synchronous = FULL` set at every open (a re-opened WAL file
// would fall back to NORMAL and may lose the last commits at a power cut), tables brought up to date.

import Database from 'better-sqlite3';
import { migrate } from './migrations.ts';

/** `:memory:` for a record that ends with the process. Throws where the file cannot be written or is a newer one's. */
export function openDatabase(file: string): Database.Database {
  const database = new Database(file);
  try {
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    // An act writes about eleven pages, most of them the same as the act before: moved into the file every 4,000 pages in
    // place of 1,000, each is moved once for some 400 acts. The log beside the file grows to 16 MB.
    database.pragma('wal_autocheckpoint = 4000');
    database.pragma('busy_timeout = 5000');
    migrate(database);
  } catch (error) {
    database.close();
    throw error;
  }
  return database;
}
