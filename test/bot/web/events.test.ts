import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from './shop-page.ts';
import { type Heard, listen, visitor } from './visitor.ts';

let folder: string;
let shop: ShopPage;
let kari: ReturnType<typeof visitor>;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'page-'));
  shop = await openShop({ folder });
  kari = visitor(shop.address);
  await kari.enter('Kari');
});
afterEach(async () => {
  await shop.stop();
  rmSync(folder, { recursive: true });
});

const start = async () => {
  await shop.say('Kari', 'air 24C 48%');
  await shop.say('Kari', 'mix 2.4kg');
  await shop.say('Kari', 'weigh 1 1201g 1198g');
};
const posts = (heard: readonly Heard[]) => heard.filter(({ event }) => event === 'post');
const hasPost = (heard: readonly Heard[]) => posts(heard).length > 0;
const hasScene = (heard: readonly Heard[]) => heard.some(({ event }) => event === 'scene');
const since = (id: string) => kari.request('/events', { headers: { 'last-event-id': id } });

describe('what arrives by itself', () => {
  test('a bell rings on an open page', async () => {
    await start();
    const stream = await since(`${shop.conversation().id}-${shop.conversation().latest()}`);
    const heard = listen(stream, hasPost);
    await shop.wait(102);
    const [ring] = posts(await heard);
    expect(ring?.data).toContain('data-ring="batch/1/stir-done"');
    expect(ring?.data).toContain('stirring done');
  });

  test('a bell that rang while the phone was away is told once it is back, and only once', async () => {
    await start();
    const seen = `${shop.conversation().id}-${shop.conversation().latest()}`;
    await listen(await since(seen), hasScene);
    await shop.wait(102);
    const back = posts(await listen(await since(seen), hasPost));
    expect(back.map(({ data }) => /data-ring="([^"]+)"/.exec(data)?.[1])).toEqual(['batch/1/stir-done']);
    const last = back.at(-1)?.id ?? '';
    expect(posts(await listen(await since(last), hasScene))).toEqual([]);
  });

  test('and so it is after the program was started anew in between', async () => {
    await start();
    const seen = `${shop.conversation().id}-${shop.conversation().latest()}`;
    await shop.wait(102);
    await shop.goDown();
    await shop.comeBack({ anew: true });
    const back = posts(await listen(await since(seen), hasPost));
    expect(back.map(({ data }) => /data-ring="([^"]+)"/.exec(data)?.[1])).toEqual(['batch/1/stir-done']);
  });

  test('numbers of before a restart are not given again: what a power cut lost cannot hide what came later', async () => {
    await start();
    const before = shop.conversation().latest();
    await shop.goDown();
    await shop.comeBack({ anew: true });
    await shop.say('Kari', 'air 25C 48%');
    const [first] = shop.conversation().newest(1, 'Kari');
    expect(first?.n).toBeGreaterThan(before + 100);
  });

  test('a page that saw another conversation, or numbers still to come, is told to open anew', async () => {
    await start();
    const anew = async (id: string) => listen(await since(id), (heard) => heard.length > 0);
    expect((await anew('other-1'))[0]?.event).toBe('anew');
    expect((await anew(`${shop.conversation().id}-99999`))[0]?.event).toBe('anew');
  });

  test('silence is told as such, so that a lost connection is known', async () => {
    const stream = await since(`${shop.conversation().id}-0`);
    const heard = await listen(stream, (all) => all.some(({ event }) => event === 'beat'));
    expect(heard.at(-1)).toMatchObject({ event: 'beat', data: '08:00' });
  });

  test('who is in need is heard by whoever leads, and not by who said it', async () => {
    const ola = visitor(shop.address);
    await ola.enter('Ola');
    const id = `${shop.conversation().id}-0`;
    const [mine, leads] = await Promise.all([since(id), ola.request('/events', { headers: { 'last-event-id': id } })]);
    const heard = [listen(mine, hasPost), listen(leads, hasPost)];
    await shop.say('Kari', 'eyes');
    const [kari0, ola0] = (await Promise.all(heard)).map((all) => posts(all)[0]?.data);
    expect(ola0).toContain('data-ring="said-1" data-tone="stop"');
    expect(ola0).toContain('Kari: eyes');
    expect(kari0).not.toContain('data-ring');
  });

  test('the board’s stream carries the whole wall whenever it changes', async () => {
    const stream = await kari.request('/board/events');
    const heard = listen(stream, (all) => all.some(({ event, data }) => event === 'scene' && data.includes('Batch 1')));
    await start();
    expect((await heard).filter(({ event }) => event === 'scene').length).toBeGreaterThan(1);
  });
});

describe('whether a bell was told', () => {
  test('can be looked for by its key, also after a restart', async () => {
    await start();
    expect(await shop.conversation().wasTold('batch/1/stir-done')).toBe('no');
    await shop.wait(102);
    await shop.goDown();
    await shop.comeBack({ anew: true });
    expect(await shop.conversation().wasTold('batch/1/stir-done')).toBe('yes');
  });
});
