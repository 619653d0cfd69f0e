// Messages that are changed in place: as things stand when Slack's turn comes, the one that was touched first, what failed
// once more by itself; and within the limits that Slack keeps.

import { afterEach, describe, expect, test } from 'vitest';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';
import { quickPace } from './fake/quick-pace.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const started = async (): Promise<void> => {
  shop = await openWorkshop();
  await shop.types('mix 2.4kg 24C 48%');
  await shop.types('weigh 1 1201g 1198g');
};
/** Of the messages in the channel, apart from what stands in their threads. */
const standing = () => changes().filter(({ body }) => shop.fake.inChannel('C1').some(({ ts }) => ts === body.ts));
const changes = () => shop.fake.calls.filter(({ method }) => method === 'chat.update');

describe('a change that', () => {
  test('failed once is tried again by itself, and shows how things stand by then', async () => {
    await started();
    shop.fake.fail('chat.update', { is: 'broken', status: 500 });
    await shop.types('stop 1');
    await expect.poll(() => shop.batch().text).toContain('stirrer off');
  });

  test('Slack will not have is given up and logged; the next one is sent all the same', async () => {
    const logged: string[] = [];
    shop = await openWorkshop({ logged });
    await shop.types('mix 2.4kg 24C 48%');
    shop.fake.fail('chat.update', { is: 'refused', error: 'is_archived' });
    await shop.types('weigh 1 1201g 1198g');
    const tried = changes().length;
    await shop.slack.refresh();
    expect(changes()).toHaveLength(tried);
    expect(logged.join('')).toMatch(/message-not-changed.*|is_archived/);
    await shop.types('stop 1');
    expect(shop.batch().text).toContain('stirrer off');
  });

  test('takes the taps of a bell away is tried again too, with what became of them', async () => {
    await started();
    await shop.passes(102);
    const bell = shop.fake.inThread(shop.batch().ts).find(({ text }) => text.includes('stirring done'));
    if (bell === undefined) throw new Error('no bell rang');
    shop.fake.fail('chat.update', { is: 'broken', status: 500 });
    await shop.taps(bell, 'Filtered, 1 µm glass fibre, second vessel', 'UJO');
    await expect.poll(() => bell.text).toContain('jo: Filtered, 1 µm glass fibre, second vessel, 09:42');
    expect(bell.blocks.some(({ type }) => type === 'actions')).toBe(false);
  });

  test('would change nothing is not sent: of three batches an act changes the one that it is about', async () => {
    await started();
    await shop.types('mix 1kg');
    await shop.types('mix 1.2kg');
    const before = standing().length;
    await shop.types('stop 1');
    expect(standing().slice(before)).toHaveLength(1);
  });

  test('somebody waits for comes before all others', async () => {
    await started();
    await shop.types('mix 1kg');
    await shop.types('weigh 2 500g 500g');
    await shop.types('mix 1kg');
    await shop.types('weigh 3 500g 500g');
    const [last] = shop.fake.inChannel('C1').slice(-1);
    const before = standing().length;
    // The air moves the clocks of all three; the last is the one that is spoken of.
    const [wired] = shop.wired.values();
    await wired?.host.handle({ text: 'air 17C 60%', as: 'kari', in: '1', id: undefined });
    await shop.types('stop 3');
    expect(standing().slice(before)).toHaveLength(3);
    expect(standing()[before]?.body.ts).toBe(last?.ts);
  });

  test('waits for Slack’s limit shows what was said meanwhile', async () => {
    const pace = quickPace();
    const meanwhile: (() => Promise<unknown>)[] = [];
    shop = await openWorkshop({
      pace: {
        ...pace,
        wait: async (ms) => {
          if (ms > 10_000) await meanwhile.shift()?.();
          await pace.wait(ms);
        },
      },
    });
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    const [wired] = shop.wired.values();
    meanwhile.push(async () => wired?.host.handle({ text: 'thick 1', as: 'jo', in: '1', id: undefined }));
    await wired?.host.handle({ text: 'stop 1', as: 'kari', in: '2', id: undefined });
    const before = standing().length;
    shop.fake.fail('chat.update', { is: 'limited', seconds: 20 });
    await shop.slack.refresh();
    expect(standing()[before]?.body.text).not.toContain('jo: thick');
    expect(standing()[before + 1]?.body.text).toContain('jo: thick');
  });
});

describe('Slack’s own limits', () => {
  test('one message a second in a channel is kept: none is turned away', async () => {
    shop = await openWorkshop({ rated: true });
    await Promise.all(Array.from({ length: 4 }, (_, i) => shop.types(`air ${20 + i}C 48%`)));
    const posts = shop.fake.calls.filter(({ method }) => method === 'chat.postMessage');
    expect(posts).toHaveLength(4);
    expect(shop.fake.inChannel('C1')).toHaveLength(4);
  });

  test('fifty changes a minute, crossed by one: the fifty-first waits as long as Slack says, and arrives', async () => {
    const pace = quickPace();
    const postbox = openSqlitePostbox(':memory:');
    shop = await openWorkshop({ rated: true, pace, postbox });
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    // One change each; the clock of the limits stands still but for the messages' own second.
    const said = (i: number) => (i % 2 === 0 ? 'stop 1' : 'stir 1');
    const [wired] = shop.wired.values();
    for (let i = 0; changes().length < 50; i += 1) {
      await wired?.host.handle({ text: said(i), as: 'kari', in: String(i), id: undefined });
      await shop.slack.refresh();
    }
    const before = pace.waits.length;
    await wired?.host.handle({ text: 'thick 1', as: 'kari', in: 'last', id: undefined });
    await shop.slack.refresh();
    expect(changes()).toHaveLength(52);
    expect(pace.waits.slice(before).some((ms) => ms > 40_000)).toBe(true);
    expect(shop.batch().text).toContain('kari: thick');
    await shop.close();
    postbox.close();
  });
});

describe('an answer that Slack would take only much later', () => {
  test('is whispered to who waits for it, and the crew’s message is brought up to date', async () => {
    await started();
    shop.fake.fail('chat.postMessage', { is: 'limited', seconds: 7_200 });
    await shop.mentions('stop', shop.batch().ts);
    expect(shop.fake.whispers.at(-1)?.text).toContain('stirrer off');
    expect(shop.batch().text).toContain('stirrer off');
  });

  test('about the room is whispered as well', async () => {
    shop = await openWorkshop();
    shop.fake.fail('chat.postMessage', { is: 'limited', seconds: 7_200 });
    await shop.types('air 24C 48%');
    expect(shop.fake.whispers.at(-1)?.text).toContain('Air: 24 °C');
  });
});
