import { once } from 'node:events';
import { createServer } from 'node:net';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from '../bot/web/shop-page.ts';
import { hasChromium, launchChromium } from './chromium.ts';
import { card, type } from './phone.ts';
import { type HandsOn, tlsProxy } from './tls-proxy.ts';

const name = 'bell.example';
const code = 'ACDE-F349';

describe.skipIf(!hasChromium)('the page behind a proxy that has the certificate', () => {
  let browser: Browser;
  let shop: ShopPage | undefined;
  let proxy: Awaited<ReturnType<typeof tlsProxy>> | undefined;
  beforeAll(async () => {
    browser = await launchChromium({ namesHere: [name] });
  });
  afterAll(() => browser.close());
  afterEach(async () => {
    for (const context of browser.contexts()) await context.close();
    proxy?.stop();
    await shop?.stop();
  });

  test.each<HandsOn>(['the host as called', 'its own, and the called one beside it', 'its own, and nothing beside it'])(
    'a phone joins by the public name, says a line and hears of the next, where the proxy hands on %s',
    async (how) => {
      // The public address names a port, and that is the proxy's: it must be known before the page opens.
      const port = await freePort();
      const address = `https://${name}:${port}`;
      shop = await openShop({ joinCode: code, publicUrls: [address] });
      proxy = await tlsProxy(name, shop.address, how, port);
      const context = await browser.newContext({
        ignoreHTTPSErrors: true,
        viewport: { width: 390, height: 844 },
        hasTouch: true,
      });
      const page = await context.newPage();
      await page.goto(address);
      await page.getByLabel('Join code').fill(code);
      await page.getByRole('button', { name: 'Kari', exact: true }).tap();
      await page.locator('.state[data-state=on]').waitFor({ state: 'attached' });
      expect(page.url()).toBe(`${address}/`);
      await type(page, 'air 24C 48%');
      await card(page, 'Air, room').waitFor();
      // By the stream, not by an answer.
      await shop.say('Ola', 'mix 2.4kg');
      await page.locator('.others', { hasText: 'Batch 1' }).waitFor();
      const [cookie] = await context.cookies();
      expect(cookie).toMatchObject({ name: 'batchbell', secure: true, httpOnly: true, sameSite: 'Lax' });
    },
  );

  test('where nobody named the public address, it is as strict as ever', async () => {
    const port = await freePort();
    shop = await openShop({ joinCode: code });
    proxy = await tlsProxy(name, shop.address, 'the host as called', port);
    const page = await (await browser.newContext({ ignoreHTTPSErrors: true })).newPage();
    expect((await page.goto(`https://${name}:${port}/`))?.status()).toBe(421);
  });
});

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const at = server.address();
  server.close();
  await once(server, 'close');
  return typeof at === 'object' && at !== null ? at.port : 0;
}
