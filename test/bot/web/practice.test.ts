// Practice on the page: whoever practises sees their own shop, plainly marked; the wall and everybody else see the crew's.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from './shop-page.ts';
import { visitor } from './visitor.ts';

let shop: ShopPage;
let kari: ReturnType<typeof visitor>;
let ola: ReturnType<typeof visitor>;

beforeEach(async () => {
  shop = await openShop();
  [kari, ola] = [visitor(shop.address), visitor(shop.address)];
  await kari.enter('Kari');
  await ola.enter('Ola');
  await shop.say('Ola', 'mix 2.4kg 24C 48%');
  await kari.say('Kari', 'practice on');
});
afterEach(() => shop.stop());

const seen = async (who: ReturnType<typeof visitor>, path = '/') => (await who.request(path)).text();

describe('the page of somebody who practises', () => {
  test('shows their own shop, marked in words and in its look, and nobody else’s does', async () => {
    await kari.say('Kari', 'mix 1kg 24C 48%');
    await kari.say('Kari', 'part rail-1');
    for (const path of ['/', '/board']) {
      expect(await seen(kari, path)).toContain('<p class="notice practice" role="status">PRACTICE: not the shop.');
      expect(await seen(kari, path)).toContain('data-item="part/rail-1"');
      expect(await seen(ola, path)).not.toMatch(/PRACTICE|rail-1/);
    }
    expect((await shop.board(undefined)).items.map(({ id }) => id)).toEqual(['batch/1']);
  });

  test('takes what can be started from nothing for practice, and its tiles too', async () => {
    const place = { place: 'q0', label: 'Air' };
    const { body } = await kari.say('Kari', 'air 20C 50%', place);
    expect(body.html).toContain('PRACTICE');
    await kari.say('Kari', 'mix 1kg');
    const tap = /name="line" value="(practice: [^"]*)"/.exec(await seen(kari))?.[1] ?? '';
    expect(tap).toMatch(/^practice: /);
  });

  test('is the shop’s again once it is left', async () => {
    await kari.say('Kari', 'practice off');
    expect(await seen(kari)).not.toContain('PRACTICE: not the shop');
    expect((await kari.say('Kari', 'air 20C 50%')).body.html).not.toContain('PRACTICE');
  });

  test('keeps the buttons that call people real', async () => {
    const { body } = await kari.say('Kari', 'fire', { place: 'n0', label: 'Fire' });
    expect(body.html).toContain('This is real: people are called');
  });
});
