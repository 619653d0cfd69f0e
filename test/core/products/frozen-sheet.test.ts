// A sheet frozen into an event long ago, under limits that have become stricter since.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FrozenSheet } from '../../../core/products/frozen-sheet.ts';
import { Sheet } from '../../../core/products/sheet.ts';

const demo = JSON.parse(readFileSync('core/products/sheets/demo-clear.json', 'utf8'));

/** What today's judge would turn away. */
const oldFashioned = {
  ...demo,
  ratio: { ...demo.ratio, tolerancePercent: 25 },
  flashOff: { ...demo.flashOff, leastMinutes: 40, mostMinutes: 30 },
  leaflet: 'a group that no sheet has any more',
};

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

  it('given a group that every sheet has, then it must be there', () => {
    const { potLife: _, ...without } = demo;
    expect(FrozenSheet.safeParse(without).success).toBe(false);
  });
});
