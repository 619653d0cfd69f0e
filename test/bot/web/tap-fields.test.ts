import { describe, expect, test } from 'vitest';
import { inUnitsOf } from '../../../bot/cards/card-context.ts';
import { fieldsIn } from '../../../bot/cards/tap-fields.ts';
import { fillInOrder, fillLine } from '../../../bot/language/line-fields.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';

const words = shipped.wordsIn('en');
const filled = (line: string, values: Readonly<Record<string, string>>) =>
  fillLine(line, new Map(Object.entries(values)));

describe('the fields of a tap', () => {
  test('a weighing asks for two figures in grams', () => {
    expect(fieldsIn('weigh 1 {part-a}g {part-b}g', words)).toMatchObject([
      { id: 'part-a', label: 'Part A', unit: 'g', holds: 'number' },
      { id: 'part-b', label: 'Part B', unit: 'g', holds: 'number' },
    ]);
  });

  test('a coat asks for the part in words and for one of the methods', () => {
    const [part, method] = fieldsIn('coat {part} 1 {method}', words);
    expect(part).toMatchObject({ holds: 'words', unit: '' });
    expect(method).toMatchObject({ holds: 'choice', choices: ['flow', 'dip', 'brush', 'roller', 'spray'] });
  });

  test('a line without braces asks for nothing', () => {
    expect(fieldsIn('stir 1', words)).toEqual([]);
  });

  test.each([
    ['figures take the unit of their field', { 'part-a': '1201', 'part-b': '1198' }, 'weigh 1 1201g 1198g'],
    ['a unit that was typed stays', { 'part-a': '1.201 kg', 'part-b': '2.6lb' }, 'weigh 1 1.201 kg 2.6lb'],
    ['a decimal comma goes through', { 'part-a': '1201,5', 'part-b': '1198' }, 'weigh 1 1201,5g 1198g'],
    ['an empty field leaves its place out', { 'part-a': '1201', 'part-b': ' ' }, 'weigh 1 1201g'],
    [
      'a line break cannot add a line',
      { 'part-a': '1201', 'part-b': '1198\nrelease x' },
      'weigh 1 1201g 1198 release x',
    ],
  ])('%s', (_, values, line) => {
    expect(filled('weigh 1 {part-a}g {part-b}g', values)).toBe(line);
  });

  test.each([
    ['figures in order take the unit of their field', ['1201', '1198'], 'weigh 1 1201g 1198g'],
    ['a unit of its own replaces the field’s', ['2.5lb', '2.5lb'], 'weigh 1 2.5lb 2.5lb'],
    ['a unit after a space is the value’s', ['2.5', 'lb', '2.5', 'lb'], 'weigh 1 2.5lb 2.5lb'],
    ['one figure leaves the other to be asked for', ['1201'], 'weigh 1 1201g'],
    ['what no field takes stays for the reader', ['1201', '1198', '5m', 'ago'], 'weigh 1 1201g 1198g 5m ago'],
  ])('typed behind a tap, %s', (_, typed, line) => {
    expect(fillInOrder('weigh 1 {part-a}g {part-b}g', typed, shipped.every)).toBe(line);
  });

  test('the last field of words takes all that is left', () => {
    expect(fillInOrder('hold impeller-7 {reason}', ['orange', 'peel'], shipped.every)).toBe(
      'hold impeller-7 orange peel',
    );
  });

  test('a field is asked for in the units of whoever reads it, whoever the card was worded for', () => {
    expect(inUnitsOf('air {air-temperature}C {humidity}%', 'us')).toBe('air {air-temperature}F {humidity}%');
    expect(inUnitsOf('air {air-temperature}F {humidity}%', 'metric')).toBe('air {air-temperature}C {humidity}%');
  });

  test('per cent and degrees', () => {
    expect(filled('air {air-temperature}C {humidity}%', { 'air-temperature': '24', humidity: '48' })).toBe(
      'air 24C 48%',
    );
    expect(filled('air {air-temperature}C {humidity}%', { 'air-temperature': '75F', humidity: '48%' })).toBe(
      'air 75F 48%',
    );
  });
});
