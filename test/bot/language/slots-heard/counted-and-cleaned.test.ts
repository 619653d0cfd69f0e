// A number that says how many, and what was cleaned where parts are named (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import type { Reading } from '../../../../bot/language/reading.ts';
import { shipped } from '../../../../bot/language/tongues/tongues.ts';
import type { PartPhase } from '../../../../core/part/part.ts';
import { shopAtTen } from '../shop-at-ten.ts';

const rack = (family: string, phase: PartPhase['is'], language: 'en' | 'es') => {
  const parts = [1, 2, 3].map((number) => `${family}-${number}`);
  return {
    ...shopAtTen,
    hearing: shipped.hearingIn(language),
    batches: [1],
    parts,
    live: () => ({
      parts: parts.map((name) => ({ name, phase, job: '71' })),
      batches: [{ number: 1, phase: 'filtered' as const }],
      cans: [{ number: 4, isLidOff: true }],
    }),
  };
};

const linesOf = (read: Reading): readonly string[] => {
  if (read.kind === 'misread') return read.misread.suggestions;
  if (read.kind === 'several') return read.lines;
  return 'takenAs' in read && read.takenAs !== undefined ? [read.takenAs] : [];
};

const three = 'bracket-1 bracket-2 bracket-3';
const tres = 'escuadra-1 escuadra-2 escuadra-3';

describe('a number that says how many', () => {
  it.each(['all three out of the oven', 'all 3 are out of the oven now'])(
    'given %s, then all three of the load are out, and never the one of that number',
    (said) => {
      const read = readLine(said, rack('bracket', 'curing', 'en'));
      expect(linesOf(read)).toEqual([`out ${three}`]);
    },
  );

  it('given the three of three, in words, then it is asked whether all of them or the one of that number', () => {
    const read = readLine('the three out of the oven', rack('bracket', 'curing', 'en'));
    expect(read.kind).toBe('misread');
    expect(linesOf(read)[0]).toBe(`out ${three}`);
  });

  it('given all three were brushed, one coat each, then the one is no number of a bracket', () => {
    const read = readLine('brushed all three brackets, one coat each', rack('bracket', 'bare', 'en'));
    expect(linesOf(read)).toEqual([`coat ${three} 1 brush`]);
  });

  it.each(['di una mano de brocha a las tres escuadras', 'pasé la brocha a las 3 escuadras'])(
    'given %s, then three of them is no hour',
    (said) => {
      const lines = linesOf(readLine(said, rack('escuadra', 'bare', 'es')));
      expect(lines).toEqual([`coat ${tres} 1 brush`]);
    },
  );

  it('given three of them were prepared, then it is no figure of a profile', () => {
    const lines = linesOf(readLine('preparar las tres escuadras', rack('escuadra', 'bare', 'es')));
    expect(lines.join()).not.toContain('um');
  });
});

describe('what was cleaned, and how', () => {
  it.each(['limpié y desengrasé las tres escuadras'])(
    'given %s, then what is named was cleaned, and no gear',
    (said) => {
      expect(linesOf(readLine(said, rack('escuadra', 'bare', 'es')))).toEqual([`prep ${tres} grease-off`]);
    },
  );

  it('given the gun was cleaned and three were degreased, then each is told', () => {
    const read = readLine('limpié la pistola y desengrasé las tres escuadras', rack('escuadra', 'bare', 'es'));
    expect(linesOf(read).join('; ')).toBe(`flush gun; prep ${tres} grease-off`);
  });

  it.each(['preparar las tres escuadras, sin grasa, secas', 'preparadas las tres escuadras, sin grasa y secas'])(
    'given %s, then nobody told that they were blasted',
    (said) => {
      const lines = linesOf(readLine(said, rack('escuadra', 'bare', 'es')));
      expect(lines[0]).toBe(`prep ${tres} grease-off`);
      expect(lines.join()).not.toContain('blasting');
    },
  );

  it.each(['stirred can 4 about a minute', 'shook the can up good, stirred about a minute'])(
    'given %s, then its stirring does not begin before now',
    (said) => {
      const lines = linesOf(readLine(said, rack('bracket', 'bare', 'en')));
      expect(lines).toEqual(['prestir 4']);
    },
  );
});
