// The letter of a part among numbers that are spoken: no one, and no article.

import type { NumberWords } from '../tongues/typed.ts';
import { isNumberWord } from './number-words.ts';
import { type Said, wordsOf } from './words.ts';

/** `six hundred a six oh two b`: behind a number it is Part A, and no one. */
export const withLettersApart = (line: string, words: NumberWords): readonly Said[] =>
  wordsOf(line, (word) => isNumberWord(word, words)).map((each, i, said) => {
    const before = said[i - 1]?.word ?? 'a';
    const isBehind = before !== 'a' && (before === words.hundred || isNumberWord(before, words));
    return each.word === 'a' && isBehind ? { ...each, word: 'part-a' } : each;
  });
