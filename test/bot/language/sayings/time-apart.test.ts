// The clause that says when, beside what was done, what is to be done, and what was denied (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import type { LineContext, Reading } from '../../../../bot/language/reading.ts';
import { isDone, withoutTime } from '../../../../bot/language/sayings/time-apart.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const inUse = {
  batches: [1],
  parts: ['flange-1', 'flange-2'],
  people: ['Omar'],
  live: () => ({
    parts: [
      { name: 'flange-1', phase: 'curing' as const },
      { name: 'flange-2', phase: 'flashing' as const },
    ],
    batches: [{ number: 1, phase: 'blending' as const }],
    cans: [{ number: 3, isLidOff: true, component: 'A' as const }],
  }),
};
const shop: LineContext = { ...shopAtTen, ...inUse };
const taller: LineContext = { ...tallerALasDiez, ...inUse };

const offered = (read: Reading): readonly string[] => (read.kind === 'misread' ? read.misread.suggestions : []);
/** A question, or taking back what was said last, is no act. */
const actsOf = (read: Reading, context: LineContext): readonly string[] =>
  read.kind === 'command' || read.kind === 'several'
    ? [read.line]
    : offered(read).filter((each) => each !== 'undo' && readLine(each, context).kind !== 'question');

describe('a clause that says when', () => {
  it.each([
    ['I rinsed the brush out in acetone as soon as the last one was coated', shop, 'flush brush acetone', 'as soon as'],
    ['gave can 3 a good stir before anybody poured from it', shop, 'prestir 3', 'before'],
    ['Omar stirred can 3 until it looked even', shop, 'prestir 3', 'until'],
    ['flange-2 was dry when I touched it', shop, 'dry flange-2', 'when'],
    ['once it was all out, I closed can 3', shop, 'shut 3', 'once'],
    ['removí la lata 3 antes de echar nada', taller, 'prestir 3', 'antes de'],
    ['he cerrado la lata 3 en cuanto acabé de verter', taller, 'shut 3', 'en cuanto'],
  ])('given %s, then the act is one tap, which says what it leaves out', (line, context, act, when) => {
    const read = readLine(line, context);
    expect(offered(read)).toContain(act);
    expect(read.kind === 'misread' && read.misread.untaken?.join()).toContain(when);
  });

  it.each([
    ['stir can 3 before anybody pours from it', shop],
    ['can 3 needs a stir before we pour', shop],
    ['make sure can 3 is stirred before we pour', shop],
    ['get can 3 stirred before you pour', shop],
    ['leave can 3 closed until Monday', shop],
    ['keep the lid on 3 until we need it', shop],
    ['rinse the brush as soon as you are done', shop],
    ['the brush gets rinsed as soon as I am done', shop],
    ['we should have stirred can 3 before we poured', shop],
    ['I would have closed can 3 once it was empty', shop],
    ['never stirred can 3 before we poured', shop],
    ['nobody closed can 3 after we poured', shop],
    ['I think Omar stirred can 3 before we poured', shop],
    ['did Omar stir can 3 before we poured', shop],
    ['flange-2 was to be dry before lunch', shop],
    ['flange-2 goes in the oven once it is dry', shop],
    ['put flange-2 in the oven as soon as it is dried', shop],
    ['remueve la lata 3 antes de verter', taller],
    ['que alguien remueva la lata 3 antes de verter', taller],
    ['hay que cerrar la lata 3 en cuanto acabemos', taller],
    ['cerraré la lata 3 en cuanto acabe', taller],
    ['cierra la lata 3 que abrí antes de comer', taller],
    ['lave la brocha en cuanto termine', taller],
    ['no cerré la lata 3 antes de comer', taller],
    ['nadie removió la lata 3 antes de verter', taller],
    ['creo que removí la lata 3 antes de verter', taller],
    ['deja tapada la 1 hasta que filtre', taller],
    ['la 2 va al horno cuando seque', taller],
  ])('given %s, then no act is taken or offered', (line, context) => {
    expect(actsOf(readLine(line, context), context)).toEqual([]);
  });

  it('given a time in it, then it is not left out', () => {
    expect(withoutTime('I closed can 3 before 9:40', shop)).toBeUndefined();
  });

  it.each(['I washed it', 'washed it', 'Omar has washed it', 'flange-1 was sanded', 'we just closed it'])(
    'given %s, then it tells what was done',
    (line) => expect(isDone(line, shop)).toBe(true),
  );

  it.each(['wash it', 'it is washed', 'leave it covered', 'it has to be washed', 'I need it', 'lávalo', 'lavaré la 2'])(
    'given %s, then it does not',
    (line) => expect(isDone(line, shop)).toBe(false),
  );
});

