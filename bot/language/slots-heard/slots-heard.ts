// A line in the speaker's own words and order, read by what stands anywhere in it: known things, figures, and words for acts. It
// turns them into strict lines; what denies, doubts, plans or asks is never turned into any.

import { known } from '../../../core/known.ts';
import { type Alarm, alarmNamed } from '../../../core/session/session-commands.ts';
import { actsJoint } from '../lines-apart.ts';
import type { LineContext } from '../reading.ts';
import { certainIn, clearlyTold, likeliestIn, shareOfAct } from '../sayings/likeliest.ts';
import { isSaidAct, type SaidAct } from '../tongues/said-words.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { asTaps, type Understands, type Understood } from '../understood.ts';
import { verbNamed } from '../verbs-typed.ts';
import { actRows } from './act-rows.ts';
import { type Clause, clausesOf, isAkin, ofCans } from './clause.ts';
import { type Composed, composed } from './compose.ts';
import { impliedIn } from './implied-act.ts';
import { holdsLost } from './lost.ts';
import { mayBeOtherwise } from './may-be-otherwise.ts';
import { type Claimed, claimed } from './phrases.ts';
import { type Piece, wordOf } from './piece.ts';
import { piecesOf } from './pieces.ts';
import type { SaidTable } from './said-table.ts';
import { slipsMended } from './slips-mended.ts';
import type { Before } from './things.ts';
import { asksFirst, isUnsaid } from './unsaid.ts';

/** A sentence of more is no line about an act. */
const mostPieces = 60;
/** More words than these that nobody knows, and it speaks of something else, unless one act alone has all that it needs. */
const mostUnknown = 3;

export const slotsHeard: Understands = (line, context, strictly) => {
  const strict = strictly(line);
  if (line.endsWith('?') || strict.kind !== 'unread') return undefined;
  const told = withoutGreeting(line, context);
  const isTold = told !== undefined && strictly(told).kind === 'command';
  if (isTold) return { is: 'sure', line: told };
  return mayBeOtherwise(strict.read) ? heardIn(line, context) : undefined;
};

function heardIn(line: string, context: LineContext): Understood | undefined {
  const pieces = piecesOf(line, context);
  if (pieces === undefined || pieces.length > mostPieces) return undefined;
  const { hearing } = context;
  const all = claimed(pieces, hearing.said);
  // `did Omar stir it` is no slip of a lid.
  if (asksFirst(pieces, all.claims, hearing.said)) return undefined;
  const mended = slipsMended(line, pieces, all.claims, hearing).map((each) => ({
    each,
    pieces: piecesOf(each, context),
  }));
  const found: string[] = [];
  for (const { pieces: meant } of mended) {
    if (meant === undefined) continue;
    const claims = claimed(meant, hearing.said);
    // A slip of `not` denies.
    if (isUnsaid(meant, claims, hearing.said)) return undefined;
    const understood = heardOf(meant, claims, context);
    if (understood !== undefined) found.push(...asTaps(understood).lines);
  }
  // `2 y 3 pasadas a rodillo`: whose other words say the act tells it without the slip.
  const plain = found.length > 0 ? heardOf(pieces, all, context) : undefined;
  const lines = [...(plain === undefined ? [] : asTaps(plain).lines), ...found];
  if (found.length > 0) return { is: 'likely', lines: [...new Set(lines)] };
  return isGreeting(pieces, all.claims, hearing.said) ? { is: 'sure', line: '?' } : heardOf(pieces, all, context);
}

