import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Command } from '../../core/commands.ts';
import { createExecutor, type Executor, type Outcome } from '../../core/execute.ts';
import type { Store } from '../../core/ports.ts';
import { createShopKeeper } from '../../core/shop-keeper.ts';
import { readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { celsius, epochMs, grams, percent } from '../../core/units.ts';
import { inventedCrew } from './two-batches.ts';

const shelf = readSheetFolders([new URL('../../core/products/sheets', import.meta.url).pathname]);
const eight = epochMs(Date.UTC(2026, 2, 2, 8));
const air: Command = { verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } };
const mix: Command = { verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } };
const weigh: Command = { verb: 'weigh', partAGrams: grams(1201), partBGrams: grams(1198) };

let folder: string;
const stores: Store[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'batchbell-same-'));
});
afterEach(() => {
  for (const store of stores.splice(0)) store.close();
  rmSync(folder, { recursive: true });
});

/** A writer of its own on the one file, as a second process would be. */
function writer(): { executor: Executor; store: Store } {
  const store = openSqliteStore(join(folder, 'batchbell.sqlite'));
  stores.push(store);
  const keeper = createShopKeeper(store, 'crew', inventedCrew, shelf);
  return { executor: createExecutor({ store, keeper, crew: 'crew' }), store };
}

let answers = 0;
/** No two wordings are alike, so that the same answer can only be the remembered one. */
function wording(_: unknown, outcome: Outcome): string {
  answers += 1;
  return `${outcome.kind} ${answers}`;
}

async function say(executor: Executor, id: string, command: Command, afterMinutes = 0): Promise<string> {
  const now = epochMs(eight + afterMinutes * 60_000);
  const request = { id, by: 'kari', now, at: now, command, stance: { is: 'asked' as const } };
  return (await executor.execute(request, () => request, wording)) ?? 'no act';
}

async function eventsOf(store: Store, request: string): Promise<number> {
  return (await store.eventsAfter('crew', 0)).filter((event) => event.request === request).length;
}

test('the same delivery again is one event and the same answer', async () => {
  const { executor, store } = writer();
  const first = await say(executor, 'd1', air);
  expect(first).toMatch(/^recorded/);
  expect(await say(executor, 'd1', air, 5)).toBe(first);
  expect(await eventsOf(store, 'd1')).toBe(1);
});

test('the same delivery many times at once is one event and the same answer', async () => {
  const { executor, store } = writer();
  const given = await Promise.all(Array.from({ length: 20 }, () => say(executor, 'd1', air)));
  expect(new Set(given).size).toBe(1);
  expect(await eventsOf(store, 'd1')).toBe(1);
});

test('the same delivery at two processes at once is one event and the same answer', async () => {
  const [one, two] = [writer(), writer()];
  for (let i = 0; i < 20; i++) {
    const [a, b] = await Promise.all([say(one.executor, `d${i}`, air, i), say(two.executor, `d${i}`, air, i)]);
    expect(a).toBe(b);
    expect(await eventsOf(one.store, `d${i}`)).toBe(1);
  }
});

test('two processes that write at once: each sees what the other wrote, and no number is given twice', async () => {
  const [one, two] = [writer(), writer()];
  await say(one.executor, 'air', air);
  const saying = Array.from({ length: 10 }, (_, i) =>
    say(i % 2 === 0 ? one.executor : two.executor, `mix-${i}`, mix, i),
  );
  expect((await Promise.all(saying)).every((text) => text.startsWith('recorded'))).toBe(true);
  for (const { executor } of [one, two]) {
    const { batches, nextNumber } = await executor.look();
    expect([...batches.keys()].toSorted((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(nextNumber).toBe(11);
  }
});

test('an objection is given again to the same delivery, though by then the act would be allowed', async () => {
  const { executor, store } = writer();
  await say(executor, 'd1', air);
  await say(executor, 'd2', mix);
  await say(executor, 'd3', weigh);
  const objected = await say(executor, 'd4', { verb: 'filter' }, 10);
  expect(objected).toMatch(/^objected/);
  // Stirring wants 102 minutes at 24 degC (120 at 15, 90 at 30: the demo sheet).
  expect(await say(executor, 'd4', { verb: 'filter' }, 110)).toBe(objected);
  expect(await eventsOf(store, 'd4')).toBe(0);
  expect(await say(executor, 'd5', { verb: 'filter' }, 110)).toMatch(/^recorded/);
});
