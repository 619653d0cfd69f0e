import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { card, openPhone, type } from './phone.ts';

/** WCAG 2.2 asks for 24 px, and 44 for its strictest level; a wet glove wants 48. Common practice, no source. */
const leastTarget = 48;

describe.skipIf(!hasChromium)('for wet thumbs, in sunlight, on small screens', () => {
  let browser: Browser;
  let shop: ShopPage;
  beforeAll(async () => {
    browser = await launchChromium();
    shop = await openShop({ notice: 'All of it is invented.' });
    await shop.say('Kari', 'air 24C 48%');
    await shop.say('Kari', 'mix 2.4kg');
    await shop.say('Ola', 'surface 22C');
    await shop.say('Kari', 'weigh 1 1201g 1198g');
    await shop.say('Kari', 'filter 1');
    await shop.say('Kari', 'part heat-exchanger-plate-12 serial 4411 stainless-steel 12mm 0.8m2 max 120C');
    await shop.wait(103);
  });
  afterAll(async () => {
    await browser.close();
    await shop.stop();
  });

  test.each(['light', 'dark'] as const)('axe finds nothing serious on the phone’s page, %s', async (colorScheme) => {
    const page = await openPhone(browser, shop, 'Kari', { colorScheme });
    await type(page, 'help');
    await card(page, 'What you can say').waitFor();
    await page.locator('.strip summary').first().tap();
    await page.locator('.quick summary').first().tap();
    expect(await seriousFaults(page)).toEqual([]);
    expect(await enhancedContrastFaults(page, '.card dd')).toEqual([]);
    expect(await enhancedContrastFaults(page, '.tile b')).toEqual([]);
  });

  test.each(['light', 'dark'] as const)('axe finds nothing serious on the board, %s', async (colorScheme) => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, colorScheme });
    const page = await context.newPage();
    await page.goto(`${shop.address}/board`);
    await page.locator('[data-item="batch/1"]').waitFor();
    expect(await seriousFaults(page)).toEqual([]);
    expect(await enhancedContrastFaults(page, '.wall b')).toEqual([]);
  });

  test('axe finds nothing serious at the door', async () => {
    const page = await (await browser.newContext()).newPage();
    await page.goto(`${shop.address}/join`);
    expect(await seriousFaults(page)).toEqual([]);
  });

  test.each([320, 390])('at %i px nothing hangs over the edge, and every target is for a glove', async (width) => {
    const page = await openPhone(browser, shop, 'Kari', { viewport: { width, height: 640 } });
    await page.locator('.strip [data-item="batch/1"] summary').first().tap();
    for (const path of ['/', '/board', '/join']) {
      if (path !== '/') await page.goto(`${shop.address}${path}`);
      await page.locator('h1').first().waitFor({ state: 'attached' });
      expect(await page.evaluate<number>('document.documentElement.scrollWidth'), path).toBeLessThanOrEqual(width);
      const { small, seen } = await page.evaluate<{ small: readonly string[]; seen: number }>(targets);
      expect(small, path).toEqual([]);
      // On the board there is but the way back.
      expect(seen, path).toBeGreaterThan(path === '/' ? 10 : 0);
    }
  });

  test('the line to type is at the bottom, under the thumb, and the newest card above it', async () => {
    const page = await openPhone(browser, shop, 'Kari', { viewport: { width: 320, height: 568 } });
    await type(page, 'now');
    await card(page, 'Now').waitFor();
    const input = await page.getByLabel('Type what happened').boundingBox();
    expect((input?.y ?? 0) + (input?.height ?? 0)).toBeGreaterThan(568 - 80);
    const last = await page.locator('.posts > li').last().boundingBox();
    expect((last?.y ?? 0) + (last?.height ?? 0)).toBeLessThanOrEqual((input?.y ?? 0) + 1);
  });
});

interface AxeFinding {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: readonly { readonly target: readonly string[]; readonly failureSummary?: string }[];
}
interface AxeOutcome {
  readonly violations: readonly AxeFinding[];
  readonly passes: readonly AxeFinding[];
}

/** In the page's own world, past its policy, which would let no such script in. */
async function axeOn(page: Page, ask: string): Promise<AxeOutcome> {
  await page.evaluate(axe.source);
  return page.evaluate<AxeOutcome>(ask);
}

async function seriousFaults(page: Page): Promise<readonly string[]> {
  const { violations, passes } = await axeOn(page, 'axe.run()');
  expect(passes.length).toBeGreaterThan(10);
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')}: ${failureSummary}`),
    );
}

/** Of figures: WCAG level AAA, 7 to 1, or 4.5 where they are large. */
async function enhancedContrastFaults(page: Page, selector: string): Promise<readonly string[]> {
  const only = `{ runOnly: ['color-contrast-enhanced'], rules: { 'color-contrast-enhanced': { enabled: true } } }`;
  const { violations, passes } = await axeOn(page, `axe.run('${selector}', ${only})`);
  expect(passes.flatMap(({ nodes }) => nodes).length).toBeGreaterThan(0);
  return violations.flatMap(({ nodes }) => nodes.map(({ target }) => target.join(' ')));
}

/** Every target that is shown, and those too small for the glove. */
const targets = `(() => {
  const all = [...document.querySelectorAll('button, summary, select, a[href], input:not([type=hidden])')];
  const shown = all.filter((target) => target.checkVisibility() && !target.classList.contains('unseen'));
  const small = shown.flatMap((target) => {
    const { width, height } = target.getBoundingClientRect();
    const enough = width >= ${leastTarget} && height >= ${leastTarget};
    return enough ? [] : [target.outerHTML.slice(0, 80) + ': ' + width + ' x ' + height];
  });
  return { small, seen: shown.length };
})()`;
