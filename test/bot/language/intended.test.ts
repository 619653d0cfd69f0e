// What somebody is about to do is no act, and no tap says it (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import type { Reading } from '../../../bot/language/reading.ts';
import { shopAtTen, tallerALasDiez } from './shop-at-ten.ts';

const inUse = {
  batches: [1],
  parts: ['flange-1', 'flange-2'],
  live: () => ({
    parts: [
      { name: 'flange-1', phase: 'bare' as const },
      { name: 'flange-2', phase: 'dry' as const },
    ],
    batches: [{ number: 1, phase: 'filtered' as const }],
    cans: [],
  }),
};
const shop = { ...shopAtTen, ...inUse };
const taller = { ...tallerALasDiez, ...inUse };

const linesOf = (read: Reading): readonly string[] =>
  read.kind === 'misread'
    ? read.misread.suggestions
    : 'takenAs' in read && read.takenAs !== undefined
      ? [read.takenAs]
      : [read.kind];

const acts = /^(?:cure|out|coat|command)/;

describe('what is about to be done', () => {
  it.each([
    'ahorita meto la 2 al horno',
    'ahora mismo meto la 2 al horno',
    'ahora meto la 2 en el horno',
    'la 2 la meto ahorita',
    'meto la 2 al horno ahorita',
    'en seguida meto la 2',
    'voy metiendo la 2 al horno',
    'en un minuto meto la 2 al horno',
    'ahora pinto la 1 con brocha de la mezcla 1',
    'enseguida pinto la 1 con brocha de la mezcla 1',
    'ahora le doy una mano a la 1 con brocha',
    'meto la 2 al horno en 5 minutos',
    'dentro de 5 minutos meto la 2 al horno',
  ])('given %s, then it is neither taken nor offered', (line) => {
    expect(linesOf(readLine(line, taller)).filter((each) => acts.test(each))).toEqual([]);
  });

  it.each([
    'putting 2 in the oven in a sec',
    '2 in the oven in 5 minutes',
    'putting flange-2 in the oven shortly',
    'brushing 1 from batch 1 in a moment',
  ])('given %s, then it is neither taken nor offered', (line) => {
    expect(linesOf(readLine(line, shop)).filter((each) => acts.test(each))).toEqual([]);
  });

  it.each([
    ['ahorita metí la 2 al horno', 'cure flange-2 oven'],
    ['meto la 2 al horno', 'cure flange-2 oven'],
    ['ahora pintó la 1 con brocha de la mezcla 1', 'coat flange-1 1 brush'],
    ['ahorita la 2 marca 86', 'temp flange-2 86C'],
  ])('given %s, which has happened, then it is told', (line, told) => {
    expect(linesOf(readLine(line, taller))).toContain(told);
  });
});
