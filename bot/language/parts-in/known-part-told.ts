// What is told of parts that are booked already: `each bracket is about 0.1 m2 and can take 120 C`, `las tres aguantan 200 grados`. It
// becomes a line of `part`, which notes it.

import type { PartName } from '../../../core/ids.ts';
import type { LineContext } from '../reading.ts';
import { partsMeant, partsOfLast } from '../slots-heard/compose.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { isUnsaid, unsaid } from '../slots-heard/unsaid.ts';
import type { Understands } from '../understood.ts';
import { type ToldBesides, toldBesides } from './told-details.ts';

/** More words that nobody knows, and it speaks of something else. */
const mostUnknown = 2;

/** Nobody says `each` of more, and looks them through on a button. */
const mostMeant = 12;

export const knownPartTold: Understands = (typed, context, strictly) => {
  if (typed.endsWith('?') || !/\d/.test(typed) || strictly(typed).kind !== 'unread') return undefined;
  const told = toldBesides(typed, context);
  const unknown = told === undefined ? 'idle' : unknownIn(told, context);
  if (told === undefined || unknown === 'idle' || unknown.length > mostUnknown) return undefined;
  const meant = meantIn(typed, context);
  const lines = meant.choices.map((parts) => ['part', ...parts, ...told.details].join(' '));
  if (lines.length === 0 || lines.some((line) => strictly(line).kind !== 'command')) return undefined;
  const [line = '', another] = lines;
  // `the brackets br-1 and br-2` are called so; what a line begins with says what it is about.
  const isCertain = told.isCertain && unknown.length < 2 && !unknown.includes(0);
  return isCertain && meant.isNamed && another === undefined ? { is: 'sure', line } : { is: 'likely', lines };
};

interface Meant {
  readonly choices: readonly (readonly PartName[])[];
  readonly isNamed: boolean;
}

/** Whoever is named round the figures; else the parts that the speaker's last act named, or those that still wait for their coat. */
function meantIn(typed: string, context: LineContext): Meant {
  const pieces = piecesOf(typed, context) ?? [];
  const { claims } = claimed(pieces, context.hearing.said);
  const kept = pieces.flatMap((piece, i) =>
    isFigure(piece, pieces[i - 1], context) ? [] : [{ piece, claim: claims[i] }],
  );
  const clause = { acts: [], pieces: kept.map(({ piece }) => piece), claims: kept.map(({ claim }) => claim) };
  const things = partsMeant(clause, context);
  if (things !== undefined && things.isUnnamed !== true)
    return {
      choices: things.choices.map((names) => names.flatMap((each) => each.split(' '))),
      isNamed: !things.isAssumed,
    };
  const last = partsOfLast(context);
  const bare = context.live?.().parts.flatMap(({ name, phase }) => (phase === 'bare' ? [name] : [])) ?? [];
  const others = bare.length > mostMeant ? [] : bare;
  return { choices: [last, others].filter(({ length }) => length > 0).slice(0, 1), isNamed: false };
}

/** `all 3 take 120C`: a number that counts them is no figure of theirs. */
const isFigure = (piece: Piece, before: Piece | undefined, { hearing: { said } }: LineContext): boolean =>
  piece.is === 'figure' ||
  (piece.is === 'number' &&
    !said.articles.has(wordOf(before) ?? '') &&
    !said.lists.all.has(wordOf(before) ?? '') &&
    !said.lists.articlesOfMany.has(wordOf(before) ?? ''));

/** Words that nobody knows; `idle` where an act is told besides, which says what the figures are of, or it only asks or denies. */
function unknownIn({ talk, isNamedFirst }: ToldBesides, context: LineContext): readonly number[] | 'idle' {
  const { said, columns } = context.hearing;
  const pieces = piecesOf(talk.join(' '), context) ?? [];
  const { claims } = claimed(pieces, said);
  const isOfColumn = (piece: Piece): boolean => columns.has(wordOf(piece) ?? '');
  // `br-2 is 5 mm thick` does not begin as a question does.
  const isIdle = isNamedFirst
    ? claims.some((claim) => unsaid.has(claim?.is ?? ''))
    : isUnsaid(pieces, { claims }, said);
  const isAct = claims.some((claim, i) => claim?.is === 'act' && pieces[i] !== undefined && !isOfColumn(pieces[i]));
  if (isIdle || isAct) return 'idle';
  return pieces.flatMap((piece, i) =>
    claims[i] === undefined && piece.is === 'word' && !isOfColumn(piece) ? [i] : [],
  );
}
