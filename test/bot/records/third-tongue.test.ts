// Paper, pictures and exports in a third tongue: nothing English is left on them but names, codes and what machines read.

import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { figuresFor } from '../../../bot/language/figures.ts';
import { exportText } from '../../../bot/records/export-file.ts';
import { drawSvg, pictureOf } from '../../../bot/records/pictures/draw.ts';
import { daysDrawings, partDrawings } from '../../../bot/records/pictures/picture-refs.ts';
import { tableOf } from '../../../core/own-key.ts';
import { type Cell, type ExportColumn, exportColumns } from '../../../core/records/export-rows.ts';
import { spanOf } from '../../../core/records/span.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, given } from '../../core/given.ts';
import { englishIn, threeTongues } from '../language/pseudo-shift.ts';
import { readPdf } from './read-pdf.ts';
import { givenTheMorning, morning, type RecordsShop } from './records-shop.ts';

const crewFile = {
  ...demoCrew,
  language: 'fi',
  people: demoCrew.people.map((person) => ({ ...person, language: 'fi' })),
};
const words = threeTongues.wordsIn('fi');
/** Names of this morning, of its product and of standards. */
const named = /impeller-7|invented-customer-A|demo-\w+|scale|wrong|SUM|SHA-256|rev\./g;
const left = (text: string): readonly string[] => [...new Set(englishIn(text.replace(named, ' ')))];

let shop: RecordsShop | undefined;
afterEach(() => shop?.close());

describe('a third tongue', () => {
  it('given a traveller on paper, then no English stands on it', async () => {
    shop = await givenTheMorning({ crewFile, tongues: threeTongues });
    const { card } = await shop.say('12:00 traveller impeller-7');
    const { text } = await readPdf(join(shop.folder, card.paper ?? 'no paper'));
    expect(text.length).toBeGreaterThan(500);
    expect(left(text)).toEqual([]);
  });

  it('given the pictures of a day and a part, then no axis, label or mark is English', async () => {
    const told = await given(morning);
    const [state, now] = [await told.shop(), told.time('Mon 12:00')];
    const profile = threeTongues.profileOf('fi', 'metric');
    const figures = figuresFor({ profile, units: 'metric', zone: 'UTC', now });
    const { languages, every: hearing } = threeTongues;
    const telling = { words, figures, languages, hearing, shop: state, now };
    const span = spanOf({ kind: 'day', day: 'today' }, now, 'UTC');
    const part = state.parts.get('impeller-7');
    if (span === undefined || part === undefined) throw new Error('nothing to draw');
    for (const drawings of [daysDrawings(telling, span), partDrawings(telling, part)]) {
      const svg = await drawSvg(pictureOf(drawings, profile));
      const texts = [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map(([, text = '']) => text);
      expect(texts.length).toBeGreaterThan(10);
      expect(left(texts.join(' '))).toEqual([]);
    }
  });

  it('given an export as a spreadsheet, then its heads and how a row stands are not English', async () => {
    const told: Readonly<Partial<Record<ExportColumn, Cell>>> = { event: 1, part_a_g: 1201.5, state: 'stands' };
    const row = tableOf(exportColumns.map((name) => [name, told[name]] as const));
    const profile = threeTongues.profileOf('fi', 'metric');
    const figures = figuresFor({ profile, units: 'metric', zone: 'UTC', now: epochMs(Date.UTC(2026, 2, 2)) });
    expect(left((await exportText([row], 'csv', { words, figures })).replaceAll('_', ' '))).toEqual([]);
  });
});
