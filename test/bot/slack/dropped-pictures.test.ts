// Pictures that are dropped: with words that could be recorded, and where no batch is.

import { afterEach, describe, expect, test } from 'vitest';
import { epochMs } from '../../../core/units.ts';
import { dropsPicture } from './fake/deliveries.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const ts = '1772438400.000100';
const image = (id = 'F1') => [{ id, name: 'film.jpg', mimetype: 'image/jpeg' }];
const direct = { channel: 'DUKARI', channel_type: 'im', thread_ts: undefined, ts };
const mention = { type: 'app_mention', subtype: undefined, channel_type: undefined, ts };
const types = async () => (await shop.store.eventsAfter('crew', 0)).map(({ body }) => body.type);
const told = () => shop.fake.messages.filter(({ channel }) => channel === 'DUKARI').map(({ text }) => text);
const lastInThread = () => shop.fake.inThread(shop.batch().ts).at(-1);

async function coated(): Promise<void> {
  shop = await openWorkshop({ at: '2026-03-02T08:00:00Z' });
  await shop.types('mix 2.4kg 24C 48%');
  await shop.types('weigh 1 1201g 1198g');
  await shop.passes(102);
  await shop.types('filter 1');
  await shop.types('coat new impeller-7 flow');
}

describe('readings beside a picture in a batch’s thread', () => {
  const readings = 'wet impeller-7 60 65 58um';
  const now = (): string => `${Math.floor(shop.clock.now() / 1000)}.000900`;

  test('are not recorded by it: the answer says so, and one tap records them as of then', async () => {
    await coated();
    await shop.deliver(dropsPicture({ thread_ts: shop.batch().ts, ts: now(), text: readings, files: image() }));
    const said = lastInThread();
    expect(said?.text).toContain(`Not recorded, only kept with the picture: ${readings}`);
    expect(await types()).not.toContain('FilmRead');
    const photographed = shop.clock.now();
    shop.clock.moveTo(epochMs(photographed + 10 * 60_000));
    if (said === undefined) return;
    await shop.taps(said, 'Record these words', 'UJO');
    const read = (await shop.store.eventsAfter('crew', 0)).at(-1);
    expect([read?.body.type, read?.by, read?.happenedAt]).toEqual([
      expect.stringContaining('Film'),
      'jo',
      Math.floor(photographed / 60_000) * 60_000,
    ]);
  });

  test('that mention us are said by themselves: nothing is offered twice', async () => {
    await coated();
    const both = { thread_ts: shop.batch().ts, ts: now(), text: `<@UBOT> ${readings}`, files: image() };
    await shop.deliver(dropsPicture({ ...both, ...mention, ts: both.ts }));
    await shop.deliver(dropsPicture(both));
    const recorded = await types();
    expect(recorded.filter((type) => type.includes('Film'))).toHaveLength(1);
    expect(recorded.filter((type) => type === 'PhotoFiled')).toHaveLength(1);
    expect(shop.fake.messages.some(({ text }) => text.includes('Not recorded'))).toBe(false);
  });

  test('that are no act are a caption and no more', async () => {
    await coated();
    await shop.deliver(
      dropsPicture({ thread_ts: shop.batch().ts, ts: now(), text: 'a run at the edge', files: image() }),
    );
    expect(lastInThread()?.text).not.toContain('Not recorded');
  });
});

describe('a picture outside any batch’s thread', () => {
  test('with a line, in a direct message, is filed with the batch of which the line tells', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.deliver(dropsPicture({ ...direct, text: 'weigh 1 1201g 1198g', files: image() }));
    expect(await types()).toEqual(expect.arrayContaining(['PartsWeighed', 'PhotoFiled']));
    expect(shop.batch().text).toContain('picture filed');
  });

  test('with a line that tells of no batch, says the line, and where pictures belong', async () => {
    shop = await openWorkshop();
    await shop.deliver(dropsPicture({ ...direct, thread_ts: '1.1', text: 'now', files: image() }));
    expect(told()).toEqual([expect.stringContaining('Now'), expect.stringContaining('in the thread of its batch')]);
  });

  test('without a word is answered once, however many there are', async () => {
    shop = await openWorkshop();
    await shop.deliver(dropsPicture({ ...direct, text: '', files: [...image('F1'), ...image('F2')] }));
    expect(told()).toEqual([expect.stringContaining('Picture not filed')]);
  });

  test('with a bare mention in the channel is answered to whoever dropped it alone', async () => {
    shop = await openWorkshop();
    await shop.deliver(dropsPicture({ ...mention, thread_ts: undefined, text: '<@UBOT>', files: image() }));
    expect(shop.fake.whispers.map(({ to, text }) => [to, text.split('\n')[0]])).toEqual([
      ['UKARI', 'Picture not filed'],
    ]);
    expect(shop.fake.messages).toEqual([]);
  });
});
