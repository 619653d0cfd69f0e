// A line in clauses, one act each: `bracket-8 is dry` and `in the oven at 90`. What belongs to no act of its own stays with its
// neighbour; what is said of both, `both from batch 2`, with each.

import type { SaidAct } from '../tongues/said-words.ts';
import { actRows, strongerThan } from './act-rows.ts';
import { partedIn, type Speaks } from './acts-in-clause.ts';
import { manyIn } from './many-in.ts';
import type { Claim, Claimed } from './phrases.ts';
import { type Piece, wordOf } from './piece.ts';
import type { SaidTable } from './said-table.ts';

export interface Clause {
  /** One, where the clause can be made out; none, where only its things say what was done. */
  readonly acts: readonly SaidAct[];
  readonly pieces: readonly Piece[];
  readonly claims: readonly (Claim | undefined)[];
  /** What its words tell clearly where no phrase of an act is in it. */
  readonly tells?: SaidAct;
  /** It was parted from the next by what their words weigh. */
  readonly isParted?: true;
  /** What nobody knows of it was weighed: it speaks of this act, as a whole. */
  readonly isWeighed?: true;
}

/** The act that words speak for, though none of them is a phrase for it. */
type TellsClearly = (pieces: readonly Piece[]) => SaidAct | undefined;

export function clausesOf(
  pieces: readonly Piece[],
  { claims, phrases }: Claimed,
  table: SaidTable,
  told: TellsClearly,
  speaks: Speaks,
): readonly Clause[] {
  return clausesJointed(pieces, { claims, phrases }, table, told).flatMap((clause) => {
    const parted = partedIn(clause, speaks) ?? [];
    return parted.length === 0
      ? [clause]
      : parted.map((each): Clause => ({ ...clauseOf(each.pieces, each.claims, isAboutCan(clause)), isParted: true }));
  });
}

function clausesJointed(
  pieces: readonly Piece[],
  { claims, phrases }: Claimed,
  table: SaidTable,
  told: TellsClearly,
): readonly Clause[] {
  const inPhrase = (at: number): boolean =>
    phrases.some(({ from, to, says }) => says.is === 'act' && from < at && at < to);
  const clauses: Clause[] = [];
  let from = 0;
  for (let at = 1; at <= pieces.length; at++) {
    const isJoint = table.joints.has(wordOf(pieces[at]) ?? '') || pieces[at - 1]?.isBreak === true;
    if (at < pieces.length && (!isJoint || inPhrase(at))) continue;
    const last = clauses.at(-1);
    const clause = toldBy(
      clauseOf(pieces.slice(from, at), claims.slice(from, at), last !== undefined && isAboutCan(last)),
      told,
    );
    from = at;
    if (clauses.length > 1 && isOfAll(clause, clauses, table)) {
      const shared = withoutMany(clause, table);
      for (const [i, each] of clauses.entries()) clauses[i] = toldBy(joined(each, shared), told);
    } else if (last !== undefined && goesOn(last, clause)) {
      clauses[clauses.length - 1] = toldBy(joined(last, clause), told);
    } else clauses.push(clause);
  }
  return clauses;
}

function toldBy(clause: Clause, told: TellsClearly): Clause {
  const tells = clause.acts.length === 0 && !isOnlyTalk(clause) ? told(clause.pieces) : undefined;
  return tells === undefined ? clause : { ...clause, tells };
}

/** `out of pot 1`: whence, and no act of its own. */
const isOnlyTalk = ({ claims }: Clause): boolean =>
  claims.every((claim) => claim?.is === 'filler' || claim?.is === 'light' || claim?.is === 'slot');

const joined = (one: Clause, other: Clause): Clause =>
  clauseOf([...one.pieces, ...other.pieces], [...one.claims, ...other.claims], isAboutCan(one));

function goesOn(last: Clause, clause: Clause): boolean {
  if (isAirInTwo(last, clause)) return true;
  if (tellsOther(last, clause)) return false;
  if (clause.acts.length === 0) return !isItsOwn(last, clause);
  const isNext = clause.pieces.some((piece) => isNamed(piece) || isFigure(piece)) || !takesAll(clause.acts, last);
  const isApart = isWhole(last) && (isNext || (areWeights(last.pieces) && !takesLetters(clause.acts)));
  if (isCleanedFirst(last, clause)) return true;
  return last.acts.length === 0 ? !isApart : isSameAct(last, clause);
}

