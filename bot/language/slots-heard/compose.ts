// The strict line of one clause: its act, and the things and figures that were heard, in the order in which a strict line has them.
// What is live decides where a thing is named only half.

import type { PartName } from '../../../core/ids.ts';
import { methodRows } from '../../../core/methods.ts';
import type { LiveNow } from '../live-now.ts';
import type { LineContext } from '../reading.ts';
import { isoLocal } from '../times/wall-clock.ts';
import type { SaidAct } from '../tongues/said-words.ts';
import { type ActRow, actRows } from './act-rows.ts';
import { isAllTaken } from './all-taken.ts';
import type { Clause } from './clause.ts';
import { eachItsOwn } from './each-its-own.ts';
import { figuresFor } from './figures-for.ts';
import { fits } from './fits.ts';
import { manyIn } from './many-in.ts';
import { type Piece, wordOf } from './piece.ts';
import { isReadInCure } from './read-in-cure.ts';
import { isLedInUnknown, reasonIn } from './reason-in.ts';
import { type Before, type Heard, partsNumbered, type Things, thingsOf } from './things.ts';

export interface Composed {
  /** Several, where one of several things may be meant; the lines of one are said together. */
  readonly ways: readonly (readonly string[])[];
  /** Every word of the clause is accounted for, and nothing was assumed. */
  readonly isSure: boolean;
  readonly parts: readonly PartName[];
  readonly batch?: number;
  /** The clause names nothing and reads nothing: it is whatever is live. */
  readonly isUnnamed?: true;
}

export function composed(
  act: SaidAct,
  clause: Clause,
  before: Before | undefined,
  context: LineContext,
): Composed | undefined {
  const each = eachItsOwn(act, clause, context);
  if (each === 'unclear') return undefined;
  if (each !== undefined)
    return { ways: [each.lines], isSure: each.isCertain === true && isAccountedFor(clause), parts: each.parts };
  if (act === 'cure') return cureSomewhere(clause, before, context);
  const one = ofAll(act, clause, before, context);
  return act === 'cure oven' && one !== undefined && isReadInCure(one.parts, clause.pieces, context.live?.())
    ? unsure(ofAll('temp', clause, before, context))
    : one;
}

/** `cure 7`: where, nobody said. Of a part that is in cure already it says how that one stands. */
function cureSomewhere(clause: Clause, before: Before | undefined, context: LineContext): Composed | undefined {
  const where = (['cure oven', 'cure room'] as const).flatMap((act) => ofAll(act, clause, before, context) ?? []);
  const [one] = where;
  const curing = context.live?.().parts.filter(({ phase }) => phase === 'curing') ?? [];
  return one === undefined || one.parts.every((part) => curing.some(({ name }) => name === part))
    ? undefined
    : { ...one, ways: where.flatMap(({ ways }) => ways), isSure: false };
}

const unsure = (one: Composed | undefined): Composed | undefined => one && { ...one, isSure: false };

function ofAll(act: SaidAct, clause: Clause, before: Before | undefined, context: LineContext): Composed | undefined {
  const row = actRows[act];
  const heard = heardFor(row, clause, before, context);
  if (isOfOtherGear(act, clause.pieces)) return undefined;
  const things = thingsOf(heard);
  if (things === undefined) return undefined;
  const figures = figuresFor(
    row,
    clause.pieces.filter((piece) => !heard.used.has(piece)),
    context,
  );
  if (figures === undefined || (clause.isWeighed === true && !figures.isWhole)) return undefined;
  // Which figure is of which part is not said.
  if (things.choices.some(({ length }) => length > 1) && figures.texts.length > 1) return undefined;
  // `released batch 7`, of which nobody knows: it is not what was named before.
  const isStray = clause.pieces.some(
    (piece) => piece.is === 'number' && !figures.used.has(piece) && !heard.used.has(piece),
  );
  if (isStray && (things.isBefore === true || things.isUnnamed === true)) return undefined;
  // `surface 7 91`: what the act is told by is no figure of it.
  if (isStray && figures.texts.length === 0 && row.figures !== undefined && row.isOfOne === true) return undefined;
  const method = methodOf(act, heard);
  const manner = mannerOf(clause.pieces, row, context);
  if (hasStranger(clause.pieces, row) || isFigureLost(heard, figures.used, clause.claims)) return undefined;
  const isUnknown = clause.isWeighed !== true && clause.claims.some((claim) => claim === undefined);
  // Words that nobody knows, and nothing named: it speaks of something else.
  if (isUnknown && things.isUnnamed && figures.texts.length === 0 && !saysWhat(act, clause)) return undefined;
  const isLost = clause.pieces.some(
    (piece) => piece.is === 'figure' && !figures.used.has(piece) && piece.of !== 'duration',
  );
  // A figure that the act does not take: then it was another act.
  if (isLost && row.takes?.includes('reason') !== true) return undefined;
  const reason = row.takes?.includes('reason') === true ? reasonIn(clause, heard.used, context.hearing) : '';
  if (row.takes?.includes('reason') === true && reason === '') return undefined;
  const tail = [...figures.texts, method.text, ...manner, reason];
  const [verb = '', way = ''] = hasWay.test(act) ? act.split(' ') : [act];
  // The grade says that it was blasted.
  const ofGrade = way === 'blasting' && clause.pieces.some(({ is }) => is === 'grade');
  const lineOf = (thing: string): string =>
    [verb, thing, ofGrade ? '' : way, ...tail].filter((text) => text !== '').join(' ');
  const isWhole = reason === '' ? isAccountedFor(clause) : !isLedInUnknown(clause);
  const isTaken =
    figures.isWhole && isAllTaken(heard, clause.claims, figures.used) && !things.isAssumed && !method.isAssumed;
  return {
    ways: things.choices.map((each) => each.map(lineOf)),
    isSure: isWhole && isTaken && mayBeSure(act, clause, things) && !isStrange(act, things, context),
    parts: things.parts,
    ...(things.batch !== undefined && { batch: things.batch }),
    ...(things.isUnnamed && figures.texts.length === 0 && { isUnnamed: true }),
  };
}

