// Parts that come in, told in a sentence (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import type { LineContext } from '../../../../bot/language/reading.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const shop = { ...shopAtTen, parts: ['flange-1', 'flange-2'] };
const taller = { ...tallerALasDiez, parts: ['brida-1'] };

/** What the line was taken as, or its taps. */
function heard(line: string, where: LineContext = shop): string | readonly string[] {
  const read = readLine(line, where);
  if (read.kind === 'misread') return read.misread.suggestions;
  return read.kind === 'command' ? (read.takenAs ?? read.line) : read.kind;
}

describe('a part that came in, told in a sentence', () => {
  it.each([
    ["got gate-3 in for job 93, steel, 9 sq ft, can't go over 250F", 'part gate-3 job 93 9 sq ft max 250F steel'],
    [
      'the driver dropped off gate-3, its number is GV118, job 93, cast iron, 12 mm wall',
      'part gate-3 serial GV118 job 93 12 mm cast-iron',
    ],
    [
      'gate-3; S/N 5513; job 91; steel; 6 mm; 0.4 m2; max. 120 °C',
      'part gate-3 serial 5513 job 91 6 mm 0.4 m2 max 120 °C steel',
    ],
  ])('given %s, then it is taken with all its details', (line, part) => {
    expect(heard(line)).toBe(part);
  });

  it('given two words that may be their name, then none is booked without a tap', () => {
    const line = 'han traído las rejas del arado, de la 1 a la 14, trabajo 112, de acero';
    expect(readLine(line, taller).kind).toBe('misread');
  });

  it('given it in Spanish, then it is taken with all its details', () => {
    const line = 'me han traído la tapa-4, nº de serie 5077, pedido 95, fierro colado';
    expect(heard(line, taller)).toBe('part tapa-4 serial 5077 job 95 cast-iron');
  });

  it('given as many as they are said to be, which came in, then they are taken', () => {
    expect(heard('3 steel parts came in, gate-1, gate-2 and gate-3')).toBe('part gate-1 gate-2 gate-3 steel');
  });

  it.each([
    ['I have three steel gates to paint, gate-1 gate-2 and gate-3', shop, 'part gate-1 gate-2 gate-3 steel'],
    ['tengo tres rejas de acero para pintar: reja-1, reja-2 y reja-3', taller, 'part reja-1 reja-2 reja-3 steel'],
  ] as const)('given %s, then what is to be done to them is no plan beside it, and it is a tap', (line, where, tap) => {
    expect(heard(line, where)).toEqual([tap]);
  });

  it.each([
    ['four valve bodies just got here for job 92, call them gate-1 to gate-4', 'part gate-1..gate-4 job 92'],
    ['a crate came with rail-5 in it, the paper says job 92', 'part rail-5 job 92'],
    ['new one on the bench: gate 6, job 92, takes 110', 'part gate-6 job 92 max 110C'],
  ])('given %s, of which a word or a name may be meant otherwise, then it is a tap', (line, tap) => {
    expect(heard(line)).toEqual([tap]);
  });

  it('given a name of one stretch in a crew that works in Spanish, then it is taken so too', () => {
    expect(heard('nos han traído seis codos, del codo 1 al 6, trabajo 95', taller)).toBe('part codo-1..codo-6 job 95');
  });

  it.each([
    ['flange 3 to 8 just landed, job 104, aluminium', 'part flange-3..flange-8 job 104 aluminium'],
    ['got elbow-1 through 6 in for job 95', 'part elbow-1..elbow-6 job 95'],
    ['we got six elbows in for job 95, elbow 1 thru elbow 6', 'part elbow-1..elbow-6 job 95'],
    ['a dozen elbows arrived, elbow-01 to elbow-12, job 95', 'part elbow-01..elbow-12 job 95'],
    ['book in rails 1 to 5, job 95, steel', 'book in rails 1 to 5, job 95, steel'],
  ])('given %s, of which each is called in full, then they are taken', (line, part) => {
    expect(heard(line)).toBe(part);
  });

  it.each([
    ['six elbows, 1 to 6, for job 95', ['part elbow-1..elbow-6 job 95']],
    ['the lorry left 8 trusses for job 95, trusses 1 thru 8', ['part truss-1..truss-8 job 95']],
    ["let's call them hub 1 to 12, job 95", ['part hub-1..hub-12 job 95']],
    ['three rails in for job 95: rail 1, rail 2 and rail 3', ['part rail-1 rail-2 rail-3 job 95']],
    ['four rails came in, numbered 2, 4, 6 and 8, job 95', ['part rail-2 rail-4 rail-6 rail-8 job 95']],
    ['ten elbows, elbow 1 to 12, job 95', ['part elbow-1..elbow-12 job 95', 'part elbow-1..elbow-10 job 95']],
    ['twelve elbows for job 95', ['part elbow-1..elbow-12 job 95']],
  ])('given %s, then it is asked by a tap for each way that it may be meant', (line, taps) => {
    expect(heard(line)).toEqual(taps);
  });

  it.each([
    ['seis codos, del 1 al 6, para el trabajo 95', ['part codo-1..codo-6 job 95']],
    ['bajaron 6 codos pal job 95, codos 1 a 6', ['part codo-1..codo-6 job 95']],
    ['vamos a llamarlos codo 1 a 6, trabajo 95', ['part codo-1..codo-6 job 95']],
    ['ocho codos, codo 1 a 6, trabajo 95', ['part codo-1..codo-6 job 95', 'part codo-1..codo-8 job 95']],
  ])('given %s, then it is asked in the same way', (line, taps) => {
    expect(heard(line, taller)).toEqual(taps);
  });

  it.each([
    'gate-3 for job 92 has not come in',
    'six elbows, 1 to 6, for job 95 are coming tomorrow',
    'elbows 1 to 6 have not turned up, job 95',
    'two flanges left for job 92',
    'gate-3 for job 92 arrives tomorrow',
    'gate-3 of job 92, serial 5513, was sent back to the customer',
    'gate-3 for job 92 is dry',
    'put gate-3 of job 92 in the oven at 90',
    'if gate-3 of job 92 arrives tell me',
    'got flange-1 in for job 92, serial 77',
  ])('given %s, then no part is booked in', (line) => {
    expect([heard(line)].flat().join()).not.toMatch(/^part /);
  });
});
