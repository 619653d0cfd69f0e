import { afterEach, describe, expect, test } from 'vitest';
import type { Command } from '../../core/commands.ts';
import { createExecutor, type Outcome } from '../../core/execute.ts';
import type { Change, Store } from '../../core/ports.ts';
import { createShopKeeper } from '../../core/shop-keeper.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { celsius, epochMs, grams, percent } from '../../core/units.ts';
import { demoCrew, demoShelf } from './given.ts';

const eight = epochMs(Date.UTC(2026, 2, 2, 8));
const air: Command = { verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } };
const mix: Command = { verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } };
const weigh = (batch: number): Command => ({ verb: 'weigh', batch, partAGrams: grams(1201), partBGrams: grams(1198) });

const stores: Store[] = [];
afterEach(() => {
  for (const store of stores.splice(0)) store.close();
});

/** A shop whose every transaction is seen, and may be met by `before`, which may throw or write as somebody else. */
function openShop(before: (change: Change) => Promise<void> = async () => undefined) {
  const store = openSqliteStore(':memory:');
  stores.push(store);
  const landed: Change[] = [];
  const watched: Store = {
    ...store,
    commit: async (change) => {
      await before(change);
      const outcome = await store.commit(change);
      if (outcome === 'committed') landed.push(change);
      return outcome;
    },
  };
  const writer = () => {
    const keeper = createShopKeeper(watched, 'crew', demoCrew, demoShelf);
    return createExecutor({ store: watched, keeper, crew: 'crew' });
  };
  return { store, landed, executor: writer(), writer };
}

type Answering = (request: unknown, outcome: Outcome) => string;
const plainly: Answering = (_, outcome) => {
  if (outcome.kind === 'objected') return outcome.objections.map(({ code }) => code).join();
  return outcome.kind === 'unclear' ? outcome.unclear.code : outcome.envelopes.map(({ body }) => body.type).join();
};

async function say(
  { executor }: Pick<ReturnType<typeof openShop>, 'executor'>,
  id: string,
  command: Command,
  wording = plainly,
): Promise<string> {
  const request = { id, by: 'kari', now: eight, at: eight, command, stance: { is: 'asked' as const } };
  return (await executor.execute(request, () => request, wording)) ?? 'no act';
}

const shift: readonly Command[] = [
  air,
  mix,
  weigh(1),
  weigh(1),
  { verb: 'stop', batch: 1 },
  mix,
  { verb: 'undo' },
  { verb: 'stir', batch: 1 },
  { verb: 'filter', batch: 9 },
  { verb: 'empty', batch: 1 },
];

