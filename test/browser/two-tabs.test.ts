import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { card, openPhone, type } from './phone.ts';

describe.skipIf(!hasChromium)('one phone with the page open twice, away from the wireless', () => {
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

  const saidSince = (before: number) =>
    shop
      .conversation()
      .newest(100, 'Kari')
      .flatMap(({ n, said }) => (n > before ? (said ?? []) : []));

  // Browsers hold a lock only for pages of HTTPS and of this machine: on the crew's network there is none.
  test.each([
    ['with a lock between the tabs', true],
    ['over plain HTTP, without one', false],
  ])('typed in one tab, then in the other: back, both lines are sent once, in their order (%s)', async (_, locks) => {
    const { page, other } = await twoTabs(browser, shop, locks);
    const before = shop.conversation().latest();
    await page.context().setOffline(true);
    await type(page, 'stop 1');
    await type(other, 'stir 1');
    // Each shows what the other keeps, too.
    for (const tab of [page, other]) await tab.locator('.unsent').nth(1).waitFor();
    await page.context().setOffline(false);
    for (const tab of [page, other]) {
      await card(tab, 'stirrer on').waitFor();
      await tab.locator('.unsent').first().waitFor({ state: 'detached' });
    }
    expect(saidSince(before)).toEqual(['stop 1', 'stir 1']);
    for (const tab of [page, other]) {
      expect(await tab.locator('.posts .card h2', { hasText: 'stirrer off' }).count()).toBe(1);
    }
  });

  test('the tab that it was typed in is closed: the other sends it', async () => {
    const { page, other } = await twoTabs(browser, shop, true);
    const before = shop.conversation().latest();
    await page.context().setOffline(true);
    await type(page, 'stop 1');
    await other.locator('.unsent', { hasText: 'stop 1' }).waitFor();
    await type(other, 'stir 1');
    await page.close();
    await other.context().setOffline(false);
    await card(other, 'stirrer on').waitFor();
    expect(saidSince(before)).toEqual(['stop 1', 'stir 1']);
  });

  test('both are closed: the next page that opens sends what they kept', async () => {
    const { page, other } = await twoTabs(browser, shop, true);
    const context = page.context();
    const before = shop.conversation().latest();
    await context.setOffline(true);
    await type(page, 'stop 1');
    await type(other, 'stir 1');
    await other.locator('.unsent').nth(1).waitFor();
    await Promise.all([page.close(), other.close()]);
    await context.setOffline(false);
    const next = await tab(context, shop);
    await card(next, 'stirrer on').waitFor();
    expect(saidSince(before)).toEqual(['stop 1', 'stir 1']);
  });

  test('taken back in one tab, the other sends it no more', async () => {
    const { page, other } = await twoTabs(browser, shop, true);
    const before = shop.conversation().latest();
    await page.context().setOffline(true);
    await type(page, 'stop 1');
    await other.locator('.unsent', { hasText: 'stop 1' }).waitFor();
    await other.getByRole('button', { name: 'Take back' }).tap();
    await page.locator('.unsent').waitFor({ state: 'detached' });
    await page.context().setOffline(false);
    await type(page, 'now');
    await card(page, 'Now').waitFor();
    expect(saidSince(before)).toEqual(['now']);
  });

  test('what the page of an earlier edition kept as one is not lost', async () => {
    const { page, other } = await twoTabs(browser, shop, true);
    const before = shop.conversation().latest();
    await other.close();
    await page.evaluate(keptAsOne);
    await page.reload();
    await card(page, 'stirrer on').waitFor();
    expect(saidSince(before)).toEqual(['stop 1', 'stir 1']);
  });
});

async function tab(context: BrowserContext, shop: ShopPage): Promise<Page> {
  const page = await context.newPage();
  await page.goto(shop.address);
  await page.locator('.state[data-state=on]').waitFor({ state: 'attached' });
  return page;
}

async function twoTabs(browser: Browser, shop: ShopPage, locks: boolean) {
  const first = await openPhone(browser, shop, 'Kari');
  const context = first.context();
  if (!locks) await context.addInitScript(`Object.defineProperty(navigator, 'locks', { value: undefined })`);
  await first.reload();
  await first.locator('.state[data-state=on]').waitFor({ state: 'attached' });
  return { page: first, other: await tab(context, shop) };
}

const keptAsOne = `localStorage.setItem('batchbell-outbox', JSON.stringify(['stop 1', 'stir 1'].map((line, i) => ({
  as: 'Kari', fields: [['line', line]], shown: line, id: 'old' + i, typedAt: Date.now(), state: 'waits',
}))))`;
