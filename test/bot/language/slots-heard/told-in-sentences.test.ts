// What Spanish speakers tell in whole sentences: an act and how it stands since, a reading in two clauses, what is of both (invented lines).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import { tallerALasDiez } from '../shop-at-ten.ts';

const taller = {
  ...tallerALasDiez,
  parts: ['brida-1', 'brida-2', 'brida-3', 'brida-7', 'brida-8', 'brida-9'],
  live: () => ({
    parts: [
      { name: 'brida-1', phase: 'bare' as const },
      { name: 'brida-2', phase: 'bare' as const },
      { name: 'brida-3', phase: 'bare' as const },
      { name: 'brida-7', phase: 'flashing' as const },
      { name: 'brida-8', phase: 'curing' as const },
      { name: 'brida-9', phase: 'curing' as const },
    ],
    batches: [
      { number: 1, phase: 'filtered' as const },
      { number: 2, phase: 'to-weigh' as const },
    ],
    cans: [
      { number: 4, isLidOff: true, component: 'A' as const },
      { number: 5, isLidOff: false, component: 'B' as const },
    ],
  }),
};

function told(line: string): readonly string[] {
  const read = readLine(line, taller);
  if (read.kind === 'misread') return read.misread.suggestions;
  if (read.kind === 'several') return [read.lines.join('; ')];
  return read.kind === 'command' ? [read.takenAs ?? read.line] : [];
}

describe('an act, and behind it how it stands since', () => {
  it.each([
    ['le pasé el guante a la 7 y no se pega nada, ta seca', 'dry brida-7'],
    ['tiré lo que sobraba de la mezcla 1, ya está vacío el cubo', 'empty 1'],
    ['están pintadas la 1 y la 2 a rodillo con la mezcla 1', 'coat brida-1 brida-2 1 roller'],
    ['ya están las tres primeras a brocha con la mezcla 1', 'coat brida-1 brida-2 brida-3 1 brush'],
    ['la 1 la pinté a brocha y la 2 a rodillo, las dos de la mezcla 1', 'coat brida-1 1 brush; coat brida-2 1 roller'],
    ['la lata de la parte A ya tiene gas y está cerrada, no os preocupéis', 'shut 4 gas'],
    ['medidas las dos: la 8 a 92 y la 9 a 85', 'temp brida-8 92C; temp brida-9 85C'],
  ])('given %s, then it is %s', (line, act) => {
    expect(told(line)).toContain(act);
  });

  it.each([
    'ya está seca la 7',
    'está en el horno la 8',
    'la 7 está seca, ¿puede entrar ya?',
    'sigue en el horno la 8',
  ])('given %s, which may ask as well, then nothing is recorded', (line) => {
    expect(readLine(line, taller).kind).not.toBe('command');
  });

  it.each(['la 7 está para el horno', 'las piezas son para el horno', 'ese bidón es para inflamables'])(
    'given %s, which is still to come or of something else, then no act is offered',
    (line) => {
      expect(told(line).filter((each) => /^(?:cure|shipped|temp|dry|coat)/.test(each))).toEqual([]);
    },
  );
});

it.each([
  ['el termómetro del muro dice 22,5C y hay 51 por ciento', 'air 22,5C 51 por ciento'],
  ['el aparato marca 71 Fahrenheit y 45 por ciento de humedad', 'air 71 Fahrenheit 45 por ciento'],
])('given %s, a heat of no part beside what only the air has, then it is the air', (line, act) => {
  expect(told(line)[0]).toBe(act);
});

it.each([
  ['de A han salido 1001 y de B 998, mezcla 2', 'weigh 2 1001g 998g'],
  ['la báscula dio 1.204 de A y 1.199 de B en la mezcla 2', 'weigh 2 1204g 1199g'],
])('given %s, then what came out is a weight, and no part of an oven', (line, act) => {
  expect(told(line)[0]).toBe(act);
});

it('given argon at hand as a lid comes off, then no gas was put', () => {
  expect(told('destapé el bote 5 con el argón a la mano')).toEqual(['lid 5 gas']);
});

it.each(['se me hace que la 7 ya secó', 'yo diría que la 7 está seca', 'la 7 ya secó, si no me equivoco'])(
  'given %s, which is no more than thought, then nothing is recorded',
  (line) => {
    expect(['misread', 'question']).toContain(readLine(line, taller).kind);
  },
);

it.each([
  ['qué onda compa, la 8 ya anda en 93C', 'temp brida-8 93C'],
  ['oye, que la 7 ya está seca', 'dry brida-7'],
])('given %s, which asks nothing, then it is told', (line, act) => {
  expect(told(line)[0]).toBe(act);
});

it('given a pot and its weights dictated in one breath, then no number runs into the other', () => {
  expect(told('mezcla dos seiscientos dos gramos de a y quinientos noventa y ocho de b')).toEqual([
    'weigh 2 602 gramos 598gramos',
  ]);
});
