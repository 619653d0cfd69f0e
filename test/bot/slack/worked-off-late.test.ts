// A process that ends between Slack's delivery and its work: the next one does it, as of when it was said, and says no
// answer twice.

import { afterEach, describe, expect, test } from 'vitest';
import type { Store } from '../../../core/ports.ts';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import type { FakeSlack } from './fake/fake-slack.ts';
import { startFakeSlack } from './fake/fake-slack.ts';
import { quickPace } from './fake/quick-pace.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

const shops: Workshop[] = [];
const ended: (() => unknown)[] = [];
afterEach(async () => {
  for (const shop of shops.splice(0)) await shop.close();
  for (const end of ended.splice(0)) await end();
});

async function kept() {
  const at = { now: Date.parse('2026-03-02T08:00:00Z') };
  const fake = await startFakeSlack(() => at.now);
  const store = openSqliteStore(':memory:');
  const postbox = openSqlitePostbox(':memory:');
  ended.push(
    () => fake.close(),
    () => store.close(),
    () => postbox.close(),
  );
  return { fake, store, postbox };
}
type Kept = Awaited<ReturnType<typeof kept>>;

async function open(options: Parameters<typeof openWorkshop>[0]): Promise<Workshop> {
  const shop = await openWorkshop(options);
  shops.push(shop);
  return shop;
}

/** Takes deliveries in, and ends before anything came of them. */
const dying = ({ fake, store, postbox }: Kept, from = () => true) =>
  open({
    ...{ fake, at: '2026-03-02T08:00:00Z' },
    store: { ...store, commit: (change) => (from() ? Promise.reject(new Error('ended')) : store.commit(change)) },
    postbox: { ...postbox, finish: (id) => (from() ? undefined : postbox.finish(id)) },
  });

const happened = async (store: Store, type: string): Promise<string | undefined> => {
  const event = (await store.eventsAfter('crew', 0)).find(({ body }) => body.type === type);
  return event && new Date(event.happenedAt).toISOString().slice(11, 16);
};

describe('what was taken in at 8:00 and worked off at 8:20', () => {
  test('counts from 8:00 where it was a command: its pot life runs from there', async () => {
    const { fake, store, postbox } = await kept();
    let ends = false;
    const before = await dying({ fake, store, postbox }, () => ends);
    await before.types('mix 2.4kg 24C 48%');
    ends = true;
    await before.types('weigh 1 1201g 1198g');
    expect(await happened(store, 'PartsWeighed')).toBeUndefined();
    const after = await open({ fake, store, postbox, at: '2026-03-02T08:20:00Z' });
    await after.slack.idle();
    expect(await happened(store, 'PartsWeighed')).toBe('08:00');
    expect(after.batch().text).toContain('Pot life ends: 12:33');
  });

  test('counts from 8:00 where it was a form', async () => {
    const { fake, store, postbox } = await kept();
    let ends = false;
    const before = await dying({ fake, store, postbox }, () => ends);
    await before.types('mix 2.4kg 24C 48%');
    await before.taps(before.batch(), 'Weighed…');
    ends = true;
    await before.fills({ 'part-a': '1201', 'part-b': '1198' });
    const after = await open({ fake, store, postbox, at: '2026-03-02T08:20:00Z' });
    await after.slack.idle();
    expect(await happened(store, 'PartsWeighed')).toBe('08:00');
  });
});

describe('the message of a batch', () => {
  test('that was posted just before the end is found by the next life, and goes on from there', async () => {
    const { fake, store, postbox } = await kept();
    const ends = () => {
      throw new Error('ended');
    };
    const before = await open({ fake, store, postbox: { ...postbox, keep: ends, finish: () => undefined } });
    await before.types('mix 2.4kg 24C 48%');
    expect(fake.inChannel('C1')).toHaveLength(1);
    const after = await open({ fake, store, postbox, at: '2026-03-02T08:01:00Z' });
    await after.types('weigh 1 1201g 1198g');
    expect(fake.inChannel('C1')).toHaveLength(1);
    expect(after.batch().text).toContain('mixing time runs');
  });
});

describe('an answer', () => {
  const weighed = (fake: FakeSlack, thread: string) =>
    fake.inThread(thread).filter(({ text }) => text.startsWith('Batch 1: A and B together'));

  test('that was posted just before the end is not posted again', async () => {
    const { fake, store, postbox } = await kept();
    let ends = false;
    const before = await open({
      fake,
      store,
      postbox: { ...postbox, finish: (id) => (ends ? undefined : postbox.finish(id)) },
    });
    await before.types('mix 2.4kg 24C 48%');
    ends = true;
    await before.mentions('weigh 1201g 1198g', before.batch().ts);
    const thread = before.batch().ts;
    expect(weighed(fake, thread)).toHaveLength(1);
    const after = await open({ fake, store, postbox, at: '2026-03-02T08:01:00Z' });
    await after.slack.idle();
    expect(weighed(fake, thread)).toHaveLength(1);
    expect(postbox.unfinished()).toEqual([]);
  });

  test('is done with once it is there, however long Slack limits what it moved', async () => {
    const { fake, store, postbox } = await kept();
    let over: () => void = () => undefined;
    const isOver = new Promise<void>((resolve) => {
      over = resolve;
    });
    const quick = quickPace();
    // Slack's limit of 30 s stands until it is said to be over; all other waits cost nothing.
    const pace = {
      ...quick,
      wait: async (ms: number) => {
        if (ms > 20_000) await isOver;
        await quick.wait(ms);
      },
    };
    const shop = await open({ fake, store, postbox, pace });
    await shop.types('mix 2.4kg 24C 48%');
    const thread = shop.batch().ts;
    fake.fail('chat.update', { is: 'limited', seconds: 30 });
    const said = shop.mentions('weigh 1201g 1198g', thread);
    await expect.poll(() => weighed(fake, thread).length).toBe(1);
    await expect.poll(() => postbox.unfinished()).toEqual([]);
    expect(shop.batch().text).toContain('to be weighed');
    over();
    await said;
    expect(shop.batch().text).toContain('mixing time runs');
  });

  test('that broke is not done with: the next start gives it', async () => {
    const { fake, store, postbox } = await kept();
    let breaks = true;
    const broken = {
      ...postbox,
      standingOf: (...asked: Parameters<typeof postbox.standingOf>) => {
        if (breaks) throw new Error('broken');
        return postbox.standingOf(...asked);
      },
    };
    const before = await open({ fake, store, postbox: broken });
    await before.types('mix 2.4kg 24C 48%');
    expect(fake.inChannel('C1')).toEqual([]);
    expect(postbox.unfinished()).toHaveLength(1);
    breaks = false;
    const after = await open({ fake, store, postbox, at: '2026-03-02T08:01:00Z' });
    await after.slack.idle();
    expect(after.batch().text).toContain('to be weighed');
    expect(postbox.unfinished()).toEqual([]);
  });
});
