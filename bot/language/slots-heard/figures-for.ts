// The figures of an act, as its strict line has them: a bare number in the crew's unit where only one makes sense, weights by
// their letters.

import type { LineContext } from '../reading.ts';
import type { ActRow, FigureRow } from './act-rows.ts';
import type { FigureOf, Piece } from './piece.ts';

export interface Figures {
  readonly texts: readonly string[];
  readonly used: ReadonlySet<Piece>;
  /** No number was read in a unit that it may not have been in. */
  readonly isWhole: boolean;
}

type Figure = Extract<Piece, { is: 'figure' | 'number' }>;

/** `undefined` where more figures stand there than the act takes: then it was not this act. */
export function figuresFor(row: ActRow, pieces: readonly Piece[], context: LineContext): Figures | undefined {
  const { figures = [], takes = [] } = row;
  const all = pieces.filter((piece): piece is Figure => piece.is === 'figure' || piece.is === 'number');
  const used = new Map<Piece, string>();
  let isWhole = true;
  for (const takesFigure of figures) {
    const own = all.filter((piece) => piece.is === 'figure' && isOf(piece.of, takesFigure));
    for (const piece of own.slice(0, takesFigure.most)) used.set(piece, piece.text);
    const room = takesFigure.most - own.length;
    const bare = all
      .filter(
        (piece) =>
          piece.is === 'number' &&
          !used.has(piece) &&
          !(takesFigure.most > 2 && isNamedBehind(piece, own, pieces, context)),
      )
      .slice(0, Math.max(0, room));
    for (const piece of bare) {
      const read =
        piece.is === 'number' ? (inUnitBehind(piece, own) ?? inUnit(piece, takesFigure, context)) : undefined;
      if (read !== undefined) used.set(piece, read);
    }
    if (own.length > takesFigure.most) isWhole = false;
  }
  if (takes.includes('letters')) return lettered(pieces, used, isWhole);
  return { texts: all.flatMap((piece) => used.get(piece) ?? []), used: new Set(used.keys()), isWhole };
}

/** `20 22 21 microns on 9`: behind the unit of them all, and words apart, it is no figure any more. */
function isNamedBehind(piece: Figure, own: readonly Figure[], pieces: readonly Piece[], context: LineContext): boolean {
  const last = own.at(-1);
  const [from, to] = [last === undefined ? -1 : pieces.indexOf(last), pieces.indexOf(piece)];
  const { joints } = context.hearing.said;
  return (
    from >= 0 && from < to && pieces.slice(from + 1, to).some(({ is, typed }) => is === 'word' && !joints.has(typed))
  );
}

/** A film is told in millimetres and in inches as well. */
const isOf = (of: FigureOf, row: FigureRow): boolean => of === row.of || (of === 'length' && row.of === 'film');

/** One bare number or figure as this act would take it; `undefined`: it is no such figure. */
export function readAs(row: FigureRow, piece: Piece, context: LineContext): string | undefined {
  if (piece.is === 'figure') return isOf(piece.of, row) ? piece.text : undefined;
  return piece.is === 'number' ? inUnit(piece, row, context) : undefined;
}

/** Of two that are told together, the unit of both may stand behind the last. */
const mostApart = 20;

/** `.602 and .598 kilo`. */
function inUnitBehind({ value }: Extract<Piece, { is: 'number' }>, own: readonly Figure[]): string | undefined {
  const [, figure = '', unit] = /^([\d.,]+) ?(\D+)$/.exec(own[0]?.text ?? '') ?? [];
  const ratio = value / Number(figure.replace(',', '.'));
  return unit !== undefined && ratio < mostApart && ratio > 1 / mostApart ? `${value}${unit}` : undefined;
}

function inUnit(
  { value, text, isDegrees }: Extract<Piece, { is: 'number' }>,
  row: FigureRow,
  { units = 'metric' }: LineContext,
) {
  const bare = row.bare?.[units];
  if (bare === undefined || value < bare.from || value > bare.to) return undefined;
  if (isDegrees && row.of !== 'temperature') return undefined;
  return `${text}${bare.unit}`;
}

/** `A 901g, B 899g` or `901 of A and 899 of B`: the letter before, or behind, as the first of them stands. */
function lettered(pieces: readonly Piece[], used: ReadonlyMap<Piece, string>, isWhole: boolean): Figures {
  const told = pieces.filter((piece) => piece.is === 'letter' || used.has(piece));
  const isBefore = told[0]?.is === 'letter';
  const texts = told.flatMap((piece, i) => {
    const text = used.get(piece);
    if (text === undefined) return [];
    const letter = told[isBefore ? i - 1 : i + 1];
    return [{ text, letter: letter?.is === 'letter' ? letter.letter : undefined }];
  });
  const letters = new Set(texts.flatMap(({ letter }) => letter ?? []));
  const isClear = letters.size === 0 ? texts.length === 2 : letters.size === texts.length;
  const isPair = texts.length === 2;
  // `1201 and B 1199`: of which of the two the letter is, nothing tells.
  if (isPair && letters.size === 1) return { texts: [], used: new Set(), isWhole: false };
  const sorted = texts.toSorted((one, other) => (one.letter ?? '').localeCompare(other.letter ?? ''));
  return {
    texts: sorted.map(({ text, letter }) => (isPair ? text : `${letter ?? ''} ${text}`.trim())),
    used: new Set(used.keys()),
    isWhole: isWhole && isClear,
  };
}