/** `el termómetro dice 73 Fahrenheit y hay 52 por ciento`: a heat of no part, and what only the air has. */
function isAirInTwo(last: Clause, clause: Clause): boolean {
  const [before, behind] = [last, clause].map(({ pieces }) =>
    pieces.map((each) => (each.is === 'figure' ? each.of : each.is)),
  );
  const isHeat = (last.acts.length === 0 || last.acts.join() === 'temp') && before?.includes('temperature') === true;
  const isOfRoomOnly = ![...(before ?? []), ...(behind ?? [])].some((is) => noAir.has(is));
  return isHeat && isOfRoomOnly && behind?.includes('percent') === true && !behind.includes('temperature');
}

const noAir: ReadonlySet<string> = new Set(['parts', 'one-of', 'batch', 'can', 'number', 'mass']);

/** `limpié y desengrasé las 3`: what was cleaned is what is named behind it, and no gear. */
const isCleanedFirst = (last: Clause, clause: Clause): boolean =>
  last.acts.join() === 'flush' &&
  last.pieces.every(({ is }) => is === 'word' || is === 'solvent') &&
  clause.acts.length > 0 &&
  clause.acts.every((act) => prepares.has(act)) &&
  clause.pieces.some(({ is }) => is === 'parts' || is === 'one-of' || is === 'number');

const prepares: ReadonlySet<SaidAct> = new Set([
  ...(['prep', 'prep blasting', 'prep sanding', 'prep wiping', 'prep grease-off', 'prep old-coat-off'] as const),
]);

/** `hosed out the gun, and pot 2 is empty`: each tells its own, though one of them has no phrase for it. */
function tellsOther(last: Clause, clause: Clause): boolean {
  const [one, other] = [last, clause].map(({ acts, tells }) => (tells === undefined ? acts : [tells]));
  const isWeighed = last.tells !== undefined || clause.tells !== undefined;
  if (!isWeighed || one === undefined || other === undefined || one.length === 0 || other.length === 0) return false;
  const areTaken = takesAll(one, clause) && takesAll(other, last);
  return !areTaken || !one.some((act) => other.some((each) => isAkin(act, each)));
}

export const isAkin = (one: SaidAct, other: SaidAct): boolean =>
  one === other || strongerThan[one]?.includes(other) === true || strongerThan[other]?.includes(one) === true;

const isNamed = ({ is }: Piece): boolean => is === 'parts' || is === 'one-of' || is === 'batch' || is === 'can';
const isFigure = ({ is }: Piece): boolean => is === 'figure' || is === 'number';

/** `7 reads 89`, `the room's 74`: a thing and what was read on it, whatever act it is. */
function isWhole({ pieces, claims }: Clause): boolean {
  const figures = pieces.filter(isFigure).length;
  if (figures > 0 && pieces.some((piece) => piece.is === 'place' && piece.place !== 'oven')) return true;
  // `1201 grams of A and 1199 of B`
  if (areWeights(pieces)) return true;
  const isReading = claims.some((claim) => claim?.is === 'reading');
  return isReading && (figures > 1 || (figures === 1 && pieces.some(isNamed)));
}

const areWeights = (pieces: readonly Piece[]): boolean =>
  pieces.filter(isFigure).length > 1 && pieces.filter(({ is }) => is === 'letter').length > 1;

const takesLetters = (acts: readonly SaidAct[]): boolean =>
  acts.some((act) => actRows[act].takes?.includes('letters') === true);

/** Of another thing than the act before, or with a figure that this act does not take. */
function isItsOwn(last: Clause, clause: Clause): boolean {
  if (last.acts.length === 0) return isWhole(last) && isWhole(clause);
  return isWhole(clause) || !takesAll(last.acts, clause);
}

