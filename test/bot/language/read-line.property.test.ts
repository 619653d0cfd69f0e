// Whatever is typed, the reader answers; what phones and hurried thumbs do to a line does not change what it says.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { misreadCodes, type Reading } from '../../../bot/language/reading.ts';
import { shopAtTen, tallerALasDiez } from './shop-at-ten.ts';
import { thumbTypedLines } from './thumb-typed-lines.ts';

const pieces =
  '1 2 1201g 1198g 1,201g 1.201g 12O1g 2.4kg -1kg 0kg 24C 75F 48% 24 at 9:40 9 20 25:00 ago 10m yesterday already permit "lead agreed" a b spray dip oven room impeller-7 valve-3 impeller demo build 12 14 13um 0.5mil serial max in booth not , - / ? why at noon 2026-03-01 30C 3h units us'.split(
    ' ',
  );
const lineOfPieces = fc
  .tuple(
    fc.constantFrom(...tallerALasDiez.hearing.verbs.keys(), 'permit', 'permiso'),
    fc.array(fc.constantFrom(...pieces), { maxLength: 7 }),
  )
  .map(([verb, rest]) => [verb, ...rest].join(' '));
/** Names of sheets, times after a leave and shouts are rare among loose pieces. */
const namedOrPermitted = fc
  .tuple(
    fc.constantFrom(
      'mix 2.4kg',
      'stir 1 permit',
      'coat impeller-7 1 dip permit',
      'amend 1 weigh 1201g 1189g',
      'quemadura',
      'no',
    ),
    fc.constantFrom('demo', 'biuld', 'build', 'lead agreed', 'wrong scale', ''),
    fc.constantFrom('at 9:40', '10m ago', '24C', ''),
  )
  .map((words) => words.filter((word) => word !== '').join(' '));
const readLines = thumbTypedLines.map(({ line }) => line);
/** A typed line with one character put in, taken out or changed. */
const slipped = fc
  .tuple(fc.constantFrom(...readLines), fc.nat(80), fc.string({ maxLength: 2 }), fc.nat(2))
  .map(([line, place, put, taken]) => line.slice(0, place) + put + line.slice(place + taken));
const anything = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  lineOfPieces,
  namedOrPermitted,
  fc.constantFrom(
    'no',
    'spray inside the tank',
    'coat inside vessel',
    'parts in x-1..x-900',
    'parts in job 88\n17\n18',
  ),
  slipped,
);

function checkMisread(reading: Reading): void {
  if (reading.kind !== 'misread') return;
  const { from, to, token, suggestions } = reading.misread;
  expect(reading.line.slice(from, to)).toBe(token);
  for (const line of suggestions) expect(readLine(line, tallerALasDiez).kind).toMatch(/^(command|question|several)$/);
}

describe('any line', () => {
  it('given anything at all, then it is read or misread, never an error, and each offered line reads', () => {
    const reached = new Map<string, number>();
    const count = (key: string) => reached.set(key, (reached.get(key) ?? 0) + 1);
    fc.assert(
      fc.property(anything, (line) => {
        const reading = readLine(line, tallerALasDiez);
        count(reading.kind);
        if (reading.kind === 'misread') count(reading.misread.code);
        checkMisread(reading);
      }),
      { numRuns: 20_000 },
    );
    // Only where it is known how things stand.
    const inEmptyShop = readLine('its dry', { ...shopAtTen, live: () => ({ parts: [], batches: [], cans: [] }) });
    checkMisread(inEmptyShop);
    if (inEmptyShop.kind === 'misread') count(inEmptyShop.misread.code);
    const wanted = ['command', 'question', 'silence', 'misread', ...misreadCodes];
    expect(wanted.filter((key) => (reached.get(key) ?? 0) === 0)).toEqual([]);
  });

  it('given a semicolon behind a slip of the first word, then no list that does not read is offered', () => {
    const reading = readLine('par; impeller-7 cast-iron 12mm', tallerALasDiez);
    expect(reading.kind).toBe('misread');
    checkMisread(reading);
  });

  it('given a cry that is asked about in a word run into its number, then what is shown stands in the line', () => {
    const reading = readLine('fan0lse alarm', tallerALasDiez);
    expect(reading.kind).toBe('misread');
    checkMisread(reading);
  });

  it.each([
    'extractor en marcha -0,6 m/s',
    'brillo impulsor-7 -85',
    'pull-off impeller-7 -7 MPa',
    'holidays impeller-7 0 -500 V',
  ])('given a figure below nothing in "%s", then it is a misread and no fault', (line) => {
    expect(readLine(line, tallerALasDiez).kind).toBe('misread');
  });

  it('given an act of no part beside another, then what is offered of both reads when it is tapped', () => {
    checkMisread(readLine('revisamos , valve-3 dip', tallerALasDiez));
    checkMisread(readLine('dip valve-3, came out', tallerALasDiez));
  });

  it('given a part and another act, then they are no list of parts', () => {
    expect(readLine('part valve-3; mix 2.4kg', tallerALasDiez).kind).toBe('several');
    checkMisread(readLine('part valve-3 - 2.4kg', tallerALasDiez));
  });

  it('given a place that cannot be one, then the reading comes to an end', () => {
    expect(readLine('brief kari inside a tank_', tallerALasDiez)).toMatchObject({
      kind: 'misread',
      misread: { code: 'left-over', token: 'tank_' },
    });
  });

  it('given a paste of thousands of characters, then it is a misread, and the reading comes to an end', () => {
    for (const filler of [' . ', '1 ', '"', 'a:', '1,', '(']) {
      expect(readLine(`hold impeller-7 ${filler.repeat(20_000)}`, tallerALasDiez)).toMatchObject({ kind: 'misread' });
    }
  });
});

describe('what a phone does to a line', () => {
  const sayings = thumbTypedLines.filter(({ expected }) => expected.kind === 'command').map(({ line }) => line);
  const meaning = (line: string): unknown => {
    const reading = readLine(line, tallerALasDiez);
    return reading.kind === 'command' ? { ...reading, line: '' } : reading;
  };

  it.each([
    ['doubled spaces', (line: string) => line.replaceAll(' ', '  ')],
    ['non-breaking spaces', (line: string) => line.replaceAll(' ', '\u00a0')],
    ['a trailing full stop', (line: string) => `${line}.`],
    ['a picture at the end', (line: string) => `${line} 👍🏽`],
    ['a mention in front', (line: string) => `@batchbell ${line.replace(/^[/@]\w*\s?/, '')}`],
    ['long dashes', (line: string) => line.replaceAll('-', '–')],
  ])('given %s, then every line of the corpus says the same', (_, change) => {
    for (const line of sayings) {
      const typed = line.startsWith('/') ? line.slice(1) : line;
      expect(meaning(change(typed)), change(typed)).toEqual(meaning(line));
    }
  });
});
