import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { card, openPhone } from './phone.ts';

describe.skipIf(!hasChromium)('a page that moves under the thumb', () => {
  let browser: Browser;
  let shop: ShopPage;
  beforeAll(async () => {
    browser = await launchChromium();
  }, 60_000);
  afterAll(() => browser.close());
  beforeEach(async () => {
    shop = await openShop();
    for (const line of ['mix 2.4kg 24C 48%', 'weigh 1 1201g 1198g']) await shop.say('Kari', line);
    await shop.wait(103);
    for (const line of ['filter 1', 'coat new impeller-7 flow']) await shop.say('Kari', line);
    await shop.wait(12);
  });
  afterEach(async () => {
    for (const context of browser.contexts()) await context.close();
    await shop.stop();
  });

  /** The tile of the part, open; the page's clock stands, and only the test moves it. */
  async function openTile() {
    const page = await openPhone(browser, shop, 'Kari');
    await page.clock.install();
    await page.reload();
    await page.locator('.state[data-state=on]').waitFor({ state: 'attached' });
    const tile = page.locator('.strip [data-item="part/impeller-7"]');
    await tile.locator('summary').first().tap();
    const button = (name: string) => tile.getByRole('button', { name, exact: true });
    // A jump that is too short for the page to hold its connection for lost.
    await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 500);
    await button('Dry').tap();
    await button('Into the oven').waitFor();
    return { page, button };
  }
  const cures = () =>
    shop
      .conversation()
      .newest(50, 'Kari')
      .filter(({ answer }) => answer.card.title.includes('in cure'));

  test('asks 0.7 s after the button there had turned into another', async () => {
    const { page, button } = await openTile();
    await page.clock.runFor(700);
    await button('Into the oven').tap();
    await card(page, 'Not clear').waitFor();
    await expect(card(page, 'Not clear').textContent()).resolves.toContain('until a moment ago "Dry" stood there');
    expect(cures()).toEqual([]);
  }, 60_000);

  test('says it at once when there was time to read it', async () => {
    const { page, button } = await openTile();
    await page.clock.runFor(1_600);
    await button('Into the oven').tap();
    await card(page, 'in cure').waitFor();
    expect(cures()).toHaveLength(1);
  }, 60_000);
});