describe('acts of one breath', () => {
  test('land in one transaction, each decided on what the one before it left', async () => {
    const together = openShop();
    const given = await Promise.all(shift.map((command, i) => say(together, `d${i}`, command)));
    const apart = openShop();
    const inTurn: string[] = [];
    for (const [i, command] of shift.entries()) inTurn.push(await say(apart, `d${i}`, command));
    expect(given).toEqual(inTurn);
    expect(given).toContain('already-weighed');
    expect(given).toContain('no-such-batch');
    expect(await together.store.eventsAfter('crew', 0)).toEqual(await apart.store.eventsAfter('crew', 0));
    expect(await together.store.liveStreams('crew')).toEqual(await apart.store.liveStreams('crew'));
    expect(await together.store.nextDueAt('crew')).toBe(await apart.store.nextDueAt('crew'));
    expect(together.landed).toHaveLength(1);
    expect(apart.landed).toHaveLength(shift.length);
  });

  test('are answered once they have landed, not before', async () => {
    let open: () => void = () => undefined;
    const gate = new Promise<void>((resolve) => {
      open = resolve;
    });
    const shop = openShop(() => gate);
    const given: string[] = [];
    const all = Promise.all([air, mix].map(async (command, i) => given.push(await say(shop, `d${i}`, command))));
    for (let i = 0; i < 100; i++) await Promise.resolve();
    expect(given).toEqual([]);
    open();
    await all;
    expect(given).toEqual(['AirRead', 'BatchOpened']);
  });

  test('that cannot be decided fail alone', async () => {
    const shop = openShop();
    const broken: Answering = () => {
      throw new Error('no words for it');
    };
    const given = await Promise.allSettled([
      say(shop, 'd1', air),
      say(shop, 'd2', mix, broken),
      say(shop, 'd3', mix),
      say(shop, 'd4', weigh(1)),
    ]);
    expect(given.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled', 'fulfilled']);
    const types = (await shop.store.eventsAfter('crew', 0)).map(({ body }) => body.type);
    expect(types).toEqual(['AirRead', 'BatchOpened', 'PartsWeighed']);
  });

  test('that cannot be written do not take the others with them', async () => {
    const shop = openShop(async ({ answers }) => {
      if (answers.some(({ request }) => request === 'd2')) throw new Error('this one does not fit');
    });
    const given = await Promise.allSettled(['d1', 'd2', 'd3'].map((id) => say(shop, id, air)));
    expect(given.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    const requests = (await shop.store.eventsAfter('crew', 0)).map(({ request }) => request);
    expect(requests).toEqual(['d1', 'd3']);
    expect(shop.executor.canWrite()).toBe(true);
  });

  test('that meet a full disk are refused, nothing of them is remembered, and what comes after it lands', async () => {
    let full = true;
    const shop = openShop(async () => {
      if (full) throw new Error('disk full');
    });
    const given = await Promise.allSettled([say(shop, 'd1', air), say(shop, 'd2', air), say(shop, 'd3', mix)]);
    expect(given.map(({ status }) => status)).toEqual(['rejected', 'rejected', 'fulfilled']);
    // Without the air that could not be recorded, it is objected to; an objection needs no disk.
    expect(given[2]).toMatchObject({ value: 'air-needed' });
    expect(shop.executor.canWrite()).toBe(false);
    expect((await shop.executor.look()).places.size).toBe(0);
    full = false;
    expect(await say(shop, 'd4', air)).toBe('AirRead');
    expect(await shop.store.head('crew')).toMatchObject({ seq: 1 });
    expect(shop.executor.canWrite()).toBe(true);
  });

  test('whose record has moved on meanwhile are decided again behind it, and none is lost', async () => {
    let other: (() => Promise<string>) | undefined;
    const shop = openShop(async () => {
      const first = other;
      other = undefined;
      await first?.();
    });
    const beside = { executor: shop.writer() };
    await say(shop, 'd0', air);
    other = () => say(beside, 'theirs', mix);
    const given = await Promise.all(['d1', 'd2', 'd3'].map((id) => say(shop, id, mix)));
    expect(given).toEqual(['BatchOpened', 'BatchOpened', 'BatchOpened']);
    const events = await shop.store.eventsAfter('crew', 0);
    expect(events.map(({ request }) => request)).toEqual(['d0', 'theirs', 'd1', 'd2', 'd3']);
    expect(events.flatMap(({ body }) => (body.type === 'BatchOpened' ? body.batch : []))).toEqual([1, 2, 3, 4]);
    expect([...(await shop.executor.look()).batches.keys()]).toEqual([1, 2, 3, 4]);
  });

  test('of one delivery are one event and one answer', async () => {
    const shop = openShop();
    let worded = 0;
    const numbered: Answering = () => {
      worded += 1;
      return `answer ${worded}`;
    };
    const given = await Promise.all(['d1', 'd2', 'd1'].map((id) => say(shop, id, air, numbered)));
    expect(given).toEqual(['answer 1', 'answer 2', 'answer 1']);
    expect(await shop.store.eventsAfter('crew', 0)).toHaveLength(2);
    expect((await shop.store.answersTo('crew', ['d1'])).get('d1')).toBe('answer 1');
  });

  test('too many for one transaction land in the order in which they were said', async () => {
    const shop = openShop();
    await Promise.all(Array.from({ length: 200 }, (_, i) => say(shop, `d${i}`, air)));
    const requests = (await shop.store.eventsAfter('crew', 0)).map(({ request }) => request);
    expect(requests).toEqual(Array.from({ length: 200 }, (_, i) => `d${i}`));
    expect(shop.landed.length).toBeGreaterThan(1);
    expect(shop.landed.length).toBeLessThan(10);
  });

  test('a question asked behind them is answered with what they recorded', async () => {
    const shop = openShop();
    const [, , seen] = await Promise.all([say(shop, 'd1', air), say(shop, 'd2', mix), shop.executor.look()]);
    expect([...seen.batches.keys()]).toEqual([1]);
  });
});

test('what comes before the turn of the event loop is over lands with what was said first', async () => {
  const store = openSqliteStore(':memory:');
  stores.push(store);
  let over: () => void = () => undefined;
  const turnOver = () =>
    new Promise<void>((resolve) => {
      over = resolve;
    });
  const keeper = createShopKeeper(store, 'crew', demoCrew, demoShelf);
  let transactions = 0;
  const counted: Store = {
    ...store,
    commit: (change) => {
      transactions += 1;
      return store.commit(change);
    },
  };
  const shop = { executor: createExecutor({ store: counted, keeper, crew: 'crew', turnOver }) };
  const first = say(shop, 'd1', air);
  for (let i = 0; i < 10; i++) await Promise.resolve();
  const second = say(shop, 'd2', mix);
  over();
  expect(await Promise.all([first, second])).toEqual(['AirRead', 'BatchOpened']);
  expect(transactions).toBe(1);
});
