import { request as httpRequest } from 'node:http';
import { afterEach, describe, expect, test } from 'vitest';
import { readFlags } from '../../../bot/config/config.ts';
import { isFailed } from '../../../core/failed.ts';
import { openShop, type ShopPage } from './shop-page.ts';
import { visitor } from './visitor.ts';

let shop: ShopPage | undefined;
afterEach(() => shop?.stop());

const bell = 'https://bell.example';
const code = 'ACDE-F349';

describe('a page with public addresses', () => {
  test('is served by those names and its own, and by no other, whatever stands beside the host', async () => {
    shop = await openShop({ joinCode: code, publicUrls: [bell, 'http://bell.shop.example:4180'] });
    const under = (host: string, more = {}) => answerUnder(shop?.address ?? '', { host, ...more });
    expect((await under('bell.example')).status).toBe(303);
    expect((await under('BELL.example:443')).status).toBe(303);
    expect((await under('bell.shop.example:4180')).status).toBe(303);
    expect((await under('localhost:4180')).status).toBe(303);
    expect((await under('elsewhere.example')).status).toBe(421);
    expect((await under('bell.example:8080')).status).toBe(421);
    expect((await under('bell.example.elsewhere.example')).status).toBe(421);
    // A page elsewhere that points its name here can add what it likes.
    expect((await under('elsewhere.example', { 'x-forwarded-host': 'bell.example' })).status).toBe(421);
  });

  test('without any, a proxy’s word changes nothing', async () => {
    shop = await openShop();
    const said = { host: 'bell.example', 'x-forwarded-host': 'bell.example', 'x-forwarded-proto': 'https' };
    expect((await answerUnder(shop.address, said)).status).toBe(421);
    const own = await answerUnder(shop.address, { ...said, host: new URL(shop.address).host });
    expect(own.cookie).not.toMatch(/Secure/);
  });

  test('its cookie goes over TLS alone where it was called so, and not where it was not', async () => {
    shop = await openShop({ joinCode: code, publicUrls: [bell, 'http://bell.shop.example'] });
    const cookieUnder = async (host: string, more = {}) =>
      (await answerUnder(shop?.address ?? '', { host, ...more })).cookie;
    expect(await cookieUnder('bell.example')).toMatch(/; Secure/);
    expect(await cookieUnder('localhost', { 'x-forwarded-host': 'bell.example' })).toMatch(/; Secure/);
    expect(await cookieUnder('bell.shop.example')).not.toMatch(/Secure/);
    expect(await cookieUnder('localhost')).not.toMatch(/Secure/);
  });

  test('a post from its own page is taken, one from elsewhere is not', async () => {
    shop = await openShop({ publicUrls: [bell] });
    const kari = visitor(shop.address);
    await kari.enter('Kari');
    const form = { token: await kari.token(), form: 'f1', as: 'Kari', line: 'air 24C 48%' };
    const from = async (origin: string) => (await kari.post('/say', form, { origin })).status;
    expect(await from('http://bell.example')).toBe(403);
    expect(await from('https://bell.example:8443')).toBe(403);
    expect(await from('https://elsewhere.example')).toBe(403);
    expect(shop.conversation().latest()).toBe(0);
    expect(await from(bell)).toBe(303);
  });

  test('behind the proxy one who guesses the code holds up himself, not the crew', async () => {
    shop = await openShop({ joinCode: code, publicUrls: [bell] });
    const tries = async (from: string, typed: string) => {
      const who = visitor(shop?.address ?? '');
      const told = { 'x-forwarded-host': 'bell.example', 'x-forwarded-for': from };
      return (await who.post('/join', { token: await who.token('/join'), code: typed, as: 'Kari' }, told)).status;
    };
    // What the caller says of himself comes first in the list; the proxy's own word is the last.
    for (let i = 0; i < 5; i += 1) expect(await tries(`192.0.2.${i}, 203.0.113.66`, `AAAA-AAA${i}`)).toBe(403);
    expect(await tries('192.0.2.77, 203.0.113.66', code)).toBe(429);
    expect(await tries('203.0.113.9', code)).toBe(303);
  });
});

describe('the public address as it is set', () => {
  const urls = (args: readonly string[], environment = {}) => {
    const flags = readFlags(args, environment);
    return isFailed(flags) ? flags.failed : flags['public-url'];
  };

  test('again for more, or with commas; a flag stands before its variable', () => {
    expect(urls([])).toEqual([]);
    expect(urls(['--public-url', 'https://Bell.example:443/'])).toEqual([bell]);
    expect(urls(['--public-url', bell, '--public-url', 'http://10.0.0.5:8080'])).toEqual([
      bell,
      'http://10.0.0.5:8080',
    ]);
    expect(urls(['--public-url', `${bell}, https://two.example`])).toEqual([bell, 'https://two.example']);
    expect(urls([], { BATCHBELL_PUBLIC_URL: bell })).toEqual([bell]);
    expect(urls(['--public-url', 'https://two.example'], { BATCHBELL_PUBLIC_URL: bell })).toEqual([
      'https://two.example',
    ]);
    expect(urls([], { BATCHBELL_PUBLIC_URL: '' })).toEqual([]);
  });

  test.each([
    'bell.example',
    'https://bell.example/shop',
    'ftp://bell.example',
    'https://kari@bell.example',
    'https://',
  ])('%s is none: it says what was read and what to say', (typed) => {
    const wanted = `"${typed}" is not an address; say https://bell.example, without a path`;
    expect(urls(['--public-url', typed])).toBe(`--public-url: ${wanted}`);
    expect(urls([], { BATCHBELL_PUBLIC_URL: typed })).toBe(`BATCHBELL_PUBLIC_URL: ${wanted}`);
  });
});

/** `fetch` does not let its caller choose the host's name. */
function answerUnder(address: string, headers: Readonly<Record<string, string>>) {
  const { port } = new URL(address);
  return new Promise<{ status: number | undefined; cookie: string }>((done, failed) => {
    const asked = httpRequest({ host: '127.0.0.1', port, path: '/', headers }, (answer) => {
      answer.resume();
      done({ status: answer.statusCode, cookie: answer.headers['set-cookie']?.[0] ?? '' });
    });
    asked.on('error', failed);
    asked.end();
  });
}
