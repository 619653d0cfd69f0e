import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { card, openPhone, type } from './phone.ts';

describe.skipIf(!hasChromium)('the shop’s bad wireless', () => {
  let browser: Browser;
  let shop: ShopPage;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());
  beforeEach(async () => {
    shop = await openShop();
    await shop.say('Kari', 'air 24C 48%');
    await shop.say('Kari', 'mix 2.4kg');
    await shop.say('Kari', 'weigh 1 1201g 1198g');
  });
  afterEach(async () => {
    for (const context of browser.contexts()) await context.close();
    await shop.stop();
  });

  test('lost: it says since when and that nothing was sent; back: it sends, in order, and tells what rang', async () => {
    const page = await openPhone(browser, shop, 'Kari');
    await shop.goDown();
    await page.getByText('No connection since 08:00. What you type is kept here').waitFor();
    await type(page, 'stop 1');
    await type(page, 'stir 1');
    await page.locator('.unsent').nth(1).waitFor();
    expect(await page.locator('.unsent-state').allTextContents()).toEqual([
      expect.stringContaining('Not sent yet'),
      expect.stringContaining('Not sent yet'),
    ]);
    const before = shop.conversation().latest();
    await shop.say('Ola', 'air 25C 47%');
    await shop.wait(103);
    await shop.comeBack();
    await card(page, 'stirrer on').waitFor();
    await page.locator('.post[data-ring="batch/1/stir-done"]').first().waitFor();
    await page.locator('.others', { hasText: 'Ola' }).waitFor();
    await page.locator('.lost').waitFor({ state: 'hidden' });
    expect(await page.locator('.unsent').count()).toBe(0);
    const said = shop
      .conversation()
      .newest(100, 'Kari')
      .flatMap(({ n, said: line }) => (n > before ? (line ?? []) : []));
    expect(said).toEqual(['air 25C 47%', 'stop 1', 'stir 1']);
  });

  test('what was not sent outlives the page, and can be taken back', async () => {
    const page = await openPhone(browser, shop, 'Kari');
    await page.route('**/say', (route) => route.abort());
    await type(page, 'stop 1');
    await page.getByText('Not sent yet').waitFor();
    await page.reload();
    await page.getByText('Not sent yet').waitFor();
    const before = shop.conversation().latest();
    await page.getByRole('button', { name: 'Take back' }).tap();
    await page.locator('.unsent').waitFor({ state: 'detached' });
    await page.unroute('**/say');
    await type(page, 'now');
    await card(page, 'Now').waitFor();
    expect(shop.conversation().latest()).toBe(before + 1);
  });

  test('sent, but the answer was lost: sent again, it is one event', async () => {
    const page = await openPhone(browser, shop, 'Kari');
    const before = shop.conversation().latest();
    let lost = 0;
    await page.route('**/say', async (route) => {
      if (lost > 0) return route.continue();
      lost += 1;
      await route.fetch();
      return route.abort();
    });
    await type(page, 'stop 1');
    await card(page, 'stirrer off').waitFor();
    await page.locator('.unsent').waitFor({ state: 'detached' });
    expect(lost).toBe(1);
    expect(shop.conversation().latest()).toBe(before + 1);
    expect(await page.locator('.posts .card h2', { hasText: 'stirrer off' }).count()).toBe(1);
  });

  test('what another person typed on this phone is not sent under my name', async () => {
    const page = await openPhone(browser, shop, 'Kari');
    await page.route('**/say', (route) => route.abort());
    await type(page, 'stop 1');
    await page.getByText('Not sent yet').waitFor();
    await page.unroute('**/say');
    await page.goto(`${shop.address}/join`);
    await page.getByRole('button', { name: 'Ola', exact: true }).tap();
    await page.locator('.state[data-state=on]').waitFor({ state: 'attached' });
    await page.getByText('typed by Kari').waitFor();
    const before = shop.conversation().latest();
    await type(page, 'now');
    await card(page, 'Now').waitFor();
    expect(shop.conversation().latest()).toBe(before + 1);
  });

  test('the board never passes old figures off as new', async () => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    const wall = await context.newPage();
    await wall.goto(`${shop.address}/board`);
    await wall.locator('[data-item="batch/1"]', { hasText: 'Pot life' }).waitFor();
    await shop.wait(50);
    await wall.locator('.wall-clock', { hasText: '08:50' }).waitFor();
    await wall.locator('.wall-rings li').first().getByText('Batch 1: stirring done').waitFor();
    await shop.goDown();
    await wall.getByText('No connection since 08:50. All below is as it stood then').waitFor();
    await shop.wait(10);
    await shop.comeBack();
    await wall.locator('.lost').waitFor({ state: 'hidden' });
    await wall.locator('.wall-clock', { hasText: '09:00' }).waitFor();
  });
});
