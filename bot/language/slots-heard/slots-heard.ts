// A line in the speaker's own words and order, read by what stands anywhere in it: known things, figures, and words for acts. It
// turns them into strict lines; what denies, doubts, plans or asks is never turned into any.

import type { Hearing } from '../hearing.ts';
import type { Misunderstood } from '../misread-line.ts';
import type { LineContext, MisreadCode } from '../reading.ts';
import { nearest } from '../suggestions.ts';
import type { SaidAct } from '../tongues/said-words.ts';
import type { Understands, Understood } from '../understood.ts';
import type { VocabularyName } from '../vocabulary.ts';
import { actRows } from './act-rows.ts';
import { type Clause, clausesOf } from './clause.ts';
import { type Composed, composed } from './compose.ts';
import { impliedActs } from './implied-act.ts';
import { type Claimed, claimed } from './phrases.ts';
import type { Piece } from './piece.ts';
import { piecesOf } from './pieces.ts';
import type { Before } from './things.ts';
import { isUnsaid } from './unsaid.ts';

/** A sentence of more is no line about an act. */
const mostPieces = 60;
/** More words than these that nobody knows, and it speaks of something else, unless one act alone has all that it needs. */
const mostUnknown = 3;

/** What begins with these speaks of an act and is none: `amend 1 filter` filters nothing. */
const ofActs: ReadonlySet<VocabularyName> = new Set(['amend', 'set', 'help', 'find']);

/** Where the strict reader knows better what is wrong, what it asks stands. */
const mayBeOtherwise = ({ failed: { failed: code, token }, verb }: Misunderstood): boolean =>
  (verb === undefined || !ofActs.has(verb.row.name)) &&
  (open.has(code) ||
    // `flange 4`, a name with a space; `at 0.6 m/s`, no hour.
    (code === 'ambiguous-number' && /^\p{L}/u.test(token?.text ?? '')) ||
    (code === 'impossible' && /^\d+(?:\.\d+)?$/.test(token?.text ?? '')));
const open: ReadonlySet<MisreadCode> = new Set(['unknown-verb', 'left-over', 'incomplete', 'unit-missing']);

export const slotsHeard: Understands = (line, context, strictly) => {
  const strict = strictly(line);
  if (line.endsWith('?') || strict.kind !== 'unread' || !mayBeOtherwise(strict.read)) return undefined;
  return heardIn(line, context);
};

function heardIn(line: string, context: LineContext): Understood | undefined {
  const pieces = piecesOf(line, context);
  if (pieces === undefined || pieces.length > mostPieces) return undefined;
  const { said } = context.hearing;
  const { claims, phrases } = claimed(pieces, said);
  const heard = heardOf(pieces, { claims, phrases }, context);
  if (heard !== undefined || claims.some((claim) => claim?.is === 'act')) return heard;
  const mended = slipsMended(pieces, claims, context.hearing);
  const meant = mended === undefined ? undefined : heardOf(mended, claimed(mended, said), context);
  return meant && { is: 'likely', lines: meant.is === 'sure' ? [meant.line] : meant.lines };
}

/** `bracket-8 is dyr`, `way batch 1 901 899`: an unknown word as the nearest act, or the one that sounds like it. */
function slipsMended(
  pieces: readonly Piece[],
  claims: Claimed['claims'],
  { said: { actWords, heardAs }, noSlips }: Hearing,
): readonly Piece[] | undefined {
  // Of words alone any may be a slip of any.
  if (pieces.every(({ is }) => is === 'word' || is === 'place' || is === 'time')) return undefined;
  for (const [at, piece] of pieces.entries()) {
    if (piece.is !== 'word' || claims[at] !== undefined || noSlips.has(piece.word)) continue;
    const sounded = at === 0 ? heardAs.get(piece.word) : undefined;
    const [near] = sounded === undefined ? nearest(piece.word, actWords) : [sounded];
    if (near !== undefined && piece.word.length > 2) return pieces.with(at, { ...piece, word: near });
  }
  return undefined;
}

function heardOf(pieces: readonly Piece[], { claims, phrases }: Claimed, context: LineContext): Understood | undefined {
  const { said } = context.hearing;
  if (isUnsaid(pieces, { claims, phrases }, said)) return undefined;
  const unknown = claims.filter((claim) => claim === undefined).length;
  // A figure that nobody could read, `24-26C`, or a name that nobody has told, `a-9`, is never left out of what is offered.
  const isLost = claims.some((claim, i) => claim === undefined && /\d/.test(pieces[i]?.typed ?? ''));
  // A verb alone that needs a thing names nothing, nor does a letter with it: what it needs is asked.
  const isAlone = claims.every(
    (claim, i) =>
      (claim?.is === 'act' && actRows[claim.act].on !== 'nothing') ||
      (claim === undefined && (pieces[i]?.typed.length ?? 0) < 3),
  );
  if (isLost || isAlone) return undefined;
  const clauses = clausesOf(pieces, { claims, phrases }, said);
  const heard = understoodAs(eachHeard(clauses, context));
  return unknown > mostUnknown && (heard?.is !== 'likely' || heard.lines.length > 1) ? undefined : heard;
}

/** `coat impeller-7 1 spray?` asks. */
export function onlyAsksOrDenies(line: string, context: LineContext): boolean {
  const pieces = piecesOf(line, context) ?? [];
  return line.endsWith('?') || isUnsaid(pieces, claimed(pieces, context.hearing.said), context.hearing.said);
}

function eachHeard(clauses: readonly Clause[], context: LineContext): readonly (readonly Composed[])[] {
  let before: Before | undefined;
  return clauses.map((clause) => {
    const madeOf = (acts: readonly SaidAct[]) => acts.flatMap((act) => composed(act, clause, before, context) ?? []);
    const said = madeOf(clause.acts);
    const made = said.length > 0 ? said : madeOf(impliedActs(clause, context));
    const [first] = made;
    if (first !== undefined) before = { parts: first.parts, ...(first.batch !== undefined && { batch: first.batch }) };
    return made;
  });
}

function understoodAs(heard: readonly (readonly Composed[])[]): Understood | undefined {
  const lines = heard.flatMap((made) => made.flatMap((each) => each.lines));
  const [line, ...others] = lines;
  if (line === undefined) return undefined;
  const isSure = heard.every((made) => made.length === 1 && made[0]?.isSure === true);
  if (!isSure) return { is: 'likely', lines };
  return others.length === 0 ? { is: 'sure', line } : { is: 'several', lines };
}
