// Records as earlier builds wrote them (test/histories/README.md), each opened by this one: they hold together, they read,
// the same bells stand in them, and what they come to changes only with a reason.

import { createHash } from 'node:crypto';
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, describe, expect, it } from 'vitest';
import { readCrew, readFlags } from '../bot/config/config.ts';
import { proveRecord } from '../bot/records/proving.ts';
import { readersOf } from '../core/event-readers.ts';
import { createExecutor } from '../core/execute.ts';
import { isFailed } from '../core/failed.ts';
import { createShopKeeper } from '../core/shop-keeper.ts';
import { openSqliteStore } from '../core/store/sqlite-store.ts';
import { epochMs } from '../core/units.ts';
import { demoShelf } from './core/given.ts';
import { whatStands } from './what-stands.ts';

const written = 'test/histories';
const histories = readdirSync(written, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .sort();

const monthsLater = epochMs(Date.parse('2026-12-01T08:00Z'));

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
  if (isFailed(flags)) throw new Error(flags.failed);
  const crewFile = readCrew(crewJson, readFileSync(crewJson, 'utf8'), flags);
  if (isFailed(crewFile)) throw new Error(crewFile.failed);
  const keeper = createShopKeeper(store, 'crew', crewFile, demoShelf);
  return { file, store, crewFile, executor: createExecutor({ store, keeper, crew: 'crew' }) };
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

    await executor.reconcile(monthsLater);

    expect(bellsIn(file)).toEqual(before);
    expect(before.length).toBeGreaterThan(0);
  });

  it('given this build, then it comes to what it came to before', async () => {
    const { store, crewFile } = opening(name);
    const golden = join(written, name, 'stands.json');

    const stands = await whatStands(store, crewFile, monthsLater);

    if (process.env.UPDATE_HISTORIES === '1') writeFileSync(golden, stands);
    expect(stands).toBe(readFileSync(golden, 'utf8'));
  });
});

describe('the kept records', () => {
  it('given them all, then each is there with its script and its crew', () => {
    expect(histories).toEqual(
      expect.arrayContaining([
        'both-languages',
        'cans',
        'cans-shut',
        'corrections',
        'demo-shift',
        'exposures',
        'every-act',
        'filter-and-flush',
        'breathing-air',
        'gas-read',
        'judged-anew',
        'held-parts',
        'left-the-shop',
        'spray-assessed',
        'spray-known',
        'spray-session',
        'steps',
        'tests-asked',
      ]),
    );
    for (const name of histories) {
      const kept = ['batchbell.sqlite', 'crew.json', 'script.txt', 'stands.json'];
      expect(readdirSync(join(written, name)).sort()).toEqual(kept);
    }
  });

  it('given any type of event, then some record holds one', async () => {
    const inOne = async (name: string) =>
      (await opening(name).store.eventsAfter('crew', 0)).map(({ body }) => body.type);
    const kept = new Set((await Promise.all(histories.map(inOne))).flat());
    expect([...Object.keys(readersOf), 'Amended'].filter((type) => ![...kept].some((one) => one === type))).toEqual([]);
  });

  it('given what they come to, then the last line of why.md says why it is that', () => {
    const sums = createHash('sha256');
    for (const name of histories) sums.update(readFileSync(join(written, name, 'stands.json')));
    const sum = sums.digest('hex').slice(0, 12);
    const why = readFileSync(join(written, 'why.md'), 'utf8')
      .trim()
      .split('\n')
      .filter((line) => line.startsWith('- '));
    // A sentence of the trade, behind the sum of all `stands.json` as they now are.
    expect(why.at(-1)).toMatch(new RegExp(`^- ${sum} \\d+ \\w+ \\d{4}: .{30,}\\.$`));
    expect(new Set(why.map((line) => line.split(' ')[1])).size).toBe(why.length);
  });
});
