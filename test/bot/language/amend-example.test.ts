// A correction that does not read is answered with one of the same act: whoever puts a temperature right is shown no weights.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { amendableVerbs } from '../../../core/verbs/amends.ts';
import { shopAtTen, tallerALasDiez } from './shop-at-ten.ts';

const exampleIn = (line: string, context = shopAtTen): string => {
  const reading = readLine(line, context);
  return reading.kind === 'misread' ? (reading.misread.example ?? '') : reading.kind;
};

const whereBatchOneStirs = () => ({ parts: [], batches: [{ number: 1, phase: 'paused' as const }], cans: [] });

describe('a correction without what it should be', () => {
  it.each([
    ['amend 1 weigh', 'amend 1 weigh 1201g 1198g "…"'],
    ['amend impeller-7 temp', 'amend impeller-7 temp 88C "…"'],
    ['amend 1 filter', 'amend 1 filter at 9:40 "…"'],
  ])('given %s, then the example is %s', (line, example) => {
    expect(exampleIn(line)).toBe(example);
  });

  it.each(amendableVerbs)('given any act, %s, then its example reads as its correction', (verb) => {
    const example = exampleIn(`amend ${verb}`);
    expect(readLine(example, shopAtTen), example).toMatchObject({ command: { verb: 'amend', of: { verb } } });
  });

  it('given amend 1 filter, then nobody is offered to filter again', () => {
    const misread = { suggestions: expect.not.arrayContaining(['filter 1']) };
    expect(readLine('amend 1 filter', { ...shopAtTen, live: whereBatchOneStirs })).toMatchObject({ misread });
  });

  it('given Spanish, then it is in Spanish', () => {
    expect(exampleIn('corregir 1 filtrar', tallerALasDiez)).toBe('corregir 1 filtrar a las 9:40 "…"');
  });
});
