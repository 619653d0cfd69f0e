// Numbers in words, in both tongues: which figures are made of them, and which words are none.

import { describe, expect, it } from 'vitest';
import { numbersSaid } from '../../../../bot/language/as-said/numbers-said.ts';
import type { LineContext } from '../../../../bot/language/reading.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const said = (line: string, context: LineContext) =>
  numbersSaid(line, context).map((heard) => `${heard.line}${heard.isSure ? '' : ' ?'}`);

describe('an article before a number', () => {
  it('given un, in Spanish, then it counts nothing', () => {
    expect(said('aire veintidós grados y medio y un cincuenta y uno por ciento', tallerALasDiez)).toEqual([
      'aire 22.5 grados y un 51 por ciento',
    ]);
  });
});

describe('numbers said in English', () => {
  it.each([
    ['mix two point four kilos', ['mix 2.4 kilos']],
    ['mix 2 point 4 kilos', ['mix 2.4 kilos']],
    ['mix two and a half kilos', ['mix 2.5 kilos']],
    ['mix two kilos and a half', ['mix 2.5 kilos']],
    ['mix half a kilo', ['mix 0.5 kilo']],
    ['mix two kilos four hundred', ['mix 2.4 kilos']],
    ['mix kilo and a half', ['mix 1.5 kilo']],
    ['mix zero point eight kilos', ['mix 0.8 kilos']],
    ['temp impeller-7 one ninety five', ['temp impeller-7 1 95', 'temp impeller-7 195']],
    // The number of a thing begins no other.
    ['temp impeller seven ninety five', ['temp impeller 7 95']],
    ['lot seven seven four zero eleven pounds', expect.arrayContaining(['lot 7740 11 pounds'])],
    ['coat impeller ate from batch too', ['coat impeller 8 from batch 2']],
    ['filter batch to', ['filter batch 2 ?']],
    ['mix a hundred grams', ['mix 100 grams']],
    ['weigh 1 twelve hundred and one grams', ['weigh 1 1201 grams']],
    ['temp impeller-7 one hundred and five', ['temp impeller-7 105']],
    ['air twenty-four point five degrees', ['air 24.5 degrees']],
    // Several ways to cut them: which is meant shows when they are read.
    ['weigh 1 eleven ninety eight', ['weigh 1 11 98', 'weigh 1 1198']],
    ['air twenty four forty eight', ['air 24 48', 'air 2448']],
    ['weigh one twelve oh one eleven ninety eight', ['weigh 1 1201 11 98', 'weigh 1 1201 1198']],
    ['weigh 2 six hundred and five ninety nine', expect.arrayContaining(['weigh 2 605 99', 'weigh 2 600 and 599'])],
    // Behind a number the letter of a part is none.
    ['weigh 2 six hundred a five ninety nine b', expect.arrayContaining(['weigh 2 600 a 599 b'])],
    ['prep one thru four', ['prep 1 thru 4']],
    // What was heard for a number is never sure.
    ['mix too point four kilos', ['mix 2.4 kilos ?']],
    ['mix to kilos', ['mix 2 kilos ?']],
    // Before a number it is none.
    ['stirred can for two minutes', ['stirred can for 2 minutes']],
    // No numbers.
    ['the other one is dry', []],
    ['start a mix', []],
    ['hold impeller-7 "one run"', []],
    ['mix 2.4kg', []],
  ] as const)('given "%s", then it is %j', (line, ways) => {
    expect(said(line, shopAtTen)).toEqual(ways);
  });
});

describe('a number that is', () => {
  it.each([
    ["seven's dry", ["7's dry"]],
    ["it's dry", []],
    ['who brushed impeller seven?', ['who brushed impeller 7?']],
    ['we have six impellers to do', ['we have 6 impellers to do']],
  ])('given "%s", then it is %j', (line, ways) => {
    expect(said(line, shopAtTen)).toEqual(ways);
  });
});

describe('numbers said in Spanish', () => {
  it.each([
    ['mezclar dos coma cuatro kilos', ['mezclar 2.4 kilos']],
    ['aplicar la uno', ['aplicar la 1']],
    ['aplicar del uno al cuatro', ['aplicar del 1 al 4']],
    ['ponme uno de esos', []],
    ['mezclar dos kilos cuatrocientos', ['mezclar 2.4 kilos']],
    ['mezclar 2 kilos con 400 gramos', ['mezclar 2.4 kilos']],
    ['mezclar dos y medio kilos', ['mezclar 2.5 kilos']],
    ['mezclar dos kilos y cuarto', ['mezclar 2.25 kilos']],
    ['mezclar un cuarto de kilo', ['mezclar 0.25 kilo']],
    ['aire veinticuatro grados cuarenta y ocho por ciento', ['aire 24 grados 48 por ciento']],
    ['pesar uno mil doscientos uno mil ciento noventa y ocho', ['pesar 1 1201 1198']],
    ['sonda impulsor-7 ciento cinco', ['sonda impulsor-7 105']],
    ['la mezcla uno', ['la mezcla 1']],
    ['mezclar cero coma ocho kilos', ['mezclar 0.8 kilos']],
    ['mezclar kilo y medio', ['mezclar 1.5 kilo']],
    // An article is no number.
    ['una mezcla nueva', []],
    ['dar una mano', []],
  ] as const)('given "%s", then it is %j', (line, ways) => {
    expect(said(line, tallerALasDiez)).toEqual(ways);
  });
});
