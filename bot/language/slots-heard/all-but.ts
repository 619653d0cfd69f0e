// `all of 87 but 3`, `todas menos la 2 y la 6`: what is left out of many is one piece, so that nobody takes it for what was done.

import { longestAt } from '../parts-said/numbers-listed.ts';
import { partsKnown } from '../parts-said/parts-known.ts';
import type { LineContext } from '../reading.ts';
import { type Piece, wordOf } from './piece.ts';

export function leftOutIn(pieces: readonly Piece[], context: LineContext): readonly Piece[] {
  const { said } = context.hearing;
  const words = pieces.map((piece) => ({ text: wordOf(piece) ?? '' }));
  const many = pieces.findIndex(
    (piece, at) => (piece.is === 'one-of' && piece.isSome === true) || isOfMany(words, at, context),
  );
  if (many === -1) return pieces;
  for (let from = many + 1; from < pieces.length; from++) {
    const length = longestAt(words, from, said.lists.except);
    if (length === undefined) continue;
    let at = from + length;
    let to = at;
    const names: (readonly string[])[] = [];
    for (; at < pieces.length; at++) {
      const piece = pieces[at];
      const word = words[at]?.text ?? '';
      const of = piece === undefined ? [] : named(piece, context);
      const isSmall = said.articles.has(word) || said.joints.has(word) || isArticle(word, context);
      if (of.length === 0 && !isSmall) break;
      names.push(...of);
      if (of.length > 0) to = at + 1;
      if (piece?.isBreak === true && of.length > 0) break;
    }
    const last = pieces[to - 1];
    if (names.length === 0 || last === undefined) continue;
    const typed = pieces
      .slice(from, to)
      .map((piece) => piece.typed)
      .join(' ');
    return [...pieces.slice(0, from), { is: 'but', names, typed, isBreak: last.isBreak }, ...pieces.slice(to)];
  }
  return pieces;
}

const isArticle = (word: string, { hearing: { said } }: LineContext): boolean =>
  said.lists.articles.some((phrase) => phrase.length === 1 && phrase[0] === word);

/** Each part by its name, or by what its number may be of. */
function named(piece: Piece, { parts }: LineContext): readonly (readonly string[])[] {
  if (piece.is === 'parts') return piece.names.map((name) => [name]);
  if (piece.is !== 'number' || piece.isDegrees) return [];
  const numbered = partsKnown(parts).numbers.get(piece.value) ?? [];
  return numbered.length === 0 ? [] : [numbered];
}

function isOfMany(words: readonly { readonly text: string }[], at: number, { hearing }: LineContext): boolean {
  const phrases = (hearing.said.byFirst.get(words[at]?.text ?? '') ?? []).flatMap(({ words: each, says }) =>
    says.is === 'many' ? [each] : [],
  );
  return longestAt(words, at, phrases) !== undefined;
}
