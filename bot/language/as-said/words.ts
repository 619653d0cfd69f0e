// The words of a cleaned line with their places, for readings that put others in their stead. What stands in quotes is the
// speaker's own and stays.

import type { Span } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';

/** `word`: as it is looked up, in lower case, without accents and the comma behind it. */
export interface Said extends Span {
  readonly word: string;
  /** Whether a comma stands behind it. */
  readonly comma: boolean;
}

const shape = /"(?:[^"\\]|\\.)*"|[^\s"]+/g;
/** `twenty-four`, whose halves are looked up alone. */
const hyphened = /^(\p{L}+)-(\p{L}+)$/u;
/** `seven's`, which says that it is. */
const withIs = /^(\p{L}+)['’]s$/u;

export function wordsOf(line: string, isWord: (word: string) => boolean = () => false): readonly Said[] {
  return [...line.matchAll(shape)].flatMap(({ 0: chunk, index: start }) => {
    if (chunk.startsWith('"')) return [{ text: chunk, start, end: start + chunk.length, word: chunk, comma: false }];
    const text = chunk.replace(/(?<=.)[,;:.!?]+$/, '');
    const word = withoutAccents(text.toLowerCase());
    const end = start + text.length;
    const comma = chunk.endsWith(',');
    const [, ofIs = ''] = withIs.exec(word) ?? [];
    if (isWord(ofIs)) {
      const is = start + ofIs.length;
      return [
        { text: text.slice(0, ofIs.length), start, end: is, word: ofIs, comma: false },
        { text: text.slice(ofIs.length), start: is, end, word: text.slice(ofIs.length), comma },
      ];
    }
    const [, first = '', second = ''] = hyphened.exec(word) ?? [];
    if (!isWord(first) || !isWord(second)) return [{ text, start, end, word, comma }];
    const middle = start + first.length;
    return [
      { text: text.slice(0, first.length), start, end: middle, word: first, comma: false },
      { text: text.slice(first.length + 1), start: middle + 1, end, word: second, comma },
    ];
  });
}

/** Whether the words from `at` on are those of `phrase`. */
export const saysAt = (words: readonly Said[], at: number, phrase: string): boolean =>
  // Most phrases are told apart by their beginning.
  phrase.startsWith(words[at]?.word ?? '-') && phrase.split(' ').every((word, i) => words[at + i]?.word === word);

/** Whether one of the phrases stands anywhere in the line. */
export function isSaid(line: string, phrases: readonly string[]): boolean {
  const words = wordsOf(line);
  return words.some((_, at) => phrases.some((phrase) => saysAt(words, at, phrase)));
}

/** The longest of the phrases that is said from `at` on. */
export function longestAt(words: readonly Said[], at: number, phrases: readonly string[]): string | undefined {
  let longest: string | undefined;
  for (const phrase of phrases) {
    if (saysAt(words, at, phrase) && (longest === undefined || lengthOf(phrase) > lengthOf(longest))) longest = phrase;
  }
  return longest;
}

export const lengthOf = (phrase: string): number => phrase.split(' ').length;

/** Words `from` to `to`, that one not among them, and what is said in their stead. */
export interface Change {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

export function changed(line: string, words: readonly Said[], changes: readonly Change[]): string {
  return changes.reduceRight((said, { from, to, text }) => {
    const start = words[from]?.start ?? said.length;
    const end = words[to - 1]?.end ?? start;
    return said.slice(0, start) + text + said.slice(end);
  }, line);
}
