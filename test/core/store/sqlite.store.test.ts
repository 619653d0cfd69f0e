import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Store } from '../../../core/ports.ts';
import { firstHash } from '../../../core/seal-sums.ts';
import { lockData } from '../../../core/store/data-lock.ts';
import { openDatabase } from '../../../core/store/database.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { at, bell, changeOf, planOf, sealed } from './sealed.ts';
import { storeContract } from './store-contract.ts';

const start = { seq: 0, hash: firstHash };
let folder: string;

function opened(): { file: string; opened: Store[] } {
  folder = mkdtempSync(join(tmpdir(), 'batchbell-store-'));
  return { file: join(folder, 'batchbell.sqlite'), opened: [] };
}

storeContract('SQLite', () => {
  const { file, opened: handles } = opened();
  const open = () => {
    const handle = openSqliteStore(file);
    handles.push(handle);
    return handle;
  };
  const store = open();
  return {
    store,
    beside: open,
    reopened: () => {
      store.close();
      return open();
    },
    remove: () => {
      for (const handle of handles) handle.close();
      rmSync(folder, { recursive: true });
    },
  };
});

describe('SQLite alone', () => {
  let file: string;
  let store: Store;
  /** Somebody with the file and a shell. */
  let shell: Database.Database;

  beforeEach(async () => {
    file = opened().file;
    store = openSqliteStore(file);
    const envelopes = sealed(start, [{ streams: ['batch/1', 'place/room'] }]);
    await store.commit(changeOf(start, { envelopes, plan: planOf(bell('batch/1/stir-done', at('09:42'))) }));
    shell = new Database(file);
  });
  afterEach(() => {
    shell.close();
    store.close();
    rmSync(folder, { recursive: true });
  });

  test.each([
    ["update event set body = '{}'", 'an event is never changed'],
    ["update event set hash = 'x' where seq = 1", 'an event is never changed'],
    ['delete from event', 'an event is never deleted'],
    ["update filed set stream = 'batch/2'", 'an event is never refiled'],
    ['delete from filed', 'an event is never unfiled'],
  ])('an event is only ever added: %s is refused', async (sql, why) => {
    expect(() => shell.exec(sql)).toThrow(why);
    expect(await store.eventsUnder('crew', 'batch/1')).toHaveLength(1);
  });

  test('an event cannot be put in place of another, nor after a gap', () => {
    const rest =
      'also_under, type, happened_at, recorded_at, by_person, request, said_with, body, previous_hash, hash, edition, shape, seal';
    for (const [way, place] of [
      ['insert', "1, 'batch/9', 1"],
      ['insert or replace', "1, 'batch/9', 1"],
      ['insert or replace', "2, 'batch/1', 1"],
      ['insert', "3, 'batch/1', 2"],
    ]) {
      const sql = `${way} into event select crew, ${place}, ${rest} from event`;
      expect(() => shell.exec(sql)).toThrow('an event follows the last one');
    }
  });

  test('every opening sets WAL and synchronous FULL, also of a file that was there', () => {
    for (const name of [file, join(folder, 'another.sqlite')]) {
      const database = openDatabase(name);
      expect(database.pragma('journal_mode', { simple: true })).toBe('wal');
      // 2 is FULL: https://sqlite.org/pragma.html#pragma_synchronous
      expect(database.pragma('synchronous', { simple: true })).toBe(2);
      database.close();
    }
  });

  test('a file of a newer program is left alone', () => {
    shell.pragma('user_version = 1000');
    expect(() => openSqliteStore(file)).toThrow('a newer Batchbell has written here');
    expect(shell.pragma('user_version', { simple: true })).toBe(1000);
  });

  test('a file of a program that judges, seals or writes in a newer way is left alone, though its tables are the same', () => {
    expect(shell.prepare('select ways from known').pluck().get()).toBeGreaterThanOrEqual(4);
    shell.exec('update known set ways = 1000');
    expect(() => openSqliteStore(file)).toThrow(
      /a newer Batchbell has written here \(1000 ways of writing; this one knows \d+\)/,
    );
    expect(shell.prepare('select ways from known').pluck().get()).toBe(1000);
  });

  test('a file that was opened before is not built a second time', async () => {
    openSqliteStore(file).close();
    expect(await store.eventsAfter('crew', 0)).toHaveLength(1);
  });

  test('an event whose body this program cannot read says which it is', async () => {
    const columns = "crew, 2, stream, 2, also_under, 'Sung', happened_at, recorded_at, by_person, request, said_with";
    shell.exec(`insert into event select ${columns}, '{"type":"Sung"}', hash, 'x', edition, shape, seal from event`);
    await expect(store.eventsAfter('crew', 1)).rejects.toThrow('event 2 (batch/1, version 2) of type Sung');
  });

  test('a folder is for one process: the second is refused, and the next is let in when the first is gone', () => {
    const first = lockData(folder);
    expect(() => lockData(folder)).toThrow('another Batchbell works on this data');
    first.release();
    lockData(folder).release();
  });

  test('a folder that is not there is not taken for one that another process holds', () => {
    expect(() => lockData(join(folder, 'nowhere'))).toThrow(/directory/);
  });
});
