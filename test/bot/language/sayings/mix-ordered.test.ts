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
    ['I would like to mix 1.5 kilos, the tank is big', shopAtTen, 'mix 1.5 kilos'],
    ['I want to mix two and a half kilos for the valve', shopAtTen, 'mix 2.5 kilos'],
    ['mix me up 900 g', shopAtTen, 'mix 900 g'],
    ['would it be possible to have a batch of 1.8 kilos?', shopAtTen, 'mix 1.8 kilos'],
    ["we're gonna make 900 g now", shopAtTen, 'mix 900 g now'],
    ['voy a mezclar 2 kilos', tallerALasDiez, 'mezclar 2 kilos'],
    ['¿me preparas una mezcla de dos kilos y medio, si eres tan amable?', tallerALasDiez, 'mezclar dos kilos y medio'],
    // Whom it is for, and why, are no part of it.
    ['¿me haces dos kilos? Son para las seis del armario.', tallerALasDiez, 'mezclar dos kilos'],
    ['quiero hacer dos kilos, que hay seis piezas', tallerALasDiez, 'mezclar dos kilos'],
    ['necesito kilo y medio para las seis piezas', tallerALasDiez, 'mezclar kilo y medio'],
    ['22 grados, 51 de humedad y quiero dos kilos', tallerALasDiez, 'air 22C 51%; mezclar dos kilos'],
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
    'I want to mix 2 kilos, but not today',
    'I want to mix 2 kilos for tomorrow',
    'gonna make 2 kilos after lunch',
  ])('given %s, which asks, denies or puts off, then no pot is opened by a tap', (line) => {
    expect(taps(line).filter((tap) => tap.startsWith('mix'))).toEqual([]);
  });

  it.each(['prepara dos kilos, con eso basta', 'hazme dos kilos y medio'])(
    'given %s, which orders, then it is taken as it stands',
    (line) => {
      expect(readLine(line, tallerALasDiez)).toMatchObject({ kind: 'command', command: { verb: 'mix' } });
    },
  );

  it('given the air before an order, then both are taken', () => {
    const read = readLine('estamos a 22 con 51 por ciento, prepárame dos kilos', tallerALasDiez);
    expect(read).toMatchObject({ kind: 'several', lines: ['air 22C 51 por ciento', 'mezclar dos kilos'] });
  });

  it.each([
    'no quiero dos kilos',
    'prepárame dos kilos para mañana',
    'dame dos',
    'dame 2 minutos',
    '¿cuánto para dos kilos?',
  ])('given %s, then no pot is opened', (line) => {
    const read = readLine(line, tallerALasDiez);
    expect(read).not.toMatchObject({ command: { verb: 'mix' } });
    expect(taps(line, tallerALasDiez).filter((tap) => /^(?:mix|mezclar)/.test(tap))).toEqual([]);
  });
});
