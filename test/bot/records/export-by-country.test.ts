// An export as the spreadsheet of each country opens it. Invented.

import { describe, expect, it } from 'vitest';
import { figuresFor } from '../../../bot/language/figures.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { exportText } from '../../../bot/records/export-file.ts';
import { tableOf } from '../../../core/own-key.ts';
import { type Cell, type ExportColumn, exportColumns } from '../../../core/records/export-rows.ts';
import { shopAtTen } from '../language/shop-at-ten.ts';

const { now, zone } = shopAtTen;
const told: Readonly<Partial<Record<ExportColumn, Cell>>> = {
  event: 1,
  part_a_g: 1201.5,
  state: 'stands',
  place: 'booth-2',
  method: 'dip',
  cure_way: 'oven',
};
const row = tableOf(exportColumns.map((name) => [name, told[name]] as const));

describe('an export as a spreadsheet', () => {
  it.each([
    ['en', ['booth-2', 'oven']],
    ['es-ES', ['cabina-2', 'inmersión', 'horno']],
  ])('given a reader of %s, then what the record says in words of its own is told as %j', async (language, values) => {
    const figures = figuresFor({ profile: shipped.profileOf(language, 'metric'), units: 'metric', zone, now });
    const text = await exportText([row], 'csv', { words: shipped.wordsIn(language), figures });
    expect(text.split(/[,;\r\n]+/)).toEqual(expect.arrayContaining(values));
    expect(shipped.wordsIn(language).records.export.file('crew')).toBe(language === 'en' ? 'crew' : 'registro');
  });

  it.each([
    ['en', 'event,happened_at,', '1201.5', 'stands'],
    ['es-ES', 'anotación;ocurrido;', '1201,5', 'vigente'],
    ['es-MX', 'anotación,ocurrido,', '1201.5', 'vigente'],
  ])('given a reader of %s, then its heads are "%s" and its figures "%s"', async (language, heads, figure, state) => {
    const figures = figuresFor({ profile: shipped.profileOf(language, 'metric'), units: 'metric', zone, now });
    const text = await exportText([row], 'csv', { words: shipped.wordsIn(language), figures });
    expect(text.slice(1)).toMatch(new RegExp(`^${heads}`));
    expect(text.split(language === 'es-ES' ? /[;\r\n]+/ : /[,\r\n]+/)).toEqual(expect.arrayContaining([figure, state]));
    expect(await exportText([row], 'jsonl', { words: shipped.wordsIn(language), figures })).toContain(
      '"part_a_g":1201.5',
    );
  });
});