const anyParts: ActRow = { on: 'parts' };

/** The parts that a clause names, or that `they` in it means, whatever is said of them. */
export function partsMeant(
  clause: Clause,
  context: LineContext,
): Pick<Things, 'choices' | 'isUnnamed' | 'isAssumed'> | undefined {
  return thingsOf(heardFor(anyParts, clause, undefined, context));
}

function heardFor(row: ActRow, clause: Clause, before: Before | undefined, context: LineContext): Heard {
  const live = liveOf(context);
  return {
    row,
    pieces: clause.pieces,
    live,
    before,
    isNamedBefore: clause.claims.some((claim) => claim?.is === 'pronoun'),
    many: manyIn(clause, context.hearing.said.lists),
    namedLast: () => partsOfLast(context),
    isPotUnnumbered: isPotUnnumbered(clause, context),
    joinedTo: joinedTo(clause.pieces, live, context),
    ofEither: clause.pieces.filter((_, i) =>
      context.hearing.said.lists.articlesOfEither.has(wordOf(clause.pieces[i - 1]) ?? ''),
    ),
    whence: whenceIn(clause.pieces, context),
    used: new Set(),
  };
}

/** `shot 8 and it was 191`: of an act that reads nothing it is no number of a thing. */
const isFigureLost = ({ pieces, row, used }: Heard, figures: ReadonlySet<Piece>, claims: Clause['claims']): boolean =>
  row.figures === undefined &&
  row.takes?.includes('reason') !== true &&
  pieces.some(
    (piece, at) =>
      piece.is === 'number' &&
      // `las otras dos están a 91`
      (/\d{3}|\d[.,]\d/.test(piece.text) || (/^\d\d/.test(piece.text) && claims[at - 1]?.is === 'reading')) &&
      !figures.has(piece) &&
      !used.has(piece),
  );

function joinedTo(pieces: readonly Piece[], live: LiveNow, { hearing: { said } }: LineContext): readonly Piece[] {
  const isJoint = (at: number): boolean => said.joints.has(wordOf(pieces[at]) ?? '');
  const isArticle = (at: number): boolean => said.articles.has(wordOf(pieces[at]) ?? '');
  const isListed = (piece: Piece | undefined): boolean =>
    piece?.is === 'number' && partsNumbered(piece, live).length > 0;
  const isNamed = (piece: Piece | undefined): boolean =>
    piece?.is === 'parts' || (piece?.is === 'one-of' && piece.isSome !== true);
  return pieces.filter((piece, at) => {
    const ahead = isArticle(at - 1) ? at - 2 : at - 1;
    if (isListed(piece) && isJoint(ahead) && isNamed(pieces[ahead - 1])) return true;
    const next = isArticle(at + 2) ? at + 3 : at + 2;
    return isListed(piece) && isJoint(at + 1) && isNamed(pieces[next]);
  });
}

function whenceIn(pieces: readonly Piece[], { hearing: { said } }: LineContext): Piece | undefined {
  const [at, second] = pieces.flatMap(({ is }, i) => (is === 'number' ? [i] : []));
  if (at === undefined || second !== undefined || pieces.some(({ is }) => is === 'batch')) return undefined;
  const before = said.articles.has(wordOf(pieces[at - 1]) ?? '') ? at - 2 : at - 1;
  return said.whence.has(wordOf(pieces[before]) ?? '') ? pieces[at] : undefined;
}

