// A mix that is ordered in the form of a question (invented lines).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const taps = (line: string, context = shopAtTen): readonly string[] => {
  const read = readLine(line, context);
  return read.kind === 'misread' ? read.misread.suggestions : [];
};

describe('an order for a mix', () => {
  it.each([
    ['may I have a batch of two and a half kilos please?', shopAtTen, 'mix 2.5 kilos'],
    ['could you whip me up 900 g please?', shopAtTen, 'mix 900 g'],
    ['I want to mix 1.5 kg', shopAtTen, 'mix 1.5 kg'],
    ["we're gonna make 900 g now", shopAtTen, 'mix 900 g now'],
    ['voy a mezclar 2 kilos', tallerALasDiez, 'mezclar 2 kilos'],
    ['¿me preparas una mezcla de dos kilos y medio, si eres tan amable?', tallerALasDiez, 'mix 2.5 kilos'],
  ])('given %s, then one tap opens it', (line, context, tap) => {
    expect(taps(line, context)).toEqual([tap]);
  });

  it.each([
    'how much do I mix for 2 kilos?',
    'is 2 kilos enough for six of them?',
    'did anybody mix the 2 kilos?',
    'should we not make up 900 g?',
    "I don't want to mix 2 kilos",
    'I want to mix 2 kilos tomorrow',
    'gonna make 2 kilos after lunch',
  ])('given %s, which asks, denies or puts off, then no pot is opened by a tap', (line) => {
    expect(taps(line).filter((tap) => tap.startsWith('mix'))).toEqual([]);
  });
});