/** `hi, I'm new`: what stands behind it may be all that the strict reader needs. */
function withoutGreeting(line: string, { hearing: { said } }: LineContext): string | undefined {
  const [greeted = '', first = ''] = /^([\p{L}']+)[\s,!.]+/u.exec(line) ?? [];
  return said.greetings.has(withoutAccents(first.toLowerCase())) ? line.slice(greeted.length) : undefined;
}

/** `good morning`, `ok thanks boss`: whoever greets is led. */
const isGreeting = (pieces: readonly Piece[], claims: Claimed['claims'], { greetings }: SaidTable): boolean =>
  pieces.some((piece) => greetings.has(wordOf(piece) ?? '')) &&
  claims.every((claim) => claim?.is === 'filler' || claim?.is === 'light');

function heardOf(pieces: readonly Piece[], { claims, phrases }: Claimed, context: LineContext): Understood | undefined {
  const { said } = context.hearing;
  if (isUnsaid(pieces, { claims }, said)) return undefined;
  const unknown = claims.filter((claim) => claim === undefined).length;
  // A verb alone that needs a thing names nothing, nor does a letter with it: what it needs is asked.
  const isAlone = claims.every(
    (claim, i) =>
      (claim?.is === 'act' && actRows[claim.act].on !== 'nothing') ||
      (claim === undefined && (pieces[i]?.typed.length ?? 0) < 3),
  );
  if (isAlone || holdsLost(pieces, claims, context.hearing)) return undefined;
  const clauses = clausesOf(
    pieces,
    { claims, phrases },
    said,
    (each) => clearlyTold(each, context),
    (each, act) => shareOfAct(each, act, context),
  );
  const heard = ofOneAct(pieces, claims, clauses, context) ?? understoodAs(clauses, eachHeard(clauses, context));
  return unknown > mostUnknown && (heard?.is !== 'likely' || heard.lines.length > 1) ? undefined : heard;
}

/**
 * `slid 7 in the oven, she's set at 195`, `pot 1 poured, 1201 of A and 1198 of B`: what the clauses say of one thing, each with a
 * figure of it, is one act. Only offered: which clause says what was not looked at.
 */
function ofOneAct(
  pieces: readonly Piece[],
  claims: Claimed['claims'],
  clauses: readonly Clause[],
  context: LineContext,
): Understood | undefined {
  if (clauses.length < 2) return undefined;
  const heard = eachHeard(clauses, context);
  const firsts = heard.flatMap((made) => made.slice(0, 1));
  const each = firsts.filter((one) => !isDryOfPrepared(one, firsts));
  const heads = new Set(each.flatMap(({ ways }) => ways.flat()).map(headOf));
  const [first] = each;
  if (heads.size !== 1 || first === undefined) return undefined;
  const prepared = heard.every(({ length }) => length > 0) ? preparedIn(each) : undefined;
  if (prepared !== undefined) return prepared;
  if (each.length < 2) return undefined;
  const [whole] = likeliestIn({ pieces, claims }, undefined, context);
  const isSame = whole?.one.ways.flat().every((line) => heads.has(headOf(line))) === true;
  return isSame && whole !== undefined
    ? { is: 'likely', lines: whole.one.ways.map((way) => way.join(actsJoint)) }
    : undefined;
}

/** `wiped all three, they are clean and dry`: what was prepared in the same breath has no film to touch. */
function isDryOfPrepared(one: Composed | undefined, each: readonly (Composed | undefined)[]): boolean {
  const isOf = (verb: string, made: Composed | undefined): boolean =>
    made?.ways.flat().every((line) => line.startsWith(`${verb} `)) === true;
  const prepared = new Set(each.flatMap((other) => (isOf('prep', other) ? (other?.parts ?? []) : [])));
  return isOf('dry', one) && one?.parts.length !== 0 && one?.parts.every((part) => prepared.has(part)) === true;
}

/** `wiped impeller 1 down, no grease left`: how it was prepared, and what came off of it. */
function preparedIn(each: readonly Composed[]): Understood | undefined {
  const lines = each.flatMap(({ ways }) => (ways.length === 1 ? (ways[0] ?? []) : []));
  if (lines.length !== each.length || !lines.every((line) => line.startsWith('prep '))) return undefined;
  const line = [...new Set(lines.flatMap((one) => one.split(' ')))].join(' ');
  return each.every(({ isSure }) => isSure) ? { is: 'sure', line } : { is: 'likely', lines: [line] };
}

/** An act and what it is done to; of the air alone nothing is named. */
function headOf(line: string): string {
  const [verb = '', thing = ''] = line.split(' ');
  return isSaidAct(verb) && actRows[verb].on === 'nothing' ? verb : `${verb} ${thing}`;
}

/** `coat impeller-7 1 spray?` asks. */
export function onlyAsksOrDenies(line: string, context: LineContext): boolean {
  const pieces = piecesOf(line, context) ?? [];
  return line.endsWith('?') || isUnsaid(pieces, claimed(pieces, context.hearing.said), context.hearing.said);
}

/** `will wash the brush` behind what is told only puts off. */
export function onlyAsks(line: string, context: LineContext): boolean {
  const pieces = piecesOf(line, context) ?? [];
  const { claims } = claimed(pieces, context.hearing.said);
  const isAskedFirst = asksFirst(pieces, claims, context.hearing.said) && claims[0]?.is !== 'plan';
  return /[?¿]/.test(line) || isAskedFirst || claims.some((claim) => claim?.is === 'ask');
}

/** `wiped down`, `put down that it is dry`: words that call people say only how an act was done. Another cry is left as it is. */
export function isPhrased(line: string, alarms: readonly Alarm[], context: LineContext): boolean {
  const pieces = piecesOf(line, context) ?? [];
  const { phrases } = claimed(pieces, context.hearing.said);
  const calls = pieces.flatMap((piece, at) => {
    const alarm = alarmNamed(verbNamed(wordOf(piece) ?? '', context.hearing)?.row.name);
    return alarm === undefined ? [] : [{ at, alarm }];
  });
  const isInPhrase = (at: number): boolean => phrases.some(({ from, to }) => to - from > 1 && from < at && at < to);
  return calls.length > 0 && calls.every(({ at, alarm }) => alarms.includes(alarm) && isInPhrase(at));
}

function eachHeard(clauses: readonly Clause[], context: LineContext): readonly (readonly Composed[])[] {
  let before: Before | undefined;
  return clauses.map((clause, i) => {
    before ??= namedBehind(clause, clauses[i + 1], context);
    const madeOf = (acts: readonly SaidAct[]) => acts.flatMap((act) => composed(act, clause, before, context) ?? []);
    const ofPot = madeOf(clause.acts);
    // `le quité la tapa al 3`: no pot has this number, a can has.
    const isNumbered = clause.pieces.some(({ is }) => is === 'number');
    const said = ofPot.length > 0 || !isNumbered ? ofPot : madeOf(clause.acts.flatMap((act) => ofCans[act] ?? []));
    const phrased = said.length > 0 ? said : impliedBy(clause, context, madeOf);
    const made = clauses.length > 1 ? withLikelier(phrased, clause, before, context) : phrased;
    const [first] = made;
    const isSprayed =
      clause.acts.some((act) => act === 'spray off' || act === 'spray on') || before?.isSprayed === true;
    if (first !== undefined)
      before = { parts: first.parts, ...known({ batch: first.batch }), ...(isSprayed && { isSprayed }) };
    return made;
  });
}

function impliedBy(
  clause: Clause,
  context: LineContext,
  madeOf: (acts: readonly SaidAct[]) => readonly Composed[],
): readonly Composed[] {
  const { acts, isOffered } = impliedIn(clause, context);
  // `2 is 1201 A and 1199 B, and the stirrer is on`: what its words say besides would be lost.
  const mark = clause.pieces.findIndex(({ isBreak }) => isBreak);
  const behind = clause.claims.slice(mark + 1).flatMap((claim) => (claim?.is === 'act' ? [claim.act] : []));
  const isBesides = mark >= 0 && behind.some((said) => !acts.some((act) => isAkin(act, said)));
  return isOffered || isBesides ? madeOf(acts).map(untaken) : madeOf(acts);
}

const untaken = (one: Composed): Composed => ({ ...one, isSure: false });

/** `degreased and wiped all three`: what the next clause names is of both, where both are done to the same. */
function namedBehind(clause: Clause, next: Clause | undefined, context: LineContext): Before | undefined {
  const [act, ...others] = clause.acts;
  const [nextAct, ...more] = next?.acts ?? [];
  if (act === undefined || nextAct === undefined || next === undefined || others.length + more.length > 0)
    return undefined;
  const isAlike = actRows[act].on === 'parts' && actRows[act].parts?.join() === actRows[nextAct].parts?.join();
  const says = clause.claims.some((claim) => claim?.is === 'many' || claim?.is === 'pronoun');
  if (!isAlike || says || clause.pieces.some(({ is }) => is !== 'word')) return undefined;
  const named = composed(nextAct, next, undefined, context);
  return named?.ways.length === 1 && named.parts.length > 0 ? { parts: named.parts } : undefined;
}

/** Of several clauses each has its own words: what they weigh for stands ahead of what was made of a word of them. */
function withLikelier(
  phrased: readonly Composed[],
  clause: Clause,
  before: Before | undefined,
  context: LineContext,
): readonly Composed[] {
  if (phrased.length === 1 && phrased[0]?.isSure === true) return phrased;
  const weighed = likeliestIn(clause, before, context);
  const sure = certainIn(weighed, clause, context);
  if (sure !== undefined && phrased.length === 1 && phrased.every((one) => toldIn(one) === toldIn(sure))) return [sure];
  const likely = weighed.map(({ one }) => untaken(one));
  const told = new Set(likely.map(toldIn));
  const [most] = likely;
  const isKnown = most !== undefined && phrased.some((one) => toldIn(one) === toldIn(most));
  return isKnown ? phrased : [...likely, ...phrased.filter((one) => !told.has(toldIn(one)))];
}

const toldIn = ({ ways }: Composed): string => ways.flat().join(actsJoint);

/** Three are shown. */
const mostWays = 3;

/** What each clause may mean, put together: all at once where all is sure, else a tap for all that was said, in each way. */
function understoodAs(all: readonly Clause[], each: readonly (readonly Composed[])[]): Understood | undefined {
  const firsts = each.map(([first]) => first);
  const isKept = (_: unknown, i: number): boolean => !isDryOfPrepared(firsts[i], firsts);
  return understoodIn(all.filter(isKept), each.filter(isKept));
}

function understoodIn(clauses: readonly Clause[], heard: readonly (readonly Composed[])[]): Understood | undefined {
  const own = heard.filter((one, i) => !isToldBehind(one, heard.slice(i + 1)));
  const made = own.filter(({ length }) => length > 0);
  const isSure = made.length === own.length && made.every((one) => one.length === 1 && one[0]?.isSure === true);
  const each = made.map((one) => one.flatMap(({ ways }) => ways));
  const all = together(each);
  const [first] = all;
  if (first === undefined) return undefined;
  const [line, ...others] = first;
  if (isSure && line !== undefined) return others.length === 0 ? { is: 'sure', line } : { is: 'several', lines: first };
  const alone = each.length > 1 && all.length < mostWays ? each.map(([way = []]) => way) : [];
  const untaken = clauses.flatMap((clause, i) =>
    heard[i]?.length === 0 && saysSomething(clause) ? [typedIn(clause)] : [],
  );
  return {
    is: 'likely',
    lines: [...all, ...alone].map((lines) => lines.join(actsJoint)),
    ...(untaken.length > 0 && { untaken }),
  };
}

/** `measured both of them: 7 is at 85 and 8 at 90`: the first says of which it is, and the others what it is. */
function isToldBehind(one: readonly Composed[], behind: readonly (readonly Composed[])[]): boolean {
  const all = behind.flat().flatMap(({ ways }) => ways.flat());
  const lines = one.flatMap(({ ways }) => ways.flat());
  return lines.length > 0 && lines.every((line) => all.some((other) => other.startsWith(`${line} `)));
}

/** Every way of the first with every way of the next; the likeliest of each first. */
function together(each: readonly (readonly (readonly string[])[])[]): readonly (readonly string[])[] {
  return each.reduce<readonly (readonly string[])[]>(
    (all, ways) =>
      all.length === 0 ? ways : all.flatMap((one) => ways.map((way) => [...one, ...way])).slice(0, mostWays),
    [],
  );
}

const saysSomething = ({ claims }: Clause): boolean =>
  claims.some((claim) => claim?.is !== 'filler' && claim?.is !== 'light' && claim?.is !== 'pronoun');

const typedIn = ({ pieces }: Clause): string => pieces.map(({ typed }) => typed).join(' ');
