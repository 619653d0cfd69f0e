// What is to be done with a pot whose life is over, by what was seen of it and what its sheet says.

import { describe, expect, it } from 'vitest';
import { careFor, mayHeat, reactsWithMoisture, seenOfPot, wasteOf, worse } from '../../core/heat-care.ts';
import { demoShelf } from './given.ts';

const sheet = (id: string) => {
  const read = demoShelf.get(id);
  if (read?.kind !== 'sheet') throw new Error(id);
  return read.sheet;
};

describe('what is seen of a pot', () => {
  it('given each, then only a cool one is emptied, and one that swells stays closed', () => {
    expect([undefined, ...seenOfPot].map((seen) => careFor(seen))).toEqual([
      'feel-first',
      'feel-first',
      'let-harden',
      'stand-off',
      'stand-off',
      'leave-closed',
    ]);
    expect(seenOfPot.filter((seen) => mayHeat(seen))).toEqual(['gelled', 'hot', 'smoking', 'bulging']);
  });

  it('given two, then the worse one counts', () => {
    expect([worse('hot', 'gelled'), worse('gelled', 'bulging'), worse(undefined, 'thick')]).toEqual([
      'hot',
      'bulging',
      'thick',
    ]);
  });
});

describe('waste', () => {
  it('given a sheet that wants no vent and names isocyanates, then no tight lid all the same', () => {
    expect(wasteOf(sheet('demo-build'))).toBe('loose-lid');
    expect(wasteOf(sheet('demo-clear'))).toBe('vented');
    const { leftOver: _, ...silent } = sheet('demo-clear');
    expect(wasteOf(silent)).toBe('not-said');
    const none = { named: [], source: 'invented' };
    expect(wasteOf({ leftOver: { vented: false, source: 'invented' }, sensitisers: none })).toBe('as-sheet');
  });

  it('given a sheet that leaves open whether it has any, then it counts as reacting with moisture', () => {
    expect(reactsWithMoisture({})).toBe(true);
    expect(reactsWithMoisture(sheet('demo-clear'), 'part-a')).toBe(true);
    expect(reactsWithMoisture(sheet('demo-clear'), 'part-b')).toBe(false);
  });
});
