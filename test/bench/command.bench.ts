// One durable command through the write path, and 32 at once, beside the floor: a bare SQLite commit of one event row and
// three reminder rows with `synchronous = FULL`. Read the ratio, not the times.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { afterAll, bench, describe } from 'vitest';
import type { Command } from '../../core/commands.ts';
import type { CrewFile } from '../../core/crew/crew.ts';
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

const crewFile: CrewFile = {
  ...{ name: 'bench', zone: 'UTC', language: 'en', units: 'metric', digestHour: 17, escalationMinutes: minutes(10) },
  people: [{ name: 'lead', role: 'lead', language: 'en', units: 'metric' }],
};

type Act = () => Promise<void>;

/** A shop of its own on disk: one act for each of its batches in the works, which stirs or stops it. */
async function openShop(batches: number): Promise<readonly Act[]> {
  const store = openSqliteStore(join(folder, `with-${batches}.sqlite`));
  const keeper = createShopKeeper(store, 'crew', crewFile, readSheetFolders(['core/products/sheets']));
  const executor = createExecutor({ store, keeper, crew: 'crew', turnOver: setImmediate });
  let now = epochMs(Date.UTC(2026, 2, 2, 8));
  let airAt = 0;
  let sent = 0;

  /** Gives the number of the batch that it opened, if it did. */
  async function say(command: Command): Promise<number> {
    now = epochMs(now + 1000);
    sent += 1;
    const asked = { id: `${sent}`, by: 'lead', now, command, at: now, stance: { is: 'asked' as const } };
    const opened = await executor.execute(
      asked,
      () => asked,
      (_, outcome) => {
        // The bench would measure something else.
        if (outcome.kind !== 'recorded') throw new Error(`${command.verb} was not recorded`);
        return outcome.envelopes.map(({ body }) => (body.type === 'BatchOpened' ? body.batch : '')).join('');
      },
    );
    return Number(opened);
  }

  async function freshAir(): Promise<void> {
    if (now - airAt < 3_600_000) return;
    airAt = now;
    await say({ verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } });
  }

  async function newBatch(): Promise<number> {
    const batch = await say({ verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } });
    await say({ verb: 'weigh', batch, partAGrams: grams(1200), partBGrams: grams(1200) });
    return batch;
  }

  function actsOn(first: number): Act {
    let batch = first;
    let acts = 0;
    return async () => {
      acts += 1;
      await freshAir();
      // About 50 events to fold.
      if (acts % 50 === 0) {
        await say({ verb: 'empty', batch });
        batch = await newBatch();
      }
      await say(acts % 2 === 0 ? { verb: 'stir', batch } : { verb: 'stop', batch });
    };
  }

  await freshAir();
  const acts: Act[] = [];
  while (acts.length < batches) acts.push(actsOn(await newBatch()));
  return acts;
}

const callers = 32;
const [alone = async () => undefined] = await openShop(1);
const [amongFifty = async () => undefined] = await openShop(50);
const atOnce = await openShop(callers);
const long = { time: 2_000, warmupTime: 500 };
let n = 0;

describe('one durable command, one caller', () => {
  const bare = () => {
    n += 1;
    bareCommit.immediate(n);
  };
  bench('bare SQLite commit', bare, long);
  bench('through the write path, one live batch', alone, long);
  bench('through the write path, 50 live batches', amongFifty, long);
});

describe(`${callers} durable commands, as many callers`, () => {
  const bare = () => {
    for (let i = 0; i < callers; i++) bareCommit.immediate(n + i);
    n += callers;
  };
  const together = async () => {
    await Promise.all(atOnce.map((act) => act()));
  };
  bench('bare SQLite commits, one after another', bare, long);
  bench('through the write path, at once', together, long);
});
