// Times in words, at ten in the morning: as the strict reader takes them, never one to come, and two where two may be meant.

import { describe, expect, it } from 'vitest';
import { timesSaid } from '../../../../bot/language/as-said/times-said.ts';
import type { LineContext } from '../../../../bot/language/reading.ts';
import { shopAtTen, tallerALasDiez, utc } from '../shop-at-ten.ts';

const said = (line: string, context: LineContext) =>
  timesSaid(line, context).map((heard) => `${heard.line}${heard.isSure ? '' : ' ?'}`);

describe('times said in English', () => {
  it.each([
    ['filter 1 at nine forty', ['filter 1 at 09:40']],
    ['filter 1 at nine oh five', ['filter 1 at 09:05']],
    ['filter 1 at 9 40', ['filter 1 at 09:40']],
    ['filter 1 at quarter to ten', ['filter 1 at 09:45']],
    ['ten to ten filter 1', ['at 09:50 filter 1']],
    ['filter 1 half past nine', ['filter 1 at 09:30']],
    ["filter 1 nine o'clock", ['filter 1 at 09:00']],
    ['filter 1 since 9:53', ['filter 1 at 9:53']],
    ['filter 1 quarter past four in the afternoon yesterday', ['filter 1 at 4:15 in the afternoon yesterday']],
    ['filter 1 20 min back', ['filter 1 20min ago']],
    ['filter 1 twenty minutes ago', ['filter 1 20min ago']],
    ['filter 1 20 ago', ['filter 1 20min ago']],
    // Two times to two pairs of ears, and times that nobody read off a clock.
    ['filter 1 half nine', ['filter 1 at 09:30 ?', 'filter 1 at 08:30 ?']],
    ['filter 1 around 9:40', ['filter 1 at 9:40 ?']],
    ['filter 1 about ten minutes ago', ['filter 1 10min ago ?']],
    ['filter 1 earlier', ['filter 1 ?']],
    ['filter 1 first thing this morning', ['filter 1 ?']],
    ['filter 1 a couple of minutes ago', ['filter 1 2min ago']],
    ['five past nine: filter 1', ['at 09:05: filter 1']],
    ['filter 12 back', ['filter 12min ago ?', 'filter 12 back ?']],
    ['filter 14 back', ['filter 14min ago ?']],
    // Still to come, or no time at all.
    ['filter 1 at ten forty', []],
    ['filter 1 at half past eleven', []],
    ['temp 7 at nine degrees', []],
    ['coat 5 to 10', []],
    ['filter 1 2 ago', []],
    ['filter 1 at 23:30 today', []],
  ] as const)('given "%s", then it is %j', (line, ways) => {
    expect(said(line, shopAtTen)).toEqual(ways);
  });
});

describe('times said in Spanish', () => {
  it.each([
    ['filtrar 1 a las nueve cuarenta', ['filtrar 1 at 09:40']],
    ['filtrar 1 a las nueve cuarenta y tres', ['filtrar 1 at 09:43']],
    ['filtrar 1 al cuarto para las diez', ['filtrar 1 at 09:45']],
    ['filtrar 1 diez para las diez', ['filtrar 1 at 09:50']],
    ['filtrar 1 desde las 9:53', ['filtrar 1 at 9:53']],
    ['filtrar 1 a menos cuarto', ['filtrar 1 at 9:45']],
    ['a y media la 1 filtrada', ['at 9:30 la 1 filtrada']],
    ['temp 7 a menos 20', []],
    ['filtrar 1 hace 20', ['filtrar 1 20min ago']],
    ['filtrar 1 hace veinte', ['filtrar 1 20min ago']],
    ['filtrar 1 20 min atrás', ['filtrar 1 20min ago']],
    ['filtrar 1 hace como 10 min', ['filtrar 1 10min ago ?']],
    ['filtrar 1 a eso de las nueve', ['filtrar 1 at 09:00 ?']],
    ['filtrar 1 denantes', ['filtrar 1 ?']],
    ['filtrar 1 hace un rato', ['filtrar 1 ?']],
    ['filtrar 1 ahorita', ['filtrar 1 ?']],
    // A can, not an hour; and a time to come.
    ['gas puesto a la tres', []],
    ['filtrar 1 a la una y diez', []],
  ] as const)('given "%s", then it is %j', (line, ways) => {
    expect(said(line, tallerALasDiez)).toEqual(ways);
  });

  it('given five in the afternoon, then the nearer half of the day is meant, and never one to come', () => {
    const atFive = { ...tallerALasDiez, now: utc('2026-03-02T17:00') };
    expect(said('filtrar 1 a las cuatro cuarenta', atFive)).toEqual(['filtrar 1 at 16:40']);
    expect(said('filtrar 1 a las cinco diez', atFive)).toEqual([]);
  });
});
