import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from './shop-page.ts';
import { visitor } from './visitor.ts';

let shop: ShopPage;
let kari: ReturnType<typeof visitor>;

beforeAll(async () => {
  shop = await openShop();
  kari = visitor(shop.address);
  await kari.enter('Kari');
  await kari.say('Kari', 'air 24C 48%');
  await kari.say('Kari', 'mix 2.4kg');
});
afterAll(() => shop.stop());

const pages = ['/', '/board', '/join'];

describe('every page', () => {
  test.each(pages)('%s holds nothing inline and nothing from elsewhere', async (path) => {
    const answer = await kari.request(path);
    const html = await answer.text();
    expect(html).not.toMatch(/<script(?![^>]*\bsrc=)|\sstyle=|<style|\son\w+=/);
    const addresses = [...html.matchAll(/(?:src|href|action)="([^"]*)"/g)].map(([, address]) => address);
    expect(addresses.length).toBeGreaterThan(1);
    expect(addresses.filter((address) => !address?.startsWith('/'))).toEqual([]);
    const policy = answer.headers.get('content-security-policy');
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain('unsafe');
    expect(answer.headers.get('x-frame-options')).toBe('DENY');
    expect(answer.headers.get('cache-control')).toBe('no-store');
  });

  test('never says that something is safe', async () => {
    for (const path of pages)
      expect(await (await kari.request(path)).text()).not.toMatch(/\bsafe\b|cleared|good to go/i);
  });

  test('its files are compressed and kept for good under an address of this version', async () => {
    const html = await (await kari.request('/')).text();
    const address = /href="([^"]+page\.css)"/.exec(html)?.[1] ?? '';
    const css = await kari.request(address);
    expect(css.headers.get('cache-control')).toContain('immutable');
    expect(css.headers.get('content-encoding')).toBe('gzip');
    expect(await css.text()).toContain(':root');
    expect((await kari.request('/assets/v/../../package.json')).status).toBe(404);
    expect((await kari.request('/assets/v/page.ts')).status).toBe(404);
  });

  test('with all its files it weighs less than 60 kB as sent', async () => {
    const html = await (await kari.request('/')).text();
    const files = [...html.matchAll(/(?:src|href)="(\/assets[^"]+)"/g)].flatMap(([, address]) => address ?? []);
    const scripts = ['connection.js', 'outbox.js', 'bell.js'].map((name) => (files[0] ?? '').replace(/[^/]+$/, name));
    const sizes = await Promise.all([...files, ...scripts].map((address) => sentSize(shop.address + address)));
    const total = sizes.reduce((sum, size) => sum + size, Buffer.byteLength(html));
    expect(files.length).toBeGreaterThan(4);
    expect(total).toBeGreaterThan(5_000);
    expect(total).toBeLessThan(60_000);
  });
});

/** As on the wire: `fetch` would unpack it. */
async function sentSize(address: string): Promise<number> {
  const { get } = await import('node:http');
  return new Promise((done) => {
    get(address, { headers: { 'accept-encoding': 'gzip' } }, (answer) => {
      let size = 0;
      answer.on('data', (chunk: Buffer) => {
        size += chunk.length;
      });
      answer.on('end', () => done(size));
    });
  });
}
