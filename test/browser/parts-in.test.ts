// Many parts from the page's own form: a file that is chosen stands there to be looked over, a list that is pasted where one line is
// typed goes there, and one tap books what the card shows. All of it is invented.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { card, openPhone, tap } from './phone.ts';

describe.skipIf(!hasChromium)('parts in', () => {
  let browser: Browser;
  let shop: ShopPage;
  beforeAll(async () => {
    browser = await launchChromium();
    shop = await openShop();
  });
  afterAll(async () => {
    await browser.close();
    await shop.stop();
  });

  test('a file that was chosen is shown, and one tap books it', async () => {
    const page = await openPhone(browser, shop, 'Kari');
    await page.locator('.parts-in summary').tap();
    const buffer = Buffer.from('Pieza;Serie;Área (m²)\nRiel 01;4411;0,2\nRiel 02;4412;0,2\n', 'latin1');
    await page.locator('#parts-file').setInputFiles({ name: 'piezas.csv', mimeType: 'text/csv', buffer });
    const list = page.locator('#parts-list');
    await expect.poll(() => list.inputValue()).toContain('Área');
    await page.getByRole('button', { name: 'Show what would be booked' }).tap();
    expect(await card(page, '2 parts to book in').textContent()).toContain('riel-02: serial 4412, 0.2 m²');
    await tap(page, '2 parts to book in', 'Book in 2 parts: riel-01, riel-02');
    await card(page, '2 parts: noted').waitFor();
    expect(await list.inputValue()).toBe('');
  });

  test('several lines that are pasted where one is typed stand in the form', async () => {
    const page = await openPhone(browser, shop, 'Kari');
    await page.evaluate(`{
      const clipboardData = new DataTransfer();
      clipboardData.setData('text/plain', 'rail-1\\nrail-2');
      document.querySelector('#line').dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
    }`);
    expect(await page.locator('#parts-list').inputValue()).toBe('rail-1\nrail-2');
    expect(await page.locator('.parts-in').getAttribute('open')).not.toBeNull();
  });
});
