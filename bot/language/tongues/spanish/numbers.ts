// Numbers that are said in Spanish words, without accents: `dos kilos y medio`, `a las ocho menos cuarto`.

import type { NumbersTyped } from '../typed.ts';

export const spanishNumbers: NumbersTyped = {
  words: {
    ...{ un: 1, una: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, seis: 6, siete: 7, ocho: 8, nueve: 9, diez: 10 },
    ...{ once: 11, doce: 12, medio: 0.5, media: 0.5 },
  },
  andHalf: ['y medio', 'y media'],
  pastHour: {
    ...{ 'y cinco': 5, 'y diez': 10, 'y cuarto': 15, 'y veinte': 20, 'y veinticinco': 25, 'y media': 30 },
    ...{ 'menos cinco': -5, 'menos diez': -10, 'menos cuarto': -15, 'menos veinte': -20, 'menos veinticinco': -25 },
  },
};
