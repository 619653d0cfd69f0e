// The traveller as paper: read back from the PDF by another library.

import { join } from 'node:path';
import { afterEach, expect, it } from 'vitest';
import type { Card } from '../../../bot/cards/card.ts';
import { editionOfToday } from '../../../core/rule-editions.ts';
import { readPdf } from './read-pdf.ts';
import { givenTheMorning, type RecordsShop } from './records-shop.ts';

let shop: RecordsShop | undefined;
afterEach(() => shop?.close());

const written = ({ paper }: Card): string => join(shop?.folder ?? '', paper ?? 'no paper');

it('given a released part, then one page with steps, names, lots, readings, the rule by name, and the record’s hash', async () => {
  shop = await givenTheMorning();
  const { card } = await shop.say('12:00 traveller impeller-7');
  const { pages, text, images } = await readPdf(written(card));
  expect(pages).toBe(1);
  expect(images).toBe(2);
  for (const wanted of [
    'Traveller: impeller-7',
    'serial 4411, job 88, customer invented-customer-A',
    'Released by omar, 2026-03-02 11:58.',
    'Part A: lot 7731, can 1, 1200 g',
    '2026-03-02 10:00 kari',
    'Dry film: 12 µm, 14 µm, 13 µm',
    `Judged by edition ${editionOfToday} of the rules.`,
    'An invented product: practice only, not for a customer.',
  ]) {
    expect(text).toContain(wanted.normalize('NFKC'));
  }
  const hash = /[0-9a-f]{64}/.exec(card.lines.join(' '))?.[0] ?? '';
  expect(text).toContain(hash);
  expect((await shop.say(`12:01 verify ${hash.slice(0, 16)}`)).card.tone).toBe('good');
});

it('given a cure that readings prove, then the paper says from when it may serve and until when it improves', async () => {
  shop = await givenTheMorning();
  const { card } = await shop.say('12:00 traveller impeller-7');
  const text = (await readPdf(written(card))).text.replaceAll(/\s+/g, ' ');
  expect(text).toMatch(
    /After its cure, by the sheet: service from 2026-03-02 \d\d:\d\d and improves until 2026-03-09|After its cure, by the sheet: service from 2026-03-02 \d\d:\d\d, improves until 2026-03-09/,
  );
  expect(text).toContain('That is no release.');
});

it('given a corrected weight, then the paper shows what it replaced, who corrected it and why', async () => {
  shop = await givenTheMorning();
  const { card } = await shop.say('12:00 traveller impeller-7');
  const { text } = await readPdf(written(card));
  expect(text).toContain('weighed A 1200 g, B 1212 g');
  expect(text).toContain('corrected 2026-03-02 11:50 by omar: =SUM(1) wrong scale');
});

it('given a job, then a page for each of its parts and none of a job whose number only begins the same', async () => {
  shop = await givenTheMorning();
  await shop.say('12:00 part lid-1 job 88');
  const { card } = await shop.say('12:01 traveller job 88');
  const { pages, text } = await readPdf(written(card));
  expect(pages).toBe(2);
  expect(text).toContain('Traveller: lid-1');
  expect(text).not.toContain('valve-3');
});

it('given a paper, then its card names it and nowhere the folder, and its tap asks for the same again', async () => {
  shop = await givenTheMorning();
  const { card, text } = await shop.say('12:00 traveller job 88');
  expect(card.paper).toBe('travellers/traveller-job-88.pdf');
  expect(text).not.toContain(shop.folder);
  const again = await shop.say(`12:01 ${card.paperAgain?.line}`);
  expect(again.card.paper).toBe(card.paper);
});

it('given a job whose name is long, then its paper is a PDF by its name still', async () => {
  shop = await givenTheMorning();
  const job = 'hull-plates-of-the-second-dock'.repeat(6);
  await shop.say(`12:00 part lid-1 job ${job}`);
  const { card } = await shop.say(`12:01 traveller job ${job}`);
  expect(card.paper).toMatch(/^travellers\/traveller-job-hull-.*\.pdf$/);
  expect((await readPdf(written(card))).text).toContain('Traveller: lid-1');
});

it('given a part that nobody booked in, then no paper', async () => {
  shop = await givenTheMorning();
  expect((await shop.say('12:00 traveller ghost-1')).text).toContain('Nothing is recorded of ghost-1');
});
