// The page in a tongue whose words are 40 % longer than English: on the smallest phone nothing hangs over the edge.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pseudoShift, threeTongues } from '../bot/language/pseudo-shift.ts';
import { openShop, type ShopPage, shopCrew } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { openPhone } from './phone.ts';

const cut = `[...document.querySelectorAll('button, summary')]
  .filter((element) => element.closest('details:not([open]) > :not(summary)') === null && element.scrollWidth > element.clientWidth + 1)
  .map((element) => element.textContent)`;

describe.skipIf(!hasChromium)('a third tongue on a small phone', () => {
  let browser: Browser;
  let shop: ShopPage;
  beforeAll(async () => {
    browser = await launchChromium();
    const people = shopCrew.people.map((person) => ({ ...person, role: 'lead', language: 'fi' }) as const);
    shop = await openShop({ crew: { ...shopCrew, language: 'fi', people }, tongues: threeTongues });
    for (const { line } of pseudoShift) {
      const [, minutes] = /^wait (\d+)m$/.exec(line) ?? [];
      if (minutes === undefined) await shop.say('Kari', line);
      else await shop.wait(Number(minutes));
    }
  });
  afterAll(async () => {
    await browser.close();
    await shop.stop();
  });

  test.each([320, 390])('at %i px nothing hangs over the edge', async (width) => {
    const page = await openPhone(browser, shop, 'Kari', { viewport: { width, height: 640 } });
    for (const path of ['/', '/board', '/join']) {
      if (path !== '/') await page.goto(`${shop.address}${path}`);
      await page.locator('h1').first().waitFor({ state: 'attached' });
      expect(await page.evaluate<number>('document.documentElement.scrollWidth'), path).toBeLessThanOrEqual(width);
      if (path === '/') await page.locator('.need summary').tap();
      // Nor is a word of a button cut.
      expect(await page.evaluate<readonly string[]>(cut), path).toEqual([]);
    }
  });
});