/** The figures of a clause, by what these acts take. */
function takesAll(acts: readonly SaidAct[], { pieces }: Clause): boolean {
  const takes = new Set(acts.flatMap((act) => (actRows[act].figures ?? []).map(({ of }) => of)));
  // `72 and 40 percent, 2 lb of clear`: no air weighs.
  const mayWeigh = acts.some((act) => act !== 'air');
  return pieces.every((piece) =>
    piece.is === 'figure'
      ? piece.of === 'duration' || (piece.of === 'mass' && mayWeigh) || takes.has(piece.of)
      : piece.is !== 'number' || !piece.isDegrees || takes.has('temperature'),
  );
}

/** `both from batch 2`, `todo del batch 2`, `7 is at 91 and 8 at 93, both on the metal`: it names no part, and what it says is of each. */
function isOfAll({ acts, pieces, claims }: Clause, before: readonly Clause[], { lists }: SaidTable): boolean {
  const many = manyIn({ pieces, claims }, lists);
  const says = new Set(pieces.flatMap((piece) => (piece === many?.piece ? [] : [piece.is])));
  const isAct = acts.length > 0 && before.every((each) => each.acts.length === 0 && isWhole(each));
  const isShared = isAct || says.has('batch') || says.has('method') || says.has('time') || says.has('person');
  const names = says.has('parts') || says.has('one-of') || says.has('number') || says.has('figure') || says.has('can');
  return (
    (acts.length === 0 || isAct) &&
    isShared &&
    !names &&
    (many !== undefined || claims.some((claim) => claim?.is === 'many'))
  );
}

/** Whom it is of has been said. */
function withoutMany(clause: Clause, { lists }: SaidTable): Clause {
  const counted = manyIn(clause, lists)?.piece;
  const isKept = (_: unknown, i: number): boolean =>
    clause.claims[i]?.is !== 'many' && (counted === undefined || clause.pieces[i] !== counted);
  return { ...clause, pieces: clause.pieces.filter(isKept), claims: clause.claims.filter(isKept) };
}

/**
 * `done with batch 1, tossing the last 200 grams`, `gas over can 3 and lid back on`, `closed can 3 and put argon on`: one act in two
 * words, unless each names its own things, or goes another way.
 */
function isSameAct(one: Clause, other: Clause): boolean {
  const [act, ...more] = one.acts;
  const isCan = one.acts.every((each) => actRows[each].on === 'can');
  const names = ({ pieces }: Clause): boolean =>
    pieces.some((piece) => isNamed(piece) || (isCan && piece.is === 'number'));
  const way = ({ pieces }: Clause) => pieces.find((piece) => piece.is === 'method')?.method;
  const [next, ...others] = other.acts;
  if (act === undefined || next === undefined || more.length > 0 || others.length > 0) return false;
  const isClosed = act === 'shut' && next === 'blanket';
  const isOne = act === next || isClosed || (act === 'blanket' && strongerThan[act]?.includes(next) === true);
  // `painted 4, 5 and the housing with the roller`
  const isShared = act === 'coat' && way(one) === undefined && !other.claims.some((claim) => claim?.is === 'act');
  const isOtherWay = way(one) !== undefined && way(other) !== undefined && way(one) !== way(other);
  return isOne && (isShared || !(names(one) && names(other))) && !isOtherWay;
}

const isAboutCan = ({ acts, pieces }: Clause): boolean =>
  isOfCan(pieces) || (acts.length > 0 && acts.every((act) => actRows[act].on === 'can') && !namesPot(pieces));

export const namesPot = (pieces: readonly Piece[]): boolean => pieces.some(({ is }) => is === 'batch');

/** Only a can is closed with gas: `3 gas y tapada`. */
export const isOfCan = (pieces: readonly Piece[]): boolean =>
  pieces.some(({ is }) => is === 'can' || is === 'gas') && !namesPot(pieces);

