import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { card, openPhone, type } from './phone.ts';

describe.skipIf(!hasChromium)('the bell of the page, in a browser that gives no sound before a touch', () => {
  let browser: Browser;
  let shop: ShopPage;
  beforeAll(async () => {
    browser = await launchChromium({ soundNeedsTouch: true });
  });
  afterAll(() => browser.close());
  beforeEach(async () => {
    shop = await openShop();
  });
  afterEach(async () => {
    for (const context of browser.contexts()) await context.close();
    await shop.stop();
  });

  test.each([
    ['a finger', { hasTouch: true, isMobile: true }],
    ['a mouse', { hasTouch: false, isMobile: false }],
  ] as const)('given a bell that waits, the first press of %s on it turns it on, the second off', async (_, how) => {
    const page = await opened(browser, shop, how);
    const bell = page.locator('.bell');
    await page.locator('.bell[data-state=waits]', { hasText: 'Turn on' }).waitFor();
    const press = () => (how.hasTouch ? bell.tap() : bell.click());
    await press();
    await page.locator('.bell[data-state=on]', { hasText: 'Bell on' }).waitFor();
    await press();
    await page.locator('.bell[data-state=off]', { hasText: 'Bell off' }).waitFor();
    await press();
    await page.locator('.bell[data-state=on]').waitFor();
  });

  test('given a bell that waits, a finger anywhere wakes it', async () => {
    const page = await opened(browser, shop, { hasTouch: true, isMobile: true });
    await page.locator('.bell[data-state=waits]').waitFor();
    await page.locator('.strip-next').tap();
    await page.locator('.bell[data-state=on]').waitFor();
  });

  test('turned off in one tab, it is off in the other tab of this phone', async () => {
    const page = await opened(browser, shop, { hasTouch: true, isMobile: true });
    const other = await page.context().newPage();
    await other.goto(shop.address);
    await other.locator('.strip-next').tap();
    await other.locator('.bell[data-state=on]').waitFor();
    await page.locator('.bell').tap();
    await page.locator('.bell[data-state=on]').waitFor();
    await page.locator('.bell').tap();
    await other.locator('.bell[data-state=off]').waitFor();
  });

  test('where making a notification throws, as on Android, the bell’s post still stands and the page goes on', async () => {
    const page = await openPhone(browser, shop, 'Kari');
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    await page.evaluate(phoneThatRefuses);
    await type(page, 'air 24C 48%');
    await type(page, 'mix 2.4kg');
    await card(page, 'Batch 1').waitFor();
    await type(page, 'weigh 1 1201g 1198g');
    await card(page, 'A and B together').waitFor();
    await page.evaluate(putAway);
    await shop.wait(103);
    await page.locator('.post[data-ring="batch/1/stir-done"]').waitFor();
    await page.locator('html[data-notified]').waitFor();
    await type(page, 'now');
    await card(page, 'Now').waitFor();
    expect(faults).toEqual([]);
  });
});

/** Joined already: the page is opened, and nobody has touched it yet. */
async function opened(browser: Browser, shop: ShopPage, how: { hasTouch: boolean; isMobile: boolean }): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, ...how });
  const page = await context.newPage();
  await page.goto(`${shop.address}/join`);
  await page.getByRole('button', { name: 'Kari', exact: true }).click();
  await page.locator('.state[data-state=on]').waitFor({ state: 'attached' });
  // Come to by a click it might sound from the start.
  await page.goto('about:blank');
  await page.goto(shop.address);
  await page.locator('.state[data-state=on]').waitFor({ state: 'attached' });
  return page;
}

/** Has the name, was permitted, and throws when it is used. */
const phoneThatRefuses = `(() => {
  window.Notification = class {
    static permission = 'granted';
    constructor() {
      document.documentElement.dataset.notified = 'tried';
      throw new TypeError('Illegal constructor');
    }
  };
})()`;

/** In the pocket. */
const putAway = `Object.defineProperty(document, 'hidden', { get: () => true })`;