describe('what was done next', () => {
  it('given it behind another act, then both are said', () => {
    expect(readLine('paré el agitador de la mezcla 1 y luego la filtré', taller)).toMatchObject({
      kind: 'several',
      lines: [expect.stringMatching(/^par/), expect.stringMatching(/^filt/)],
    });
  });

  it.each(['paro el agitador de la 1 y luego la filtro', 'paré la mezcla 1, luego lavo la brocha'])(
    'given %s, then what is still to come is neither taken nor offered',
    (line) => {
      expect(actsOf(readLine(line, taller), taller).join()).not.toMatch(/filtr|brush|brocha/);
    },
  );
});

describe('what only says which thing is meant', () => {
  it.each([
    ['flange-1, the one in the oven, reads 90', shop],
    ['flange-1, which is in the oven, reads 90', shop],
    ['la 1, la que está en el horno, marca 90 grados', taller],
  ])('given %s, then no act is read in it', (line, context) => {
    expect(readLine(line, context)).toMatchObject({ kind: 'command', command: { verb: 'temp' } });
  });

  it.each([
    ['flange-1, the one I think is in the oven, might read 90', shop],
    ['flange-1, which nobody read, should be at 90', shop],
    ['la 1, la que no está en el horno, no marca 90', taller],
  ])('given %s, then no act is taken or offered', (line, context) => {
    expect(actsOf(readLine(line, context), context)).toEqual([]);
  });
});

describe('a number with its mark', () => {
  it('given No. in front of it, then it denies nothing', () => {
    expect(readLine('No. 1: 90 C.', shop)).toMatchObject({ kind: 'command', takenAs: 'temp flange-1 90 C' });
  });

  it.each(['No. 1: not dry', 'no, 1: 90 C', 'No. 1: dry?'])('given %s, then no act is taken', (line) => {
    expect(readLine(line, shop).kind).not.toBe('command');
  });
});

describe('an act that the whole line hardly speaks for', () => {
  it('given a thing that it does not name, then it is no tap', () => {
    const bare = { ...shop, live: () => ({ ...inUse.live(), parts: [{ name: 'flange-2', phase: 'bare' as const }] }) };
    const read = readLine('blasted some argon in can 3 n capped it', bare);
    expect(offered(read)).toEqual(['blanket 3']);
  });

  it.each(['did somebody blow argon in can 3 and cap it', 'we will blow argon in can 3 and cap it'])(
    'given %s, then no act is taken or offered',
    (line) => {
      expect(actsOf(readLine(line, shop), shop)).toEqual([]);
    },
  );
});

describe('a verb of what is to come', () => {
  it.each([
    'dejaré retenida la 2 por descuelgues',
    'la 2 quedará retenida por poros',
    'limpiaré la 2 con acetona',
    'debí cerrar la lata 3 en cuanto acabé',
  ])('given %s, then no act is taken or offered', (line) => {
    expect(actsOf(readLine(line, taller), taller)).toEqual([]);
  });
});

describe('what is denied or doubted', () => {
  it.each([
    ['I wish I had stirred can 3 before we poured', shop],
    ['I meant to close can 3 once it was empty', shop],
    ['nobody stirred can 3 before we poured', shop],
    ['quise remover la lata 3 antes de verter', taller],
  ])('given %s, then no other act is offered instead', (line, context) => {
    expect(actsOf(readLine(line, context), context)).toEqual([]);
  });
});
