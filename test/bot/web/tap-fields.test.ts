import { describe, expect, test } from 'vitest';
import { fieldsIn, fillLine } from '../../../bot/cards/tap-fields.ts';
import { wordsIn } from '../../../bot/language/words/languages.ts';

const words = wordsIn('en');
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

  test('per cent and degrees', () => {
    expect(filled('air {air-temperature}C {humidity}%', { 'air-temperature': '24', humidity: '48' })).toBe(
      'air 24C 48%',
    );
    expect(filled('air {air-temperature}C {humidity}%', { 'air-temperature': '75F', humidity: '48%' })).toBe(
      'air 75F 48%',
    );
  });
});
