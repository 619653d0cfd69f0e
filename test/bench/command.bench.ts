// One durable command through the write path, beside the floor: a bare SQLite commit of one event row and three reminder
// rows with `synchronous = FULL`. Read the ratio, not the times.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, bench, describe } from 'vitest';
import type { Command } from '../../core/commands.ts';
import { createExecutor } from '../../core/execute.ts';
import { createShopKeeper } from '../../core/shop-keeper.ts';
import { readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { celsius, epochMs, grams, minutes, percent } from '../../core/units.ts';

const folder = mkdtempSync(join(tmpdir(), 'batchbell-bench-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const floor = new Database(join(folder, 'floor.sqlite'));
floor.pragma('journal_mode = WAL');
floor.pragma('synchronous = FULL');
floor.exec(
  'create table event (seq integer primary key, body text) strict; create table reminder (key text primary key, due_at integer) strict',
);
const addEvent = floor.prepare('insert into event (body) values (?)');
const addReminder = floor.prepare(
  'insert into reminder values (?, ?) on conflict do update set due_at = excluded.due_at',
);
const bareCommit = floor.transaction((n: number) => {
  addEvent.run(JSON.stringify({ type: 'StirrerStarted', n }));
  for (const key of ['stir-done', 'pot-margin', 'pot-end']) addReminder.run(key, n);
});

const store = openSqliteStore(join(folder, 'batchbell.sqlite'));
const crewFile = {
  ...{ name: 'bench', zone: 'UTC', language: 'en', digestHour: 17, escalationMinutes: minutes(10) },
  people: [{ name: 'lead', role: 'lead' as const, language: 'en', units: 'metric' as const }],
};
const keeper = createShopKeeper(store, 'crew', crewFile, readSheetFolders(['core/products/sheets']));
const executor = createExecutor({ store, keeper, crew: 'crew' });
let now = epochMs(Date.UTC(2026, 2, 2, 8));
let sent = 0;

async function say(command: Command): Promise<void> {
  now = epochMs(now + 1000);
  sent += 1;
  await executor.execute({ id: `${sent}`, by: 'lead', now, command, at: now, stance: { is: 'asked' } }, () => '{}');
}

await say({ verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } });
/** Enough for every turn of the bench, each batch with few events: a fold of 50. */
async function newBatch(number: number): Promise<void> {
  await say({ verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } });
  await say({ verb: 'weigh', batch: number, partAGrams: grams(1200), partBGrams: grams(1200) });
}
let batch = 1;
let acts = 0;
await newBatch(batch);

describe('one durable command, one caller', () => {
  let n = 0;
  bench('bare SQLite commit', () => {
    n += 1;
    bareCommit.immediate(n);
  });

  bench('through the write path', async () => {
    acts += 1;
    if (acts % 50 === 0) {
      await say({ verb: 'empty', batch });
      batch += 1;
      await newBatch(batch);
    }
    await say(acts % 2 === 0 ? { verb: 'stir', batch } : { verb: 'stop', batch });
  });
});
