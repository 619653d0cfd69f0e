// The picture of a card in Slack: it follows its message into the thread, says its figures in words, and keeps nobody
// waiting.

import { afterEach, describe, expect, test } from 'vitest';
import { gate } from './fake/gate.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
let logged: string[];
afterEach(() => shop.close());

async function aDayWithABatch(): Promise<void> {
  logged = [];
  shop = await openWorkshop({ logged });
  await shop.types('air 24C 48%');
  await shop.types('mix 2.4kg 24C 48%');
}

describe('a card with a picture', () => {
  test('asked for in a batch’s thread, hangs it there, with the figures as its words', async () => {
    await aDayWithABatch();
    const thread = shop.batch().ts;
    await shop.mentions('day', thread);
    const [file, ...more] = shop.fake.files;
    expect(more).toEqual([]);
    expect([file?.channel, file?.thread, file?.name]).toEqual(['C1', thread, '2026-03-02.png']);
    expect(file?.bytes).toBeGreaterThan(1_000);
    expect(file?.alternative).toContain(file?.title);
    expect(file?.alternative.length).toBeLessThanOrEqual(1_000);
    expect(file?.alternative).toMatch(/: \d/);
  });

  test('asked for by one person in the channel, brings it to that person alone', async () => {
    await aDayWithABatch();
    await shop.types('day', 'UJO');
    expect(shop.fake.files.map(({ channel, thread }) => [channel, thread])).toEqual([['DUJO', undefined]]);
  });

  test('that rings by itself, hangs it under its own message', async () => {
    await aDayWithABatch();
    await shop.passes(9 * 60 + 5);
    await shop.slack.idle();
    const digest = shop.fake.files.at(-1);
    const above = shop.fake.messages.find(({ ts }) => ts === digest?.thread);
    expect(above?.channel).toBe(digest?.channel);
    expect(above?.text.split('\n')[0]).toContain(digest?.title);
  });
});

describe('a picture that does not arrive', () => {
  test.each(['files.getUploadURLExternal', 'files.completeUploadExternal'] as const)(
    'because %s is refused, takes no message with it and is logged once',
    async (method) => {
      await aDayWithABatch();
      shop.fake.fail(method, { is: 'refused', error: 'missing_scope' });
      await shop.types('day');
      expect(shop.fake.files).toEqual([]);
      expect(shop.fake.whispers.at(-1)?.text).toMatch(/2026-03-02|Monday|The day/);
      expect(logged.filter((line) => line.includes('file-not-uploaded'))).toHaveLength(1);
    },
  );

  test('because its bytes are not taken, is not shared half', async () => {
    await aDayWithABatch();
    shop.fake.setFilesDown(true);
    await shop.types('day');
    expect(shop.fake.files).toEqual([]);
    expect(shop.fake.calls.map(({ method }) => method)).not.toContain('files.completeUploadExternal');
    expect(logged.filter((line) => line.includes('file-not-uploaded'))).toHaveLength(1);
  });

  test('because Slack is slow to name a place for it, lets the next message go first', async () => {
    await aDayWithABatch();
    const { until, letGo } = gate();
    shop.fake.fail('files.getUploadURLExternal', { is: 'held', until });
    const both = Promise.all([shop.types('day'), shop.types('air 25C 50%')]);
    await expect
      .poll(() =>
        shop.fake
          .inChannel('C1')
          .map(({ text }) => text)
          .join(),
      )
      .toContain('25 °C');
    expect(shop.fake.files).toEqual([]);
    letGo();
    await both;
    const calls = shop.fake.calls.map(({ method }) => method);
    expect(shop.fake.files).toHaveLength(1);
    expect(calls.lastIndexOf('chat.postMessage')).toBeLessThan(calls.indexOf('files.completeUploadExternal'));
  });
});
