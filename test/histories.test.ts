// Records as earlier builds wrote them (test/histories/README.md), each opened by this one: they hold together, they read,
// and the same bells stand in them.

import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, describe, expect, it } from 'vitest';
import { readCrew, readFlags } from '../bot/config/config.ts';
import { proveRecord } from '../bot/records/proving.ts';
import { createExecutor } from '../core/execute.ts';
import { createShopKeeper } from '../core/shop-keeper.ts';
import { openSqliteStore } from '../core/store/sqlite-store.ts';
import { epochMs } from '../core/units.ts';
import { demoShelf } from './core/given.ts';

const written = 'test/histories';
const histories = readdirSync(written, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

const opened: (() => void)[] = [];
afterEach(() => {
  for (const close of opened.splice(0)) close();
});

/** A copy: opening one brings its tables up to date. */
function opening(name: string) {
  const folder = mkdtempSync(join(tmpdir(), 'history-'));
  const file = join(folder, 'batchbell.sqlite');
  copyFileSync(join(written, name, 'batchbell.sqlite'), file);
  const store = openSqliteStore(file);
  opened.push(() => {
    store.close();
    rmSync(folder, { recursive: true });
  });
  const crewJson = join(written, name, 'crew.json');
  const flags = readFlags([]);
  if ('fault' in flags) throw new Error(flags.fault);
  const crewFile = readCrew(crewJson, readFileSync(crewJson, 'utf8'), flags);
  if ('fault' in crewFile) throw new Error(crewFile.fault);
  const keeper = createShopKeeper(store, 'crew', crewFile, demoShelf);
  return { file, store, executor: createExecutor({ store, keeper, crew: 'crew' }) };
}

/** What rings, when and for whom: not when it was first asked for, nor how often it was tried. */
function bellsIn(file: string): readonly unknown[] {
  const database = new Database(file, { readonly: true });
  const rows = database
    .prepare('select numbered_key, key, ring, kind, stream, due_at, people from reminder order by numbered_key')
    .all();
  database.close();
  return rows;
}

function withoutBells(file: string): void {
  const database = new Database(file);
  database.exec('delete from reminder');
  database.close();
}

describe.each(histories)('the record of %s, as it was written then', (name) => {
  it('given this build, then the chain holds together from the first event to the last', async () => {
    const proof = await proveRecord(opening(name).store.archive, 'crew', undefined);

    expect(proof.faults).toEqual([]);
    expect(proof.events).toBeGreaterThan(20);
  });

  it('given this build, then every event reads', async () => {
    const { store } = opening(name);

    const { events } = await proveRecord(store.archive, 'crew', undefined);

    expect(await store.eventsAfter('crew', 0)).toHaveLength(events);
  });

  it('given its bells are lost, when they are made again, then the same ones stand there', async () => {
    const { file, executor } = opening(name);
    const before = bellsIn(file);
    withoutBells(file);
    expect(bellsIn(file)).toEqual([]);

    await executor.reconcile(epochMs(Date.parse('2026-12-01T08:00Z')));

    expect(bellsIn(file)).toEqual(before);
    expect(before.length).toBeGreaterThan(0);
  });
});

it('given the histories, then there are those that were kept, each with its script and its crew', () => {
  expect(histories).toEqual(
    expect.arrayContaining(['both-languages', 'cans', 'corrections', 'demo-shift', 'spray-session']),
  );
  for (const name of histories) {
    expect(readdirSync(join(written, name)).sort()).toEqual(['batchbell.sqlite', 'crew.json', 'script.txt']);
  }
});
