// What reads verb first is read as well where the part is told by its number, by its word and its number, and where one act
// follows another without a mark (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import type { LineContext, Reading } from '../../../bot/language/reading.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { shopAtTen } from './shop-at-ten.ts';

const phases = ['bare', 'flashing', 'dry', 'curing', 'cured'] as const;
type Phase = (typeof phases)[number];

const shopWith = (code: 'en' | 'es', phase: Phase): LineContext => ({
  ...shopAtTen,
  hearing: shipped.hearingIn(code),
  batches: [1],
  parts: ['flange-6', 'impeller-7', 'pump-housing-3'],
  live: () => ({
    parts: [
      { name: 'flange-6', phase: 'bare' },
      { name: 'impeller-7', phase },
      { name: 'pump-housing-3', phase: 'bare' },
    ],
    batches: [{ number: 1, phase: 'filtered' }],
    cans: [{ number: 3, isLidOff: false }],
  }),
});

const actsOf = (read: Reading): readonly string[] => {
  if (read.kind === 'several') return read.lines;
  return read.kind === 'misread' ? read.misread.suggestions : 'takenAs' in read ? [read.takenAs ?? ''] : [];
};

const examples = (code: 'en' | 'es') => [
  ...new Set(
    shipped
      .hearingIn(code)
      .tongues.flatMap(({ verbs }) => Object.values(verbs).map(({ example }) => example))
      .filter((example) => example.includes(' impeller-7')),
  ),
];

describe.each(['en', 'es'] as const)('a part by its number, in %s', (code) => {
  it('given the examples of all acts with its number alone, then each is of that part, or is asked', () => {
    const lines = examples(code);
    const lost = lines.flatMap((example) => {
      const line = example.replace('impeller-7', '7');
      const wrong = phases.filter((phase) => {
        const shop = shopWith(code, phase);
        const [named, numbered] = [readLine(example, shop), readLine(line, shop)];
        if (named.kind !== 'command' || numbered.kind !== 'command') return numbered.kind === 'silence';
        return JSON.stringify(numbered.command) !== JSON.stringify(named.command);
      });
      return wrong.length === 0 ? [] : [`${line}: ${wrong.join()}`];
    });
    expect(lines.length).toBeGreaterThan(15);
    expect(lost).toEqual([]);
  });

  it.each([
    ['door 7 5m', 'door impeller-7 5m', 'curing'],
    ['rub 7 50 ok', 'rub impeller-7 50 ok', 'cured'],
    ['cure 7 oven 90C', 'cure impeller-7 oven 90C', 'dry'],
    ['cure 7 oven', 'cure impeller-7 oven', 'dry'],
    ['cure 7 90C', 'cure impeller-7 oven 90C', 'dry'],
    ['cure 7 room', 'cure impeller-7 room', 'dry'],
  ] as const)('given %s, then it is taken as %s', (line, taken, phase) => {
    expect(actsOf(readLine(line, shopWith(code, phase)))).toEqual([taken]);
  });

  it('given it is to cure and nobody said where, then either is a tap; in cure already it is put nowhere', () => {
    const both = ['cure impeller-7 oven', 'cure impeller-7 room'];
    expect(actsOf(readLine('cure 7', shopWith(code, 'dry')))).toEqual(both);
    for (const each of both) expect(actsOf(readLine('cure 7', shopWith(code, 'curing')))).not.toContain(each);
  });
});

describe('a part by its word and its number', () => {
  it.each([
    ['wet imp 7 60 65um', 'wet impeller-7 60 65um'],
    ['film housing 3 12 14um', 'film pump-housing-3 12 14um'],
    ['hold pump 3 runs', 'hold pump-housing-3 runs'],
    // No such part is known: the number is still its own, and no reading.
    ['wet bracket 4 60 65um', 'wet bracket-4 60 65um'],
  ])('given %s, then the number is no figure: %s', (line, taken) => {
    expect(actsOf(readLine(line, shopWith('en', 'cured')))).toEqual([taken]);
  });

  it('given a coat of a part whose word stands before the pot, then the number stays the pot', () => {
    const read = readLine('coat bracket 1 brush', shopWith('en', 'bare'));
    expect(read.kind === 'command' && read.command).toMatchObject({ parts: ['bracket'], batch: 1 });
  });
});

describe('acts one after the other without a mark', () => {
  it.each([
    ['air 24C 48% mix 2kg', ['air 24C 48%', 'mix 2kg']],
    ['air 24 48% mix 2 kilos', ['air 24C 48%', 'mix 2 kilos']],
    ['air 23C 51% surface 20C', ['air 23C 51%', 'surface 20C']],
    ['dry 7 cure 7 oven 90C', ['dry impeller-7', 'cure impeller-7 oven 90C']],
    ['air 24C 48% surface 21C mix 2kg', ['air 24C 48%', 'surface 21C', 'mix 2kg']],
  ])('given %s, then each of them is taken', (line, acts) => {
    expect(actsOf(readLine(line, shopWith('en', 'flashing')))).toEqual(acts);
  });

  it.each([
    'air 24C 48% dont mix 2kg',
    'air 24C 48% mix 2kg?',
    'air 24C 48% maybe mix 2kg',
    'mix 2kg undo',
    'ok the air 24C 48%, no mix 2kg',
  ])('given %s, then no batch is taken with the rest', (line) => {
    expect(actsOf(readLine(line, shopWith('en', 'flashing')))).not.toContain('mix 2kg');
  });
});
