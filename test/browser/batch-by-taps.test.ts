import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { card, fillIn, openPhone, tap, type } from './phone.ts';

describe.skipIf(!hasChromium)('a shift on phones', () => {
  let browser: Browser;
  let shop: ShopPage;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());
  beforeEach(async () => {
    shop = await openShop();
  });
  afterEach(async () => {
    for (const context of browser.contexts()) await context.close();
    await shop.stop();
  });

  test('a whole batch, from the air to the release, by taps alone', async () => {
    const page = await openPhone(browser, shop, 'Kari');
    const quick = page.locator('.quick');
    await fillIn(quick, 'Air read', { 'Air, °C': '24', 'Humidity, %': '48' });
    await card(page, 'Air, room').waitFor();
    await fillIn(quick, 'New batch', { 'How much in all, kg': '2.4' });
    await card(page, 'Batch 1: Demo Clear').waitFor();
    await fillIn(card(page, 'Batch 1: Demo Clear'), 'Weighed', { 'Part A': '1201', 'Part B': '1198' });
    await card(page, 'A and B together').waitFor();

    await shop.wait(103);
    await tap(page, 'stirring done', 'Filtered, 1 µm glass fibre, second vessel');
    await card(page, 'Batch 1: filtered').waitFor();
    await fillIn(card(page, 'Batch 1: filtered'), 'Coated', { Part: 'impeller-7', Method: 'flow' });
    // Nobody booked it in.
    await tap(page, 'Not clear', 'New part impeller-7: coat it');
    await card(page, 'impeller-7: coated').waitFor();

    await shop.wait(11);
    await tap(page, 'flash-off, least time over', 'Dry');
    await card(page, 'impeller-7: dry').waitFor();
    await tap(page, 'impeller-7: dry', 'Into the oven');
    await card(page, 'impeller-7: in cure').waitFor();
    await fillIn(card(page, 'impeller-7: in cure'), 'Part reads', { 'Part, °C': '91' });
    await card(page, 'temperature read').waitFor();

    await shop.wait(61);
    await fillIn(card(page, 'cure time over by the clock, not proved'), 'Part reads', { 'Part, °C': '91' });
    await tap(page, 'temperature read', 'Out');
    await card(page, 'impeller-7: out').waitFor();
    await tap(page, 'impeller-7: out', 'Release');
    await card(page, 'impeller-7: released').waitFor();

    const objections = shop
      .conversation()
      .newest(100, 'Kari')
      .filter(({ answer }) => answer.kind === 'objection');
    expect(objections).toEqual([]);
  });

  test('a bell rings by itself, sounds for whom it is meant, and is folded for others', async () => {
    const [kari, ola] = [await openPhone(browser, shop, 'Kari'), await openPhone(browser, shop, 'Ola')];
    for (const page of [kari, ola]) {
      await page.evaluate(countStrikes);
      await page.locator('.strip-next').tap();
      await page.locator('.bell[data-state=on]').waitFor();
    }
    await type(kari, 'air 24C 48%');
    await type(kari, 'mix 2.4kg');
    await card(kari, 'Batch 1').waitFor();
    await type(kari, 'weigh 1 1201g 1198g');
    await card(kari, 'A and B together').waitFor();
    await shop.wait(103);
    const ring = kari.locator('.post[data-ring="batch/1/stir-done"]');
    await ring.waitFor();
    await kari.locator('html[data-struck]').waitFor();
    await ola.locator('.others', { hasText: 'for Kari' }).filter({ hasText: 'stirring done' }).waitFor();
    expect(await ola.locator('html[data-struck]').count()).toBe(0);
  });

  test('two people at once: each sees what the other has recorded, and either may go on', async () => {
    const [kari, ola] = [await openPhone(browser, shop, 'Kari'), await openPhone(browser, shop, 'Ola')];
    await Promise.all([type(kari, 'air 24C 48%'), type(ola, 'surface 22C')]);
    await Promise.all([
      kari.locator('.others', { hasText: 'Ola' }).waitFor(),
      ola.locator('.others', { hasText: 'Kari' }).waitFor(),
    ]);
    await type(kari, 'mix 2.4kg');
    // Ola opens the batch in what runs, and weighs it.
    const tile = ola.locator('.strip [data-item="batch/1"]');
    await tile.locator('summary').first().tap();
    await fillIn(tile, 'Weighed', { 'Part A': '1201', 'Part B': '1198' });
    await card(ola, 'A and B together').waitFor();
    await kari.locator('.others', { hasText: 'A and B together' }).waitFor();
    // What Kari asks is her own.
    await type(kari, 'help mix');
    await card(kari, 'mix, mixed').waitFor();
    await type(ola, 'now');
    await card(ola, 'Now').waitFor();
    expect(await ola.getByText('mix, mixed').count()).toBe(0);
  });

  test('a wet thumb that taps twice says it once', async () => {
    const page = await openPhone(browser, shop, 'Kari');
    await type(page, 'air 24C 48%');
    await type(page, 'mix 2.4kg');
    await card(page, 'Batch 1').waitFor();
    await type(page, 'weigh 1 1201g 1198g');
    await card(page, 'A and B together').waitFor();
    const before = shop.conversation().latest();
    // The card has been read: what is pressed as soon as it has come was aimed at something else.
    await page.locator('html:not(.just-moved)').waitFor({ state: 'attached' });
    await card(page, 'A and B together').getByRole('button', { name: 'Stirrer off' }).dblclick();
    await card(page, 'stirrer off').waitFor();
    await type(page, 'now');
    await card(page, 'Now').waitFor();
    expect(shop.conversation().latest()).toBe(before + 2);
  });

  test('without script the forms still work', async () => {
    const page = await openPhone(browser, shop, 'Kari', { javaScriptEnabled: false });
    await type(page, 'air 24C 48%');
    await card(page, 'Air, room').waitFor();
    await fillIn(page.locator('.quick'), 'New batch', { 'How much in all, kg': '2.4' });
    await card(page, 'Batch 1: Demo Clear').waitFor();
    await fillIn(card(page, 'Batch 1: Demo Clear'), 'Weighed', { 'Part A': '1201', 'Part B': '1198' });
    await card(page, 'A and B together').waitFor();
  });
});

/** Every tone that the page starts leaves its count where the test can see it. */
const countStrikes = `(() => {
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (...when) {
    const { dataset } = document.documentElement;
    dataset.struck = String(Number(dataset.struck ?? 0) + 1);
    start.apply(this, when);
  };
})()`;
