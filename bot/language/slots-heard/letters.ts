// The letters of the two parts of the product, as figures are told of them: `A 901g`, `901 of A`, `A came to 1001 and B to 998`.

import type { LineContext } from '../reading.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';

/** `901 of A`, `A 901g`: it stands beside a figure. A small `a` is a preposition as well, where no B is told. */
export function isLetter(tokens: readonly Token[], at: number, word: string, context: LineContext): boolean {
  if (word !== 'a' && word !== 'b') return false;
  const isAlone = word === 'a' && tokens[at]?.text === 'a';
  const isB = (token: Token, i: number): boolean => token.text.toLowerCase() === 'b' && isByFigure(tokens, i, context);
  return ((!isAlone || tokens.some(isB)) && isByFigure(tokens, at, context)) || reachFigures(tokens, at);
}

/** `A came to 1001 and B to 998`: both of them, each with a figure behind its few words. */
function reachFigures(tokens: readonly Token[], at: number): boolean {
  const reaches = (from: number): boolean => {
    const words = tokens.slice(from + 1, from + 2 + mostOfReading);
    const to = words.findIndex(isWeight);
    return to >= 0 && words.slice(0, to).every(({ kind, text }) => kind === 'word' && !/^[ab]$/i.test(text));
  };
  const letters = tokens.flatMap(({ text }, i) => (/^[ab]$/i.test(text) ? [i] : []));
  const each = ['A', 'B'].map((letter) => tokens.findIndex(({ text }) => text === letter));
  // `it got its B at 9:38, 1198 for A and 1201 for B`: told more often, they stand behind their figures.
  return letters.length === each.length && each.includes(at) && each.every((place) => place >= 0 && reaches(place));
}

/** `han salido`, `came out at exactly`. */
const mostOfReading = 4;

const isWeight = (token: Token | undefined): boolean =>
  token?.kind === 'number' || (token?.kind === 'quantity' && token.quantity.is === 'mass');

/** `A is 1201`, `de A han salido 1001` too. */
function isByFigure(tokens: readonly Token[], at: number, { hearing }: LineContext): boolean {
  const isOf = wordIn(tokens[at - 1]) !== '';
  const isLight = hearing.said.light.has(withoutAccents(tokens[at + 1]?.text.toLowerCase() ?? ''));
  if (isWeight(tokens[isLight ? at + 2 : at + 1]) || isWeight(isOf ? tokens[at - 2] : tokens[at - 1])) return true;
  const next = tokens.slice(at + 1, at + 1 + mostOfReading).findIndex(({ kind }) => kind !== 'word');
  return tokens[at]?.text === 'A' && isLight && next > 0 && isWeight(tokens[at + 1 + next]);
}
