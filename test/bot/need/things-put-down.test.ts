// What is put or turned down is a thing, and a warning is no cry: neither rings, nor is a bell offered for it. Common practice, no
// source.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { shopAtTen, tallerALasDiez } from '../language/shop-at-ten.ts';

describe('a thing that is put down', () => {
  it.each([
    'turn that radio down will ya',
    'whoever has the radio turn it down lol',
    'argon’s on the A can and the lid is banged down',
  ])('given %s, then nobody is called and no tap calls', (said) => {
    const read = readLine(said, shopAtTen);
    expect(read).not.toMatchObject({ command: { verb: 'down' } });
    if (read.kind === 'misread') expect(read.misread.calls).toBeUndefined();
  });

  it.each(['kari is down', 'the new guy went down', 'man down by the booth'])(
    'given %s, then people are called',
    (said) => {
      expect(readLine(said, { ...shopAtTen, people: ['Kari'] })).toMatchObject({ command: { verb: 'down' } });
    },
  );
});

describe('what is said of no calamity', () => {
  it.each([
    ['gonna throw 7 in the oven after my smoke', shopAtTen],
    ['oh no, I read it upside down, 86 it was', shopAtTen],
    ['late this morning because the bus broke down', shopAtTen],
    ['could you pop down 23 degrees and 52 percent for me', shopAtTen],
    ['keeping number 7 back, there is a run down the side', shopAtTen],
    ['el 9 ha salido con ojos de pez, lo aparto', tallerALasDiez],
  ])('given %s, then nobody is called and no tap calls', (said, context) => {
    const read = readLine(said, context);
    expect(read.kind === 'command' ? read.command.verb : '').not.toMatch(/^(?:fire|down|eyes)$/);
    if (read.kind === 'misread') expect(read.misread.calls).toBeUndefined();
  });

  it('given tired eyes behind a correction, then the eyes are called only by a tap', () => {
    expect(readLine('wait its 42%, eyes r fried', shopAtTen)).toMatchObject({ kind: 'misread' });
  });

  it.each([
    ['there is a smoke in the booth', 'fire'],
    ['my eyes r burning', 'eyes'],
  ])('given %s, then people are called', (said, verb) => {
    expect(readLine(said, shopAtTen)).toMatchObject({ command: { verb } });
  });
});

describe('a warning', () => {
  it('given ojo, que with a comma, then nobody is called', () => {
    const read = readLine('ojo, que la mezcla 1 no la ha pesado nadie todavía', tallerALasDiez);
    expect(read).toMatchObject({ kind: 'misread' });
  });

  it.each(['ojo, me entró thinner', '¡ojos!'])('given %s, then the eyes are called', (said) => {
    expect(readLine(said, tallerALasDiez)).toMatchObject({ command: { verb: 'eyes' } });
  });
});
