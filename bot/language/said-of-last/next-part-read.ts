// The same reading of the next part, which names no act any more: `and 8: 12 13 12` behind the films of 7, `la 8, 91` behind a
// temperature. It is taken where it goes on and has as many figures; else it is a tap.

import type { PartName } from '../../../core/ids.ts';
import type { LineContext } from '../reading.ts';
import { claimed } from '../slots-heard/phrases.ts';
import type { Piece } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { partsNumbered } from '../slots-heard/things.ts';
import type { Understands } from '../understood.ts';
import { familyOf } from './same-for.ts';

/** Readings of one part alone, all in one unit. */
const readingAct = /^(film|wet|temp|surface) (\S+)((?: -?\d+(?:\.\d+)?)+)([a-zµ]+)$/i;

export const nextPartRead: Understands = (line, context, strictly) => {
  const act = line.endsWith('?') ? undefined : context.last?.().said();
  const [, verb, of, figures = '', unit] = (act?.isFresh === true ? readingAct.exec(act.line ?? '') : null) ?? [];
  if (verb === undefined || of === undefined || unit === undefined) return undefined;
  const told = toldIn(line, of, context);
  if (told === undefined) return undefined;
  const read = `${verb} ${told.part} ${told.figures.join(' ')}${unit}`;
  if (strictly(read).kind !== 'command') return undefined;
  const isSame = told.goesOn && told.figures.length === figures.trim().split(' ').length;
  return isSame ? { is: 'sure', line: read } : { is: 'likely', lines: [read] };
};

interface Told {
  readonly part: PartName;
  readonly figures: readonly string[];
  readonly goesOn: boolean;
}

/** A part first, then bare figures; nothing else may be said. */
function toldIn(line: string, of: PartName, context: LineContext): Told | undefined {
  const { said } = context.hearing;
  // Behind its colon no figure is a part any more: `8: 12` are no parts 8 and 12.
  const all = line.split(/(?<=\d): ?(?=\d)/).flatMap((half) => piecesOf(half, context) ?? []);
  const goesOn = said.joints.has(all[0]?.typed ?? '');
  const pieces = goesOn ? all.slice(1) : all;
  const { claims } = claimed(pieces, said);
  const telling = pieces.filter((piece, i) => {
    const claim = claims[i]?.is;
    return claim !== 'light' && claim !== 'filler' && !said.joints.has(piece.typed);
  });
  const [first, ...rest] = telling;
  const part = first === undefined ? undefined : anotherPart(first, of, context);
  const figures = rest.flatMap((piece) => (piece.is === 'number' ? [piece.text] : []));
  return part === undefined || figures.length === 0 || figures.length < rest.length
    ? undefined
    : { part, figures, goesOn };
}

/** Of those that have its number the one that is called as the last one is. */
function anotherPart(piece: Piece, of: PartName, { live }: LineContext): PartName | undefined {
  const names =
    piece.is === 'parts' && piece.isSlip !== true
      ? piece.names
      : live === undefined
        ? []
        : partsNumbered(piece, live()).filter((name) => familyOf(name) === familyOf(of));
  const [only, second] = names;
  return second === undefined && only !== of ? only : undefined;
}
