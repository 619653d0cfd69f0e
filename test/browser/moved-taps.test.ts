import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { card, openPhone, tap } from './phone.ts';

describe.skipIf(!hasChromium)('a page that moves under the thumb', () => {
  let browser: Browser;
  let shop: ShopPage;
  beforeAll(async () => {
    browser = await launchChromium();
  });
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
  });

  test('says it at once when there was time to read it', async () => {
    const { page, button } = await openTile();
    await page.clock.runFor(1_600);
    await button('Into the oven').tap();
    await card(page, 'in cure').waitFor();
    expect(cures()).toHaveLength(1);
  });

  test('keeps a form that is being filled in as it was drawn, and asks before it lifts what came since', async () => {
    for (const line of ['dry impeller-7', 'cure impeller-7 oven 90C', 'temp impeller-7 91C'])
      await shop.say('Kari', line);
    await shop.wait(70);
    for (const line of ['temp impeller-7 91C', 'out impeller-7', 'film impeller-7 4 4 4um'])
      await shop.say('Kari', line);
    const page = await openPhone(browser, shop, 'Ola');
    await page.locator('.state[data-state=on]').waitFor({ state: 'attached' });
    const tile = page.locator('.strip [data-item="part/impeller-7"]');
    await tile.locator('summary').first().tap();
    await tile.getByText('Lift the hold…').tap();
    await tile.getByRole('textbox').first().fill('thin film accepted');
    await shop.say('Kari', 'adhesion impeller-7 0B');
    await page.locator('.post', { hasText: '0B' }).first().waitFor();
    await tile.locator('form', { hasText: 'Lift the hold' }).getByRole('button').tap();
    await card(page, 'Not clear').waitFor();
    await expect(card(page, 'Not clear').textContent()).resolves.toMatch(/On hold: .*0B/);
    await tap(page, 'Not clear', 'Lift the hold');
    await card(page, 'released').waitFor();
  });
});
