// A sheet frozen into an event long ago, under limits that have become stricter since.

import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { FrozenSheet, lenient } from '../../../core/products/frozen-sheet.ts';
import { Sheet } from '../../../core/products/sheet.ts';

const demo = JSON.parse(readFileSync('core/products/sheets/demo-clear.json', 'utf8'));

/** What today's judge would turn away. */
const oldFashioned = {
  ...demo,
  ratio: { ...demo.ratio, tolerancePercent: 25 },
  flashOff: { ...demo.flashOff, leastMinutes: 40, mostMinutes: 30 },
  leaflet: 'a group that no sheet has any more',
};

/** As they lie there, in whatever shape of the sheet was that day's. */
function sheetsOfTheKeptRecords(): readonly unknown[] {
  const folders = readdirSync('test/histories', { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return folders.flatMap(({ name }) => {
    // A copy: looked at in its place, a record gets files beside it.
    const file = join(mkdtempSync(join(tmpdir(), 'frozen-')), 'batchbell.sqlite');
    copyFileSync(`test/histories/${name}/batchbell.sqlite`, file);
    const record = new Database(file);
    const sheets = record
      .prepare<[], string>(
        `select json_extract(body, '$.sheet') from event where json_type(body, '$.sheet') = 'object'`,
      )
      .pluck()
      .all();
    record.close();
    rmSync(dirname(file), { recursive: true });
    return sheets.map((sheet): unknown => JSON.parse(sheet));
  });
}

describe('a frozen sheet', () => {
  it('given figures that a new sheet may not have, then the file is refused and the record is read', () => {
    expect(Sheet.safeParse(oldFashioned).success).toBe(false);
    const read = FrozenSheet.parse(oldFashioned);
    expect(read.ratio.tolerancePercent).toBe(25);
    expect(read.flashOff.leastMinutes).toBe(40);
    expect(read).not.toHaveProperty('leaflet');
  });

  it('given a sheet of today, then both read the same', () => {
    for (const file of ['demo-clear', 'demo-build']) {
      const json = JSON.parse(readFileSync(`core/products/sheets/${file}.json`, 'utf8'));
      expect(FrozenSheet.parse(json)).toEqual(Sheet.parse(json));
    }
  });

  it('given a figure that is no number, then it is not read: a sum would go wrong in silence', () => {
    const broken = { ...demo, ratio: { ...demo.ratio, partsA: '1' } };
    expect(FrozenSheet.safeParse(broken).success).toBe(false);
  });

  it('given figures that every sheet must give from now on, then every sheet of the kept records reads with what stands in', () => {
    const cure = Sheet.shape.cure.extend({ coolMinutes: z.number().positive() });
    const later = Sheet.extend({ skinMinutes: z.number().positive().max(60), cure });
    const read = lenient(later, { skinMinutes: 20, 'cure.coolMinutes': 90 });
    const frozen = sheetsOfTheKeptRecords();
    expect(frozen.length).toBeGreaterThan(10);
    for (const sheet of frozen) {
      expect(later.safeParse(sheet).success).toBe(false);
      expect(read.parse(sheet)).toMatchObject({ skinMinutes: 20, cure: { coolMinutes: 90 } });
    }
    expect(read.parse({ ...demo, skinMinutes: 75 })).toMatchObject({ skinMinutes: 75 });
  });

  it('given a group that every sheet has, then it must be there', () => {
    const { potLife: _, ...without } = demo;
    expect(FrozenSheet.safeParse(without).success).toBe(false);
  });
});
