// The grammar of numbers in words, the same in each tongue: hundreds, tens and ones, decimals behind a point, halves.

import type { NumberWords } from '../tongues/typed.ts';
import { lengthOf, type Said, saysAt } from './words.ts';

/** A number that ends before word `to`. */
export interface NumberSaid {
  /** As it is typed in figures. */
  readonly figures: string;
  readonly value: number;
  readonly to: number;
}

interface Whole {
  readonly value: number;
  readonly to: number;
}

/** Whether some number has the word in it. */
export const isNumberWord = (word: string, words: NumberWords): boolean =>
  [words.small, words.tens, words.hundreds].some((table) => Object.hasOwn(table, word)) || word === words.thousand;

const own = (table: Readonly<Record<string, number>>, word: string | undefined): number | undefined =>
  word !== undefined && Object.hasOwn(table, word) ? table[word] : undefined;

/** The longest number that begins at word `at`; figures count as words where words go on from them. */
export function numberSaid(said: readonly Said[], at: number, words: NumberWords): NumberSaid | undefined {
  const isPoint = (word: string | undefined): boolean => word !== undefined && words.point.includes(word);
  const isNought = words.nought.includes(said[at]?.word ?? '') && isPoint(said[at + 1]?.word);
  const whole = isNought ? { value: 0, to: at + 1 } : (wholeSaid(said, at, words) ?? figuresAt(said, at));
  const to = whole?.to ?? at;
  const decimals = isPoint(said[to]?.word) ? decimalsSaid(said, to + 1, words) : undefined;
  if (decimals !== undefined) {
    const figures = `${whole?.value ?? 0}.${decimals.digits}`;
    return { figures, value: Number(figures), to: decimals.to };
  }
  if (whole === undefined) return undefined;
  const part = partMore(said, whole.to, words);
  if (part !== undefined) return inFigures(whole.value + part.value, part.to);
  // Figures alone are none in words.
  return /^\d/.test(said[at]?.word ?? '') && whole.to === at + 1 ? undefined : inFigures(whole.value, whole.to);
}

const inFigures = (value: number, to: number): NumberSaid => ({ figures: `${value}`, value, to });

/** `and a half`, `y cuarto`. */
export function partMore(said: readonly Said[], at: number, { andPart }: NumberWords): Whole | undefined {
  const found = Object.entries(andPart).find(([phrase]) => saysAt(said, at, phrase));
  return found === undefined ? undefined : { value: found[1], to: at + lengthOf(found[0]) };
}

/** `half a`, `tres cuartos de`. */
export function partBefore(said: readonly Said[], at: number, { partOf }: NumberWords): Whole | undefined {
  const found = Object.entries(partOf)
    .filter(([phrase]) => saysAt(said, at, phrase))
    .sort(([one], [other]) => lengthOf(other) - lengthOf(one))[0];
  return found === undefined ? undefined : { value: found[1], to: at + lengthOf(found[0]) };
}

const figuresAt = (said: readonly Said[], at: number): Whole | undefined =>
  /^\d{1,5}$/.test(said[at]?.word ?? '') ? { value: Number(said[at]?.word), to: at + 1 } : undefined;

function wholeSaid(said: readonly Said[], at: number, words: NumberWords): Whole | undefined {
  const leads = said[at]?.word === words.thousand && words.hundred === undefined;
  const first = leads ? { value: 1, to: at } : belowThousand(said, at, words);
  if (first === undefined || said[first.to]?.word !== words.thousand) return first;
  // `uno mil doscientos`: of two numbers the first, since nobody counts one thousand so.
  if (!leads && first.value === 1 && words.hundred === undefined) return first;
  const from = first.to + 1;
  const rest = belowThousand(said, from, words) ?? joined(said, from, words, belowThousand);
  return { value: first.value * 1000 + (rest?.value ?? 0), to: rest?.to ?? from };
}

function belowThousand(said: readonly Said[], at: number, words: NumberWords): Whole | undefined {
  const hundreds = own(words.hundreds, said[at]?.word);
  if (hundreds !== undefined) return withRest({ value: hundreds, to: at + 1 }, said, words);
  const small = belowHundred(said, at, words) ?? figuresAt(said, at);
  if (small === undefined || words.hundred === undefined || said[small.to]?.word !== words.hundred)
    return small?.to === at + 1 && figuresAt(said, at) !== undefined ? undefined : small;
  return small.value === 0 || small.value > 99
    ? undefined
    : withRest({ value: small.value * 100, to: small.to + 1 }, said, words);
}

function withRest(hundreds: Whole, said: readonly Said[], words: NumberWords): Whole {
  const rest = belowHundred(said, hundreds.to, words) ?? joined(said, hundreds.to, words, belowHundred);
  return rest === undefined ? hundreds : { value: hundreds.value + rest.value, to: rest.to };
}

type Grammar = (said: readonly Said[], at: number, words: NumberWords) => Whole | undefined;

const joined = (said: readonly Said[], at: number, words: NumberWords, rest: Grammar): Whole | undefined =>
  words.hundredJoint !== undefined && said[at]?.word === words.hundredJoint ? rest(said, at + 1, words) : undefined;

export function belowHundred(said: readonly Said[], at: number, words: NumberWords): Whole | undefined {
  const tens = own(words.tens, said[at]?.word);
  if (tens !== undefined) {
    const onesAt = words.tensJoint === undefined ? at + 1 : said[at + 1]?.word === words.tensJoint ? at + 2 : -1;
    const ones =
      words.articles.includes('a') && said[onesAt]?.word === 'a' ? undefined : own(words.small, said[onesAt]?.word);
    return ones !== undefined && ones > 0 && ones < 10
      ? { value: tens + ones, to: onesAt + 1 }
      : { value: tens, to: at + 1 };
  }
  const small = own(words.small, said[at]?.word);
  return small === undefined ? undefined : { value: small, to: at + 1 };
}

/** `oh`, `cero`, and the ones: a digit each. */
export function digitSaid(word: string | undefined, words: NumberWords): number | undefined {
  if (word === undefined) return undefined;
  if (words.nought.includes(word)) return 0;
  const value = own(words.small, word);
  return value !== undefined && value < 10 && word !== 'a' ? value : undefined;
}

/** `four`, `oh five`, `twenty five`, `25`. */
function decimalsSaid(said: readonly Said[], at: number, words: NumberWords) {
  const typed = said[at]?.word ?? '';
  if (/^\d{1,3}$/.test(typed)) return { digits: typed, to: at + 1 };
  let digits = '';
  let to = at;
  for (; to < at + 3; to++) {
    const digit = digitSaid(said[to]?.word, words);
    if (digit === undefined) break;
    digits += digit;
  }
  if (digits !== '') return { digits, to };
  const whole = belowHundred(said, at, words);
  return whole === undefined ? undefined : { digits: `${whole.value}`, to: whole.to };
}