/** A release is a decision: in other words than its own it is a tap. */
const mayBeSure = (act: SaidAct, { isParted }: Clause, { choices }: Things): boolean =>
  choices.length === 1 && isParted !== true && act !== 'release';

const isStrange = (act: SaidAct, things: Things, { live }: LineContext): boolean =>
  actRows[act].instead !== undefined && !fits(act, things, live?.());

/** `from the pot` is the one that there is. */
function isPotUnnumbered({ pieces, claims }: Clause, { hearing: { said } }: LineContext): boolean {
  return pieces.some(
    (piece, i) => said.pots.has(wordOf(piece) ?? '') && claims[i]?.is !== 'act' && claims[i - 1]?.is !== 'light',
  );
}

export function partsOfLast({ last, parts }: LineContext): readonly PartName[] {
  const words = last?.().said()?.line?.split(/[ ,]+/) ?? [];
  return words.filter((word) => parts.includes(word));
}

/** What of the act's name stands behind its things. */
const hasWay = /^(?:cure|prep|flush) /;

/** `the wipes are in the bin with water`: an act that is done to nothing here, in more words than one. */
const saysWhat = (act: SaidAct, { claims }: Clause): boolean =>
  actRows[act].on === 'nothing' && claims.filter((claim) => claim?.is === 'act' && claim.act === act).length > 1;

const isAccountedFor = ({ pieces, claims }: Clause): boolean =>
  claims.every((claim) => claim !== undefined) &&
  !claims.some((claim, i) => isRough(claim) && isOfFigure(pieces[i + 1])) &&
  !pieces.some(isSlip);

const isSlip = (piece: Piece): boolean => piece.is === 'parts' && piece.isSlip === true;
/** `some argon` is no figure that nobody read to the digit. */
const isOfFigure = (next: Piece | undefined): boolean => next?.is !== 'gas' && next?.is !== 'method';
const isRough = (claim: Clause['claims'][number]): boolean => claim?.is === 'roughly';

const liveOf = ({ live, parts, batches }: LineContext): LiveNow =>
  live?.() ?? {
    parts: parts.map((name) => ({ name, phase: 'bare' })),
    batches: batches.map((number) => ({ number, phase: 'filtered' })),
    cans: [],
  };

/** Two ways of one act are told of two things; a brush that was washed is no gun. */
function isOfOtherGear(act: SaidAct, pieces: readonly Piece[]): boolean {
  const methods = new Set(pieces.flatMap((piece) => (piece.is === 'method' ? [piece.method] : [])));
  const isOfGun = act === 'flush' || act === 'flush gun';
  return methods.size > 1 || (isOfGun && [...methods].some((method) => !methodRows[method].atomised));
}

/** A pot in a line about a can: then it is another act. */
function hasStranger(pieces: readonly Piece[], { on, takes = [] }: ActRow): boolean {
  return pieces.some(({ is }) => {
    if (takes.includes('reason')) return false;
    if (is === 'parts' || is === 'one-of' || is === 'but') return on !== 'parts';
    if (is === 'batch') return on !== 'batch' && !takes.includes('batch');
    return is === 'can' && on !== 'can';
  });
}

/** Said, or how its pot went on so far: then it is only offered. */
function methodOf(
  act: SaidAct,
  { pieces, row, live, before }: Heard,
): { readonly text: string; readonly isAssumed: boolean } {
  if (row.takes?.includes('method') !== true) return { text: '', isAssumed: false };
  const said = pieces.find((piece) => piece.is === 'method');
  if (said !== undefined || act !== 'coat') return { text: said?.method ?? '', isAssumed: false };
  if (before?.isSprayed === true) return { text: 'spray', isAssumed: true };
  const batch = pieces.find((piece) => piece.is === 'batch');
  const inUse = live.batches.filter(({ number, phase }) =>
    batch === undefined ? phase === 'filtered' : number === batch.number,
  );
  const method = inUse.length === 1 ? inUse[0]?.method : undefined;
  return { text: method ?? '', isAssumed: true };
}

function mannerOf(pieces: readonly Piece[], { takes = [] }: ActRow, { zone, places }: LineContext): readonly string[] {
  return pieces.flatMap((piece) => {
    if (piece.is === 'time') return [`at ${isoLocal(piece.at, zone)}`];
    if (piece.is === 'gas') return takes.includes('gas') ? ['gas'] : [];
    if (piece.is === 'grade') return takes.includes('grade') ? [piece.grade] : [];
    if (piece.is === 'solvent' && takes.includes('solvent')) return [piece.word];
    if (piece.is === 'place' && takes.includes('place') && places.includes(piece.place)) return [piece.place];
    return piece.is === 'person' && takes.includes('person') ? [`by ${piece.name}`] : [];
  });
}