/** `isBehindCan`: what names no pot goes on about the can that was named before. */
function clauseOf(pieces: readonly Piece[], claims: Clause['claims'], isBehindCan: boolean): Clause {
  const isOnCan = isOfCan(pieces) || (isBehindCan && !namesPot(pieces));
  const named = claims.flatMap((claim) => (claim?.is === 'act' ? [claim.act] : []));
  const said = new Set(named.map((act) => (isOnCan ? (ofCans[act] ?? act) : act)));
  const figures = pieces.flatMap((piece) => (piece.is === 'figure' ? [piece.of] : []));
  // `24C and 46 % in here`: what has no act of its own word may be told by its figures.
  const isAir = said.size === 0 ? isOfRoom(pieces) : said.size === 1 && said.has('temp');
  if (isAir && figures.includes('percent')) said.add('air');
  if (isOfLetter(pieces) && ![...said].some((act) => takesMass(act))) {
    said.clear();
    said.add('weigh');
  }
  // `half a mil dry on 9`: a figure of the film is no touch of it.
  if (said.has('dry') && figures.includes('film')) said.add('film');
  // `4 rolled from 1`: of a can it would be its stirring.
  if (said.has('prestir') && said.size === 1 && !isOnCan && isCoat(pieces, claims)) said.delete('prestir');
  // `done with impeller 5`: of a part nothing is emptied.
  if (said.has('empty') && !namesPot(pieces) && pieces.some(({ is }) => is === 'parts' || is === 'one-of'))
    said.delete('empty');
  if (said.size === 0 && isCoat(pieces, claims)) said.add('coat');
  const where = said.has('cure') ? whereOfCure(pieces) : undefined;
  if (where !== undefined && said.delete('cure')) said.add(where);
  const weaker = new Set([...said].flatMap((act) => strongerThan[act] ?? []));
  return { acts: [...said].filter((act) => !weaker.has(act)), pieces, claims };
}

/** `cure 7 oven 90C`, `7 baking at 90C`: no room is set to a heat. */
function whereOfCure(pieces: readonly Piece[]): SaidAct | undefined {
  const isHot = pieces.some((piece) =>
    piece.is === 'place' ? piece.place === 'oven' : piece.is === 'figure' && piece.of === 'temperature',
  );
  if (isHot) return 'cure oven';
  return pieces.some(({ is }) => is === 'place') ? 'cure room' : undefined;
}

/** `de A han salido 1001`: of a part of the product only its weight is told. */
const isOfLetter = (pieces: readonly Piece[]): boolean =>
  pieces.some(({ is }) => is === 'letter') &&
  pieces.some(
    (piece) => (piece.is === 'number' && piece.value >= lightest) || (piece.is === 'figure' && piece.of === 'mass'),
  ) &&
  !pieces.some((piece) => piece.is === 'can' || piece.is === 'parts');

const takesMass = (act: SaidAct): boolean => actRows[act].figures?.some(({ of }) => of === 'mass') === true;

/** Nobody mixes less. Our own figure, no source. */
export const lightest = 20;

/** A temperature, or a number that is one, and no part that it may be of. */
function isOfRoom(pieces: readonly Piece[]): boolean {
  const is = pieces.map((piece) => (piece.is === 'figure' ? piece.of : piece.is));
  const numbers = is.filter((each) => each === 'number').length;
  return is.includes('temperature') || (numbers === 1 && !is.some((each) => each === 'parts' || each === 'one-of'));
}

/** `6 b2 brush`, `did 1 with the brush`: which part goes by which way says what was done. */
function isCoat(pieces: readonly Piece[], claims: Clause['claims']): boolean {
  const isWay = pieces.some(({ is }, i) => is === 'method' && (claims[i]?.is !== 'act' || isStirring(claims[i])));
  // `brushed it from batch 1`
  const isBefore = claims.some((claim) => claim?.is === 'pronoun') && pieces.some(({ is }) => is === 'batch');
  const isOfPart =
    isBefore ||
    pieces.some(
      (piece) => piece.is === 'parts' || piece.is === 'one-of' || (piece.is === 'number' && !piece.isDegrees),
    );
  return isWay && isOfPart && !pieces.some((piece) => piece.is === 'figure' && piece.of !== 'duration');
}

const isStirring = (claim: Claim | undefined): boolean => claim?.is === 'act' && claim.act === 'prestir';

/** The same words are said of a pot and of a can: `destapé el bote 2`. */
export const ofCans: Readonly<Partial<Record<SaidAct, SaidAct>>> = { uncover: 'lid', cover: 'shut', stir: 'prestir' };
