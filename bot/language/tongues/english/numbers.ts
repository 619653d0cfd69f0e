// Numbers that are said in English words: `two point four`, `twelve hundred and one`, `half a kilo`.

import type { NumbersTyped } from '../typed.ts';

export const englishNumbers: NumbersTyped = {
  words: {},
  andHalf: [],
  pastHour: {},
  spoken: {
    small: {
      ...{ one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11 },
      ...{
        twelve: 12,
        thirteen: 13,
        fourteen: 14,
        fifteen: 15,
        sixteen: 16,
        seventeen: 17,
        eighteen: 18,
        nineteen: 19,
      },
      a: 1,
    },
    tens: {
      ...{ twenty: 20, thirty: 30, forty: 40, fourty: 40, fifty: 50 },
      ...{ sixty: 60, seventy: 70, eighty: 80, ninety: 90 },
    },
    hundreds: {},
    hundred: 'hundred',
    thousand: 'thousand',
    hundredJoint: 'and',
    point: ['point', 'dot'],
    nought: ['zero', 'oh', 'o', 'nought'],
    articles: ['one', 'a'],
    onlyArticles: ['a'],
    numbersBehind: [],
    andPart: {
      'n a half': 0.5,
      'n half': 0.5,
      '& a half': 0.5,
      'and a half': 0.5,
      'and half': 0.5,
      'and a quarter': 0.25,
      'and three quarters': 0.75,
    },
    partOf: {
      ...{ 'half a': 0.5, half: 0.5, 'quarter of a': 0.25, 'a quarter of a': 0.25, 'a quarter': 0.25, quarter: 0.25 },
      ...{ 'three quarters of a': 0.75, 'three quarter': 0.75, another: 1, 'one more': 1 },
    },
    soundsLike: { to: 2, too: 2, for: 4, fore: 4, won: 1, ate: 8, tree: 3, sex: 6, tin: 10 },
    soundsOnlyLike: ['too', 'fore', 'won', 'ate', 'tree', 'sex'],
    goesOn: ['then', 'and then', 'after that', 'next'],
    inShort: {
      ...{
        'metres per second': 'm/s',
        'meters per second': 'm/s',
        'metre per second': 'm/s',
        'meter per second': 'm/s',
      },
      ...{ 'metres a second': 'm/s', 'meters a second': 'm/s', 'feet per minute': 'fpm', 'feet a minute': 'fpm' },
      ...{ 'square metres': 'm2', 'square meters': 'm2', 'square metre': 'm2', 'square meter': 'm2' },
      ...{ 'square feet': 'ft2', 'square foot': 'ft2', 'metres square': 'm2', 'meters square': 'm2' },
      ...{ millimetres: 'mm', millimeters: 'mm', millimetre: 'mm', millimeter: 'mm' },
    },
  },
};
