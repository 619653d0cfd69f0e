import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { openPhone } from './phone.ts';

const parts = 40;
/** And the pot that they came from. */
const running = parts + 1;

describe.skipIf(!hasChromium)('forty parts from one pot', () => {
  let browser: Browser;
  let shop: ShopPage;
  beforeAll(async () => {
    browser = await launchChromium();
    shop = await openShop();
    await shop.say('Kari', 'air 24C 48%');
    await shop.say('Kari', 'mix 2.4kg');
    await shop.say('Kari', 'weigh 1 1201g 1198g');
    await shop.wait(103);
    await shop.say('Kari', 'filter 1');
    for (let n = parts; n > 0; n -= 1) await shop.say('Kari', `coat new plate-${n} brush`);
  });
  afterAll(async () => {
    await browser.close();
    await shop.stop();
  });

  test.each([
    [1280, 720],
    [1920, 1080],
    [1024, 768],
  ])(
    'on a wall of %i x %i none is cut, the first are the most urgent, and the rest are counted',
    async (width, height) => {
      const wall = await wallOf(browser, shop, { width, height });
      const { shown, count } = await seen(wall, '.wall-items');
      expect(shown.length).toBeGreaterThanOrEqual(8);
      expect(count).toBe(`and ${running - shown.length} more`);
      expect(shown.slice(0, 3)).toEqual(['plate-1', 'plate-2', 'plate-3']);
      expect(await cut(wall, height)).toEqual([]);
      const rings = await seen(wall, '.wall-rings');
      expect(rings.count).toMatch(/^and \d+ more$/);
      expect(await wall.evaluate<number>('document.documentElement.scrollHeight')).toBe(height);
    },
  );

  test('a wall that is turned, or loses the connection, counts anew', async () => {
    const wall = await wallOf(browser, shop, { width: 1280, height: 720 });
    const before = await seen(wall, '.wall-items');
    await wall.setViewportSize({ width: 1280, height: 500 });
    await wall.locator('.wall-items .more', { hasNotText: before.count }).waitFor();
    const after = await seen(wall, '.wall-items');
    expect(after.shown.length).toBeLessThan(before.shown.length);
    expect(after.count).toBe(`and ${running - after.shown.length} more`);
    expect(await cut(wall, 500)).toEqual([]);
  });

  test('without script the board scrolls, and nothing is left out of it', async () => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 720 }, javaScriptEnabled: false });
    const wall = await context.newPage();
    await wall.goto(`${shop.address}/board`);
    expect(await wall.locator('.wall-items .item').count()).toBe(running);
    expect(await wall.locator('.wall-items .more').isHidden()).toBe(true);
    await wall.locator('.wall-items .item').last().scrollIntoViewIfNeeded();
    expect((await wall.locator('.wall-items .item').last().boundingBox())?.y).toBeLessThan(720);
  });

  test('a phone’s board is scrolled, and lists all of them', async () => {
    const wall = await wallOf(browser, shop, { width: 390, height: 844 });
    expect((await seen(wall, '.wall-items')).shown.length).toBe(running);
    expect(await wall.evaluate<number>('document.documentElement.scrollWidth')).toBe(390);
  });

  test.each([390, 320])(
    'on a phone of %i px the strip shows the most urgent, counts the rest, and a tap opens them',
    async (width) => {
      const page = await openPhone(browser, shop, 'Kari', { viewport: { width, height: 844 } });
      const tiles = page.locator('.strip .tile:visible');
      expect(await tiles.locator('summary > b').allTextContents()).toEqual(['plate-1', 'plate-2', 'plate-3']);
      expect(await hangsOver(page, '.strip .tile, .strip .tile *, .rest', width)).toEqual([]);
      await page.locator('.rest summary', { hasText: `and ${running - 3} more` }).tap();
      await page.locator('.strip [data-item="batch/1"]').waitFor();
      const names = await tiles.locator('summary > b').allTextContents();
      expect(names).toEqual([...Array.from({ length: parts }, (_, i) => `plate-${i + 1}`), 'Batch 1']);
      expect(await hangsOver(page, '.strip .tile, .strip .tile *', width)).toEqual([]);
      // What changes elsewhere does not shut it under the thumb.
      await page.locator('.strip').evaluate((strip) => strip.scrollTo(0, 200));
      await shop.say('Ola', `surface ${20 + width / 100}C`);
      await page.locator('.others', { hasText: 'Ola' }).last().waitFor();
      await page.locator('.strip [data-item="batch/1"]').waitFor();
      expect(await page.locator('.strip').evaluate((strip) => strip.scrollTop)).toBe(200);
      await page.locator('.strip [data-item="part/plate-12"] summary').first().tap();
      await page.locator('.strip [data-item="part/plate-12"] [data-tap="dry"]').waitFor();
    },
  );

  test.each([390, 320])(
    'at %i px a form of the thumb’s row stands whole on the screen, and the call for help beside it',
    async (width) => {
      const page = await openPhone(browser, shop, 'Kari', { viewport: { width, height: 844 } });
      await page.locator('.quick summary', { hasText: 'Air read…' }).tap();
      await page.getByLabel('Humidity, %').waitFor();
      expect(await hangsOver(page, '.quick .ask[open], .quick .ask[open] *', width)).toEqual([]);
      expect(await page.locator('.quick summary', { hasText: 'Emergency' }).isVisible()).toBe(true);
    },
  );
});

async function wallOf(browser: Browser, shop: ShopPage, viewport: { width: number; height: number }): Promise<Page> {
  const wall = await (await browser.newContext({ viewport })).newPage();
  await wall.goto(`${shop.address}/board`);
  await wall.locator('html.folds').waitFor({ state: 'attached' });
  return wall;
}

async function seen(wall: Page, section: string) {
  const shown = wall.locator(`${section} li:not([hidden])`);
  return {
    shown: await shown.locator('.item-head b').allTextContents(),
    count: (await wall.locator(`${section} .more`).textContent()) ?? '',
  };
}

/** What is shown and hangs below the screen, even by a part of it. */
function cut(wall: Page, height: number): Promise<readonly string[]> {
  return wall.evaluate<readonly string[]>(
    `[...document.querySelectorAll('.wall li:not([hidden]), .wall .more:not([hidden])')]
      .filter((element) => element.getBoundingClientRect().bottom > ${height})
      .map((element) => element.textContent)`,
  );
}

function hangsOver(page: Page, what: string, width: number): Promise<readonly string[]> {
  return page.evaluate<readonly string[]>(
    `[...document.querySelectorAll(${JSON.stringify(what)})]
      .filter((element) => element.checkVisibility() && !element.classList.contains('unseen'))
      .filter((element) => {
        const { left, right } = element.getBoundingClientRect();
        return left < -0.5 || right > ${width} + 0.5;
      })
      .map((element) => element.outerHTML.slice(0, 80))`,
  );
}
