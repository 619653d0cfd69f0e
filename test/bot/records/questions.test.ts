// Questions about the past in one line, over the whole program.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Card } from '../../../bot/cards/card.ts';
import { cellOf } from '../../../bot/records/export-file.ts';
import { exportColumns } from '../../../core/records/export-rows.ts';
import { givenTheMorning, type RecordsShop } from './records-shop.ts';

let shop: RecordsShop;
beforeAll(async () => {
  shop = await givenTheMorning();
});
afterAll(() => shop.close());

const written = ({ paper }: Card): string => join(shop.folder, paper ?? 'no paper');

describe('finding a part a year later', () => {
  it.each([
    ['find 4411', ['impeller-7']],
    ['find serial 4411', ['impeller-7']],
    ['find customer invented-customer', ['impeller-7']],
    ['find job 88', ['impeller-7', 'valve-3']],
    ['find lot 7731', ['lot 7731']],
    ['find 2026-03-02', ['impeller-7', 'valve-3']],
  ])('given "%s", then %j, each with its trace a tap away', async (line, names) => {
    const { card, text } = await shop.say(`12:00 ${line}`);
    for (const name of names) expect(text).toContain(name);
    expect(card.actions.every(({ line: tap }) => tap.startsWith('trace '))).toBe(true);
  });

  it('given a name that nobody booked in, then that is said', async () => {
    expect((await shop.say('12:00 find serial 9999')).text).toContain('Nothing is booked in under 9999');
  });
});

describe('traces both ways', () => {
  it('given the part, then its lots; given the lot, then its parts and what is left', async () => {
    expect((await shop.say('12:00 trace impeller-7')).text).toMatch(/Part A: lot 7731, can 1, 1200 g/);
    const lot = await shop.say('12:00 trace lot 7731');
    expect(lot.text).toMatch(/Batch 3: 1200 g, on impeller-7/);
    expect(lot.card.facts.find(({ id }) => id === 'can-left')?.value).toBe(3800);
  });

  it('given the batch, then the parts that it went on', async () => {
    expect((await shop.say('12:00 trace 3')).text).toContain('Went on: impeller-7');
  });
});

describe('stretches of days', () => {
  it('given week, then its figures, and every line of the text is on the card', async () => {
    const { card } = await shop.say('12:00 week');
    expect(card.facts.find(({ id }) => id === 'applied-total')?.value).toBe(2100);
    expect(card.image).toBe('pictures/days/2026-03-02_2026-03-08.png');
    expect(card.lines.some((line) => /Record up to event \d+: verify [0-9a-f]{16}$/.test(line))).toBe(true);
  });

  it('given an idle month, then that is all it says', async () => {
    expect((await shop.say('12:00 month last')).card).toMatchObject({ facts: [], image: null });
  });

  it('given the day, then its VOC, and the whole day a tap away', async () => {
    const { card } = await shop.say('12:00 day');
    // A 530.53 g, B 456.52 g: see the ledger's own test; acetone none.
    expect(card.facts.find(({ id }) => id === 'voc')?.value).toBeCloseTo(987.05, 2);
    expect(card.actions.map(({ line }) => line)).toContain('from 2026-03-02 to 2026-03-02');
  });
});

describe('the solvent ledger', () => {
  it('given a limit nearly used up, then the ledger and the day warn', async () => {
    await shop.say('12:01 set voc-limit 1.2kg/month');
    const { card } = await shop.say('12:01 voc month');
    expect(card.tone).toBe('warn');
    expect(card.lines.join('\n')).toMatch(/Coating Demo Clear: 2\.57 L, 2400 g, VOC 987 g/);
    expect((await shop.say('12:01 day')).text).toContain('four fifths are used');
  });
});

describe('an export', () => {
  it('given a reference CSV reader, then stable columns, ISO times with zone, numbers as numbers, no formula', async () => {
    const { card } = await shop.say('12:02 export day csv');
    const file = readFileSync(written(card), 'utf8');
    const rows: Record<string, string>[] = parse(file, { columns: true, bom: true });
    expect(Object.keys(rows[0] ?? {})).toEqual([...exportColumns]);
    const weighed = rows.find(({ type }) => type === 'PartsWeighed');
    expect(weighed).toMatchObject({ part_a_g: '1200', part_b_g: '1200', state: 'corrected', batch: '3' });
    expect(weighed?.happened_at).toBe('2026-03-02T08:00:00Z');
    // The reason was typed to be run by whoever opens the file.
    expect(weighed?.corrected_why).toBe(`'=SUM(1) wrong scale`);
    for (const row of rows) for (const value of Object.values(row)) expect(/^[=+@\t\r]/.test(value), value).toBe(false);
  });

  it.each(['=1+1', '+1', '-1', '@sum', '\tx', '\rx', '  =1'])(
    'given the text %j, then it stands behind an apostrophe',
    (text) => {
      expect(cellOf(text)).toBe(`'${text}`);
    },
  );

  it('given a number below zero, then it stays a number; given a plain word, then it stays as it is', () => {
    expect([cellOf(-5), cellOf('orange peel'), cellOf(undefined)]).toEqual(['-5', 'orange peel', '']);
  });

  it('given JSON Lines, then every line has every column', async () => {
    const { card } = await shop.say('12:02 export day jsonl');
    const lines = readFileSync(written(card), 'utf8').trim().split('\n');
    const rows = lines.map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(rows.every((row) => Object.keys(row).join() === exportColumns.join())).toBe(true);
    expect(rows.find(({ type }) => type === 'FilmRead')).toMatchObject({ film_state: 'wet', film_um: '60 65 58' });
  });
});

describe('how long to keep it', () => {
  it('given keep, then each class with its years and its source', async () => {
    const { card } = await shop.say('12:03 keep');
    expect(card.lines).toContain('Exposure records of people: 30 years (29 CFR 1910.1020(d)(1)(ii))');
  });
});
