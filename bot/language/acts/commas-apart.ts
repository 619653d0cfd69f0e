// `p1,p2`: names with a comma and no space between them, as pieces of their own.

import type { Token, Word } from '../typed/token.ts';

/** A comma between two digits is a decimal one: `6x0,8m2`. */
const between = /,(?!\d)|(?<!\d),/;

export function commasApart<T extends Token>(token: T): readonly (T | Word)[] {
  return token.kind === 'word' && token.text.includes(',') && between.test(token.text) ? piecesOf(token) : [token];
}

function piecesOf({ text, start }: Word): readonly Word[] {
  return [...text.matchAll(/(?:[^,]|(?<=\d),(?=\d))+/g)].map((found) => {
    const from = start + found.index;
    const [piece] = found;
    return { kind: 'word', word: piece.toLowerCase(), text: piece, start: from, end: from + piece.length };
  });
}
