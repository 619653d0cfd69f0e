// What is told of parts that are booked already (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import type { LineContext, Reading } from '../../../../bot/language/reading.ts';
import { shipped } from '../../../../bot/language/tongues/tongues.ts';
import { shopAtTen } from '../shop-at-ten.ts';

const shopOf = (code: 'en' | 'es', parts: readonly string[]): LineContext => ({
  ...shopAtTen,
  hearing: shipped.hearingIn(code),
  batches: [],
  parts,
  live: () => ({ parts: parts.map((name) => ({ name, phase: 'bare' })), batches: [], cans: [] }),
});

const english = shopOf('en', ['br-1', 'br-2', 'br-3']);
const spanish = shopOf('es', ['escuadra-1', 'escuadra-2', 'escuadra-3']);

const linesOf = (read: Reading): readonly string[] =>
  read.kind === 'misread' ? read.misread.suggestions : 'takenAs' in read ? [read.takenAs ?? ''] : [];

describe('details of parts that are booked', () => {
  it.each([
    [
      'The brackets BR-1, BR-2 and BR-3 have 0.1 square metres each and can take 120 C',
      english,
      'br-1 br-2 br-3 0.1 m2 max 120 C',
    ],
    ['all three take 120C max', english, 'br-1 br-2 br-3 max 120C'],
    ['br-2 is 5 mm thick and good to 120C', english, 'br-2 5 mm max 120C'],
    ['las tres aguantan 200 grados como máximo', spanish, 'escuadra-1 escuadra-2 escuadra-3 max 200C'],
    ['la escuadra 2 es de aluminio de 4 mm', spanish, 'escuadra-2 4 mm aluminium'],
  ])('given %s, then it is noted of them', (line, shop, noted) => {
    expect(readLine(line, shop)).toMatchObject({ kind: 'command', takenAs: `part ${noted}` });
  });

  it.each([
    ["they're about 0.1 square metres each and can take 120 degrees", english, 'br-1 br-2 br-3 0.1 m2 max 120C'],
    ['each of them is about 0.1 m2', english, 'br-1 br-2 br-3 0.1 m2'],
    ['aguantan 200 grados', spanish, 'escuadra-1 escuadra-2 escuadra-3 max 200C'],
  ])('given %s, then whose it is stands on the tap', (line, shop, noted) => {
    const read = readLine(line, shop);
    expect([read.kind, ...linesOf(read)]).toEqual(['misread', `part ${noted}`]);
  });

  it.each([
    ['br-1 does not take 120C', english],
    ['can br-1 take 120C?', english],
    ['coated br-1 and br-2, 0.2 m2', english],
    ['dry film on br-1 is 0.05 mm', english],
    ['la escuadra-1 no aguanta 120C', spanish],
  ])('given %s, then nothing is noted of it', (line, shop) => {
    expect(linesOf(readLine(line, shop)).filter((each) => each.startsWith('part '))).toEqual([]);
  });
});
