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
  const context = { ...tallerALasDiez, people: ['Lia', 'Omar'] };

  it.each([
    'ojo, que la mezcla 1 no la ha pesado nadie todavía',
    'la mezcla 1 se está poniendo espesa, ojo Lia',
    'ojo Lia, la mezcla 1 está espesa',
    'Lia ojo con el 1 que está espeso',
    'se quedó la tapa abierta, ojo',
    'ojo que la 7 sigue fresca',
    'ojo Omar',
    'mucho ojo con la mezcla 1',
    '¡ojo!',
    'ojo',
  ])('given %s, then nobody is called', (said) => {
    const read = readLine(said, context);
    expect(read.kind === 'command' ? read.command.verb : '').not.toBe('eyes');
  });

  it.each(['ojo', '¡ojo!', 'OJO', 'ojo Omar'])('given no more than %s, then one tap calls', (said) => {
    expect(readLine(said, context)).toMatchObject({ kind: 'misread', misread: { calls: { ojos: 'eyes' } } });
  });

  it.each(['la mezcla 1 se está poniendo espesa, ojo Lia', 'ojo Lia, la mezcla 1 está espesa'])(
    'given %s, then the act beside it is taken or offered, and no tap calls',
    (said) => {
      const read = readLine(said, context);
      if (read.kind === 'misread') {
        expect(read.misread.meant?.map(({ line }) => line)).toContain('thick 1');
        expect(read.misread.calls).toBeUndefined();
      } else expect(read).toMatchObject({ command: { verb: 'thick' } });
    },
  );

  it.each([
    'ojo, me entró thinner',
    '¡ojos!',
    'me entró en un ojo',
    'le saltó acetona en el ojo a Omar',
    'ojo, le ha entrado endurecedor a Lia',
    'ojo, me arde',
    'acetona, ojo',
    'ojo izquierdo',
    'ojo de Lia',
    'ojo y cara con endurecedor',
    'Lia, mi ojo',
    'ojo ayuda',
  ])('given %s, then the eyes are called', (said) => {
    expect(readLine(said, context)).toMatchObject({ command: { verb: 'eyes' } });
  });
});

describe('what fell, was poured or is looked for', () => {
  it.each([
    'en la mezcla 1 han caído 601 g de A y 599 de B',
    'la 7 se ha recubierto por vertido con la mezcla 1',
    'lote del B? que no veo la etiqueta',
    'no puedo ver cuál es la lata',
  ])('given %s, then nobody is called and no tap calls', (said) => {
    const read = readLine(said, tallerALasDiez);
    expect(read.kind === 'command' ? read.command.verb : '').not.toMatch(/^(?:spill|down|eyes)$/);
    if (read.kind === 'misread') expect(read.misread.calls).toBeUndefined();
  });

  it('given that parts were coated by a pour, then no other way is offered', () => {
    const read = readLine('la 7 se ha recubierto por vertido con la mezcla 1', tallerALasDiez);
    const lines = read.kind === 'misread' ? read.misread.suggestions : read.kind === 'command' ? [read.takenAs] : [];
    expect(lines).toEqual([expect.stringMatching(/^coat .*-7 1 flow$/)]);
  });

  it.each([
    ['se ha caído Omar', 'down'],
    ['vertido de acetona en la cabina', 'spill'],
  ])('given %s, then people are called', (said, verb) => {
    expect(readLine(said, { ...tallerALasDiez, people: ['Omar'] })).toMatchObject({ command: { verb } });
  });

  it.each(['no veo', 'no veo nada', 'no puedo ver bien'])('given %s, then a tap calls', (said) => {
    const read = readLine(said, tallerALasDiez);
    expect(read.kind === 'misread' && Object.values(read.misread.calls ?? {})).toEqual(['eyes']);
  });
});
