// Papers and exports that the bot wrote, fetched from the page: by whoever is signed in, under the link they were given.

import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { paperTray } from '../../../bot/records/paper-tray.ts';
import { paperLink } from '../../../bot/web/paper-links.ts';
import { pageSecret } from '../../../bot/web/session.ts';
import { openShop, type ShopPage, shopCrew } from './shop-page.ts';
import { visitor } from './visitor.ts';

let folder: string;
let shop: ShopPage;
let kari: ReturnType<typeof visitor>;
let stranger: ReturnType<typeof visitor>;
let exportLink: string;
let travellerLink: string;

const linkIn = (html: string | undefined) =>
  (/href="(\/papers\/[^"]+)"/.exec(html ?? '')?.[1] ?? 'no link').replaceAll('&amp;', '&');
const signed = (paper: string, crew = shopCrew.name) => paperLink(pageSecret(folder), crew, paper);

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'papers-'));
  shop = await openShop({ folder });
  kari = visitor(shop.address);
  stranger = visitor(shop.address);
  await kari.enter('Kari');
  await kari.say('Kari', 'air 24C 48%');
  await kari.say('Kari', 'part impeller-7 cast-iron 12mm 0.8m2 max 120C');
  exportLink = linkIn((await kari.say('Kari', 'export today csv')).body.html);
  travellerLink = linkIn((await kari.say('Kari', 'traveller impeller-7')).body.html);
});
afterAll(async () => {
  await shop.stop();
  rmSync(folder, { recursive: true, force: true });
});

describe('a paper that was written', () => {
  test('is fetched by its link as what it is, under its own name', async () => {
    const pdf = await kari.request(travellerLink);
    expect([pdf.status, pdf.headers.get('content-type')]).toEqual([200, 'application/pdf']);
    expect(pdf.headers.get('content-disposition')).toBe("attachment; filename*=UTF-8''traveller-impeller-7.pdf");
    expect(pdf.headers.get('x-content-type-options')).toBe('nosniff');
    expect((await pdf.text()).startsWith('%PDF')).toBe(true);
    const csv = await kari.request(exportLink);
    expect([csv.status, csv.headers.get('content-type')]).toEqual([200, 'text/csv; charset=utf-8']);
    expect((await csv.text()).split('\n').length).toBeGreaterThan(2);
  });

  test('stands in the conversation without where the machine keeps it', async () => {
    const html = await (await kari.request('/')).text();
    expect(html).toContain('traveller-impeller-7.pdf');
    expect(html).not.toContain(folder);
  });

  test('is a copy of the record: it stays on the machine, and the page says no more than its name', async () => {
    const ola = visitor(shop.address);
    await ola.enter('Ola');
    const { html } = (await ola.say('Ola', 'backup friday.sqlite')).body;
    expect(html).toContain('Copied: friday.sqlite');
    expect(html).toContain('It lies on the machine');
    expect(html).not.toContain(folder);
    expect(html).not.toContain('/papers/');
    expect((await ola.request(signed('copies/friday.sqlite'))).status).toBe(404);
  });

  test('is there after a restart under the same link', async () => {
    await shop.goDown();
    await shop.comeBack({ anew: true });
    expect((await kari.request(travellerLink)).status).toBe(200);
  });
});

describe('a maker’s paper', () => {
  test('is opened as what it is, by a link of its card, and no other file of its folder has one', async () => {
    const { html } = (await kari.say('Kari', 'papers demo-clear 2')).body;
    const link = linkIn(html);
    expect(link).toContain('/papers/makers-papers/demo-clear-sds-a.txt?key=');
    expect(html).not.toContain('download=');
    const opened = await kari.request(link);
    expect([opened.status, opened.headers.get('content-type')]).toEqual([200, 'text/plain; charset=utf-8']);
    expect(opened.headers.get('content-disposition')).toBe("inline; filename*=UTF-8''demo-clear-sds-a.txt");
    expect(opened.headers.get('x-content-type-options')).toBe('nosniff');
    expect(await opened.text()).toContain('INVENTED FOR PRACTICE');
    expect((await stranger.request(link)).status).toBe(403);
    for (const other of ['demo-clear-sds-b.txt', 'demo-clear.json', '..%2Fpage-secret']) {
      expect((await kari.request(signed(`makers-papers/${other}`))).status, other).toBe(404);
    }
  });
});

describe('nobody gets a paper', () => {
  test('who is not signed in, nor the wall board', async () => {
    expect((await stranger.request(travellerLink)).status).toBe(403);
    await stranger.post('/join', { token: await stranger.token('/join'), board: 'yes' });
    expect((await stranger.request('/board')).status).toBe(200);
    expect((await stranger.request(travellerLink)).status).toBe(403);
  });

  test('with a key that is missing, guessed, or of another paper', async () => {
    const bare = travellerLink.split('?')[0] ?? '';
    const othersKey = exportLink.split('?')[1] ?? '';
    for (const path of [bare, `${bare}?key=`, `${bare}?key=${'a'.repeat(43)}`, `${bare}?${othersKey}`]) {
      expect((await kari.request(path)).status).toBe(404);
    }
  });

  test('with the link of another crew over the same folder', async () => {
    expect((await kari.request(signed('travellers/traveller-impeller-7.pdf'))).status).toBe(200);
    const others = signed('travellers/traveller-impeller-7.pdf', 'Another crew');
    expect((await kari.request(others)).status).toBe(404);
  });

  test('by a path that leads out of the tray, be it signed', async () => {
    writeFileSync(join(folder, 'traveller.pdf'), 'not for anybody');
    writeFileSync(join(folder, 'travellers', '.hidden'), 'not for anybody');
    symlinkSync(join(folder, 'traveller.pdf'), join(folder, 'travellers', 'lent.pdf'));
    const paths = [
      ...['travellers/../page-secret', '../page-secret', 'travellers/../../etc/passwd', '/page-secret'],
      ...[
        'copies/page-secret',
        'travellers/..%2Fpage-secret',
        'travellers\\..\\page-secret',
        'travellers/',
        'travellers',
      ],
      ...['travellers/.hidden', 'travellers/a/b', 'travellers/lent.pdf', 'crews/other/travellers/a.pdf', ''],
    ];
    for (const path of paths) {
      expect(paperTray(folder).read(path), path).toBeUndefined();
      expect((await kari.request(signed(path))).status, path).toBe(404);
    }
    for (const path of ['/papers/travellers/..%2fpage-secret', '/papers/..%2f..%2fetc/passwd', '/papers/%00/%00']) {
      expect((await kari.request(path)).status, path).toBe(404);
    }
  });
});

describe('crews that share a folder', () => {
  test('have each their own shelves', () => {
    const [one, two] = [paperTray(folder, 'bay-1'), paperTray(folder, 'bay-2')];
    one.put('travellers', 'traveller-valve-1.pdf', 'of bay 1');
    expect(two.read('travellers/traveller-valve-1.pdf')).toBeUndefined();
    two.put('travellers', 'traveller-valve-1.pdf', 'of bay 2');
    expect(Buffer.from(one.read('travellers/traveller-valve-1.pdf') ?? []).toString()).toBe('of bay 1');
  });
});
