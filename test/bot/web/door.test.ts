import { request as httpRequest } from 'node:http';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { openShop, type ShopPage, shopCrew } from './shop-page.ts';
import { visitor } from './visitor.ts';

let shop: ShopPage | undefined;
afterEach(() => {
  vi.useRealTimers();
  return shop?.stop();
});

const code = 'ACDE-F349';

describe('who is at the page', () => {
  test('on this machine a name is chosen, and the page opens as that person', async () => {
    shop = await openShop();
    const kari = visitor(shop.address);
    expect((await kari.request('/')).headers.get('location')).toBe('/join');
    expect((await kari.enter('Kari')).headers.get('location')).toBe('/');
    expect(await (await kari.request('/')).text()).toContain('name="as" value="Kari"');
  });

  test('a crew of one is not asked who it is', async () => {
    const only = { name: 'Solo', role: 'lead', language: 'en', units: 'metric' } as const;
    shop = await openShop({ crew: { ...shopCrew, people: [only] } });
    const page = await visitor(shop.address).request('/');
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('name="as" value="Solo"');
  });

  test('a name that the crew does not have opens nothing', async () => {
    shop = await openShop();
    const stranger = visitor(shop.address);
    expect((await stranger.enter('Mallory')).status).toBe(403);
    expect((await stranger.request('/')).headers.get('location')).toBe('/join');
  });

  test('a cookie that somebody wrote over is nobody', async () => {
    shop = await openShop();
    const kari = visitor(shop.address);
    await kari.enter('Kari');
    kari.useCookie(kari.cookie().replace('Kari', 'Ola'));
    expect((await kari.request('/')).headers.get('location')).toBe('/join');
  });

  test('the cookie is out of reach of scripts and of other sites’ posts', async () => {
    shop = await openShop();
    const set = (await visitor(shop.address).request('/join')).headers.getSetCookie()[0];
    expect(set).toMatch(/HttpOnly/);
    expect(set).toMatch(/SameSite=Lax/);
  });

  test('the wall board reads and says nothing', async () => {
    shop = await openShop({ joinCode: code });
    const wall = visitor(shop.address);
    expect((await wall.request('/board')).headers.get('location')).toBe('/join');
    await wall.post('/join', { token: await wall.token('/join'), code, board: 'yes' });
    expect((await wall.request('/board')).status).toBe(200);
    expect((await wall.request('/')).headers.get('location')).toBe('/board');
    const token = await wall.token('/join');
    expect((await wall.post('/say', { token, form: 'f', as: 'Kari', line: 'air 24C 48%' })).status).toBe(403);
    expect((await wall.request('/events')).status).toBe(403);
  });
});

describe('the join code of an open page', () => {
  test('lets in with the code, however a thumb writes it, and not without', async () => {
    shop = await openShop({ joinCode: code });
    const kari = visitor(shop.address);
    expect((await kari.enter('Kari')).status).toBe(403);
    expect((await kari.enter('Kari', 'ACDE-F34A')).status).toBe(403);
    expect((await kari.request('/events')).status).toBe(403);
    expect((await kari.enter('Kari', 'acde f349')).headers.get('location')).toBe('/');
    // Once joined, the name may be changed without it.
    expect((await kari.enter('Ola')).headers.get('location')).toBe('/');
  });

  test('Enter in the code’s field chooses nobody', async () => {
    shop = await openShop({ joinCode: code });
    const kari = visitor(shop.address);
    const answer = await kari.post('/join', { token: await kari.token('/join'), code });
    expect(answer.status).toBe(403);
    expect(await answer.text()).toContain('tap your name');
  });

  test('a guesser is held up after five tries', async () => {
    shop = await openShop({ joinCode: code });
    const guesser = visitor(shop.address);
    const tries: number[] = [];
    // Tried at once, however long the machine takes for it.
    vi.useFakeTimers({ toFake: ['performance'] });
    for (let i = 0; i < 6; i += 1) tries.push((await guesser.enter('Kari', `AAAA-AAA${i}`)).status);
    expect(tries).toEqual([403, 403, 403, 403, 403, 429]);
    // The right one must wait as well: who tries cannot tell which it was.
    expect((await guesser.enter('Kari', code)).status).toBe(429);
  });
});

describe('where a request comes from', () => {
  test('under another host’s name nothing is served', async () => {
    shop = await openShop();
    expect(await statusUnder(shop.address, 'elsewhere.example')).toBe(421);
    expect(await statusUnder(shop.address, 'localhost')).toBe(303);
  });

  test('a post without this session’s token, or from another site’s page, is refused', async () => {
    shop = await openShop();
    const kari = visitor(shop.address);
    await kari.enter('Kari');
    const form = { form: 'f1', as: 'Kari', line: 'air 24C 48%' };
    const other = visitor(shop.address);
    await other.enter('Kari');
    const token = await kari.token();
    expect((await kari.post('/say', { ...form, token: '' })).status).toBe(403);
    expect((await kari.post('/say', { ...form, token: await other.token() })).status).toBe(403);
    expect((await kari.post('/say', { ...form, token }, { origin: 'http://elsewhere.example' })).status).toBe(403);
    expect((await kari.post('/say', { ...form, token }, { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    expect(shop.conversation().latest()).toBe(0);
    expect((await kari.post('/say', { ...form, token })).status).toBe(303);
    expect(shop.conversation().latest()).toBe(1);
  });
});

/** `fetch` does not let its caller choose the host's name. */
function statusUnder(address: string, host: string): Promise<number | undefined> {
  const { port } = new URL(address);
  return new Promise((done, failed) => {
    const asked = httpRequest(
      { host: '127.0.0.1', port, path: '/', headers: { host: `${host}:${port}` } },
      (answer) => {
        answer.resume();
        done(answer.statusCode);
      },
    );
    asked.on('error', failed);
    asked.end();
  });
}
