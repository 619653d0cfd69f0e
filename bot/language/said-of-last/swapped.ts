// What was said last with its two the other way round: `other way round, A 599 and B 601`, or the figures of a weighing said anew in
// each other's place.

import type { LineContext } from '../reading.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import type { QuantityToken } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Strictly } from '../understood.ts';
import { takenBackAnd, type Wrong } from './put-right.ts';

/** What the line names beside the words that say so; `undefined`: it says nothing of the kind, or more than that. */
export function swapSaid(line: string, context: LineContext): readonly Piece[] | undefined {
  if (line.endsWith('?')) return undefined;
  const words = line.replaceAll(/(?<!\d)[,.;:!()]+|[,.;:!()]+(?!\d)/g, ' ').split(/\s+/);
  const { byFirst } = context.hearing.otherwise;
  const plain = words.map((word) => withoutAccents(word.toLowerCase().replaceAll("'", '')));
  for (const [at, word] of plain.entries()) {
    const phrase = byFirst.swaps.get(word)?.find((each) => `${plain.slice(at).join(' ')} `.startsWith(`${each} `));
    if (phrase === undefined) continue;
    if (isDenied(line, words.slice(0, at), context)) return undefined;
    const rest = [...words.slice(0, at), ...words.slice(at + phrase.split(' ').length)].join(' ');
    const pieces = piecesOf(rest, context) ?? [];
    return saysNoMore(pieces, context) ? pieces : undefined;
  }
  return undefined;
}

/** `no están al revés`; not `no, están al revés`, nor `no al revés`. */
function isDenied(line: string, before: readonly string[], { hearing: { otherwise } }: LineContext): boolean {
  return before.some((word, i) => {
    const isNot = otherwise.byFirst.nots.has(withoutAccents(word.toLowerCase()));
    return isNot && i < before.length - 1 && !line.includes(`${word},`);
  });
}

/** `swapped the filter on can 3` is an act of its own. */
function saysNoMore(pieces: readonly Piece[], { hearing }: LineContext): boolean {
  const { said, otherwise, ordinals } = hearing;
  const { claims } = claimed(pieces, said);
  const { opens, wrongs, closes } = otherwise.byFirst;
  return pieces.every((piece, i) => {
    if (piece.is === 'can' || piece.is === 'place' || piece.is === 'person') return false;
    const word = wordOf(piece);
    if (word === undefined || piece.is !== 'word') return true;
    const claim = claims[i]?.is;
    return (
      [otherwise.rounds, said.joints, said.articles].some((set) => set.has(word)) ||
      [opens, wrongs, closes, ordinals].some((map) => map.has(word)) ||
      claim === 'filler' ||
      claim === 'light' ||
      claim === 'pronoun'
    );
  });
}

/** `undefined`: it is put right as any other. */
export function linesSwapped(
  said: readonly Piece[],
  wrong: Wrong,
  context: LineContext,
  strictly: Strictly,
): readonly string[] | undefined {
  const { line = '' } = wrong;
  const two = twoIn(line, context);
  if (two === undefined) return isOneForOne(said, line, context) ? undefined : [];
  const figures = figuresIn(said);
  const values = two.map(({ value }) => value);
  const isOfIt = figures.every((figure) => values.includes(figure));
  if (!isOfIt && figures.length !== values.length) return undefined;
  const [first, second, ...more] = isOfIt && figures.length < 2 ? values.toReversed() : figures;
  if (first === undefined || second === undefined || more.length > 0) return [];
  const anew = withFigures(line, two, [first, second]);
  return anew === line ? [] : takenBackAnd(anew, wrong, context, strictly);
}

/** `al revés, la 5`; in which order several were done is nothing of the latest act alone. */
function isOneForOne(said: readonly Piece[], act: string, { hearing, parts }: LineContext): boolean {
  const things = said.filter(({ is }) => is !== 'word');
  const isOrdered = said.some((piece) => hearing.ordinals.has(wordOf(piece) ?? ''));
  return things.length === 1 && !isOrdered && act.split(' ').filter((word) => parts.includes(word)).length === 1;
}

/** `A 599 B 601`, right after `weigh 2 601g 599g`: no other pot is named. */
export function saysSwapped(line: string, act: string, context: LineContext): readonly Piece[] | undefined {
  const two = act.startsWith('weigh ') ? twoIn(act, context) : undefined;
  const pieces = piecesOf(line, context) ?? [];
  const figures = figuresIn(pieces);
  const isOfOther = pieces.some(({ is }) => is === 'batch' || is === 'parts' || is === 'can');
  if (two === undefined || isOfOther || figures.length !== two.length) return undefined;
  const values = two.map(({ value }) => value);
  const isSame = values.every((value, i) => value === figures[i]);
  return !isSame && values.toReversed().every((value, i) => value === figures[i]) ? pieces : undefined;
}

type Two = readonly [QuantityToken, QuantityToken];

function twoIn(act: string, { hearing }: LineContext): Two | undefined {
  const [first, second, ...more] = tokenize(act, hearing).filter(
    (token): token is QuantityToken => token.kind === 'quantity',
  );
  return first === undefined || second === undefined || more.length > 0 ? undefined : [first, second];
}

/** In the order of A and B, where the letters say so. */
function figuresIn(pieces: readonly Piece[]): readonly number[] {
  const figures = pieces.flatMap((piece) => (piece.is === 'figure' || piece.is === 'number' ? [piece.value] : []));
  const letter = pieces.find(({ is }) => is === 'letter');
  return letter?.is === 'letter' && letter.letter === 'b' ? figures.toReversed() : figures;
}

/** Each in the unit that stands there. */
function withFigures(line: string, [one, other]: Two, [first, second]: readonly [number, number]): string {
  const put = ({ text }: QuantityToken, value: number): string => text.replace(/^-?[\d.,]+/, String(value));
  return (
    line.slice(0, one.start) +
    put(one, first) +
    line.slice(one.end, other.start) +
    put(other, second) +
    line.slice(other.end)
  );
}
