// The speaker's last act told anew in another of its ways, as `it cures at room temperature, not in the oven`: by what the words of
// the line speak for among the ways of that act. What the line does not name stays what it was.

import type { LineContext } from '../reading.ts';
import { clauseFor } from '../sayings/clause-of-act.ts';
import { actOfLine } from '../sayings/likeliest.ts';
import { actRows } from '../slots-heard/act-rows.ts';
import { composed } from '../slots-heard/compose.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { isSaidAct, type SaidAct, saidActs } from '../tongues/said-words.ts';

/** As likely as this the words are of one of its ways. */
const leastShare = 0.3;

export function retold(line: string, act: string, context: LineContext): readonly string[] {
  const was = actOfLine(act);
  const [verb = '', ...words] = act.split(' ');
  const ways = saidActs.filter((each) => each.startsWith(`${verb} `) && actRows[each].on === 'parts');
  if (!isSaidAct(was) || !ways.includes(was)) return [];
  const told = clausesOf(line, context).flatMap((pieces) => {
    const way = wayIn(pieces, ways, context);
    return way === undefined || (way === was && denies(pieces, context)) ? [] : [{ way, pieces }];
  });
  const [only, ...others] = told;
  if (only === undefined || others.some(({ way }) => way !== only.way)) return [];
  const { claims } = claimed(only.pieces, context.hearing.said);
  const clause = clauseFor(only.way, only.pieces, claims, context);
  const parts = words.filter((word) => context.parts.includes(word));
  const lines = composed(only.way, clause, { parts }, context)?.ways ?? [];
  return lines.flatMap(([one, ...more]) => (one === undefined || one === act || more.length > 0 ? [] : [one]));
}

/** Parted where the line is, and before what denies: `in the oven, not in the room`. */
function clausesOf(line: string, context: LineContext): readonly (readonly Piece[])[] {
  const clauses: Piece[][] = [[]];
  for (const piece of piecesOf(line, context) ?? []) {
    if (isNot(piece, context)) clauses.push([]);
    clauses.at(-1)?.push(piece);
    if (piece.isBreak) clauses.push([]);
  }
  return clauses.filter(({ length }) => length > 0);
}

const denies = ([first]: readonly Piece[], context: LineContext): boolean => isNot(first, context);

const isNot = (piece: Piece | undefined, { hearing: { otherwise } }: LineContext): boolean => {
  const word = wordOf(piece) ?? '';
  return otherwise.byFirst.nots.get(word)?.includes(word) === true;
};

/** The likeliest. */
function wayIn(pieces: readonly Piece[], ways: readonly SaidAct[], { hearing }: LineContext): SaidAct | undefined {
  const typed = pieces.map((piece) => piece.typed).join(' ');
  const [top] = hearing.weighed
    .weigh(typed)
    .flatMap(({ meaning, share }) => ways.flatMap((way) => (way === meaning && share >= leastShare ? [way] : [])));
  return top;
}
