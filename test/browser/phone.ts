// A phone of the crew: a small touch screen with the page open as one person.

import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import type { ShopPage } from '../bot/web/shop-page.ts';

const usual: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

export async function openPhone(browser: Browser, shop: ShopPage, name: string, own: BrowserContextOptions = {}) {
  const context = await browser.newContext({ ...usual, ...own });
  const page = await context.newPage();
  await page.goto(shop.address);
  await page.getByRole('button', { name, exact: true }).tap();
  if (own.javaScriptEnabled !== false) await page.locator('.state[data-state=on]').waitFor({ state: 'attached' });
  return page;
}

/** The newest card whose title holds these words. */
export function card(page: Page, title: string): Locator {
  return page
    .locator('.posts .card')
    .filter({ has: page.locator('h2', { hasText: title }) })
    .last();
}

export async function tap(page: Page, title: string, label: string): Promise<void> {
  // Right after a tap the page takes the next one for the same: a hand is slower than this.
  // And so it does with what lands where another button stood until a moment ago.
  await page.locator('html:not(.just-tapped):not(.just-moved)').waitFor({ state: 'attached' });
  await card(page, title).getByRole('button', { name: label, exact: true }).tap();
}

/** Opens a tap's small form where it is folded, fills it in by the labels of its fields, and sends it. */
export async function fillIn(place: Locator, label: string, values: Readonly<Record<string, string>>): Promise<void> {
  const folded = place.locator('summary', { hasText: `${label}…` });
  if ((await folded.count()) > 0) await folded.tap();
  const form = place.locator('form').filter({ has: place.page().getByRole('button', { name: label, exact: true }) });
  for (const [field, value] of Object.entries(values)) {
    const input = form.getByLabel(field);
    if ((await input.evaluate((element) => element.tagName)) === 'SELECT') await input.selectOption(value);
    else await input.fill(value);
  }
  await form.getByRole('button', { name: label, exact: true }).tap();
}

export async function type(page: Page, line: string): Promise<void> {
  await page.getByLabel('Type what happened').fill(line);
  await page.getByRole('button', { name: 'Say', exact: true }).tap();
}
