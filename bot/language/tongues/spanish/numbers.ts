// Numbers that are said in Spanish words, without accents: `dos kilos y medio`, `a las ocho menos cuarto`.

import type { NumbersTyped, NumberWords } from '../typed.ts';

const spoken: NumberWords = {
  small: {
    ...{ un: 1, una: 1, uno: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, seis: 6, siete: 7, ocho: 8, nueve: 9, diez: 10 },
    ...{ once: 11, doce: 12, trece: 13, catorce: 14, quince: 15, dieciseis: 16, diecisiete: 17, dieciocho: 18 },
    ...{ diecinueve: 19, veinte: 20, veintiun: 21, veintiuno: 21, veintiuna: 21, veintidos: 22, veintitres: 23 },
    ...{ veinticuatro: 24, veinticinco: 25, veintiseis: 26, veintisiete: 27, veintiocho: 28, veintinueve: 29 },
  },
  tens: {
    ...{ diez: 10, veinte: 20, treinta: 30, cuarenta: 40, cincuenta: 50 },
    ...{ sesenta: 60, setenta: 70, ochenta: 80, noventa: 90 },
  },
  tensJoint: 'y',
  hundreds: {
    ...{ cien: 100, ciento: 100, doscientos: 200, doscientas: 200, trescientos: 300, trescientas: 300 },
    ...{ cuatrocientos: 400, cuatrocientas: 400, quinientos: 500, quinientas: 500, seiscientos: 600, seiscientas: 600 },
    ...{ setecientos: 700, setecientas: 700, ochocientos: 800, ochocientas: 800, novecientos: 900, novecientas: 900 },
  },
  thousand: 'mil',
  point: ['coma', 'punto'],
  nought: ['cero'],
  articles: ['un', 'una', 'uno'],
  onlyArticles: ['un'],
  numbersBehind: ['la', 'el', 'del', 'al'],
  andPart: { 'y medio': 0.5, 'y media': 0.5, 'y cuarto': 0.25, 'y un cuarto': 0.25, 'y tres cuartos': 0.75 },
  partOf: {
    'un cuarto de': 0.25,
    'cuarto de': 0.25,
    'tres cuartos de': 0.75,
    medio: 0.5,
    media: 0.5,
    otro: 1,
    otra: 1,
  },
  soundsLike: {},
  soundsOnlyLike: [],
  goesOn: ['luego', 'y luego', 'despues', 'y despues'],
  inShort: {
    ...{ 'metros por segundo': 'm/s', 'metro por segundo': 'm/s', 'pies por minuto': 'fpm' },
    ...{ 'metros cuadrados': 'm2', 'metro cuadrado': 'm2', 'pies cuadrados': 'ft2', 'pie cuadrado': 'ft2' },
    ...{ milimetros: 'mm', milimetro: 'mm', milesimas: 'mil' },
  },
};

export const spanishNumbers: NumbersTyped = {
  words: {
    ...{ un: 1, una: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, seis: 6, siete: 7, ocho: 8, nueve: 9, diez: 10 },
    ...{ once: 11, doce: 12, medio: 0.5, media: 0.5, otro: 1, otra: 1 },
  },
  andHalf: ['y medio', 'y media'],
  pastHour: {
    ...{ 'y cinco': 5, 'y diez': 10, 'y cuarto': 15, 'y veinte': 20, 'y veinticinco': 25, 'y media': 30 },
    ...{ 'menos cinco': -5, 'menos diez': -10, 'menos cuarto': -15, 'menos veinte': -20, 'menos veinticinco': -25 },
  },
  spoken,
};
