// What the speaker said last put right as people say it: their latest act, or what was objected to before it became one. Each is a
// tap that shows what changes; only what is plainly taken back goes at once, as `undo` itself takes it.

import { saidPlainly } from '../as-said/as-said.ts';
import { wordsOf } from '../as-said/words.ts';
import type { LineContext } from '../reading.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Strictly, Understands, Understood } from '../understood.ts';
import { verbAt } from '../verbs-typed.ts';
import { actsAnew } from './acts-anew.ts';
import { bareAnswer } from './bare-answer.ts';
import { inItsPlace, leastOpened, likelyOtherwise, shareOtherwise, surelyOtherwise } from './in-its-place.ts';
import type { Last } from './last.ts';
import { listInstead } from './list-instead.ts';
import { linesForPiece, takenBackAnd, type Wrong } from './put-right.ts';
import { retold } from './retold.ts';
import { type Otherwise, saidOtherwise } from './said-otherwise.ts';
import { linesSwapped, saysSwapped, swapSaid } from './swapped.ts';

export const correction: Understands = (line, context, strictly) => {
  const strict = strictly(line);
  // `permit hub-1 looked at again` gives leave, and takes back no hold of another.
  const isLeave = strict.kind === 'unread' && strict.read.failed.failed === 'permit-alone';
  if (isLeave || !mayPutRight(line, context)) return undefined;
  const last = context.last?.();
  if (last === undefined) return undefined;
  const heard = heardIn(line, context);
  const turned = turnedRound(line, last, context, strictly);
  if (turned !== undefined) return turned;
  const objected = last.objected();
  // `whole please` answers the objection, and puts nothing right.
  const isWrong = objected !== undefined && bareAnswer(line, context, strictly) === undefined;
  const anew = isWrong
    ? putRight(heard, { line: objected, recorded: undefined, why: line }, context, strictly)
    : undefined;
  if (anew !== undefined) return asRead(anew, heard);
  const act = last.said();
  if (act === undefined) return undefined;
  const found = putRight(heard, { line: act.line, recorded: act, why: line }, context, strictly);
  if (found !== undefined) return asRead(found, heard);
  const { otherwise } = heard;
  if (otherwise === undefined) return undefined;
  if (otherwise.takenBack === 'plainly' && !act.isBeforeLast) return { is: 'sure', line: 'undo' };
  return otherwise.takenBack === 'no' ? undefined : { is: 'likely', lines: [`undo entry ${act.entry}`] };
};

/** The two of the latest act, or of what was objected to, the other way round. Nobody's figures are swapped by whoever did not say them. */
function turnedRound(line: string, last: Last, context: LineContext, strictly: Strictly): Understood | undefined {
  const said = swapSaid(line, context);
  const act = last.said();
  const objected = last.objected();
  const isLast = act?.isFresh === true && !act.isBeforeLast;
  if (said === undefined) {
    const swapped = isLast && act.line !== undefined ? saysSwapped(line, act.line, context) : undefined;
    const lines =
      swapped && act && linesSwapped(swapped, { line: act.line, recorded: act, why: line }, context, strictly);
    return lines === undefined || lines.length === 0 ? undefined : { is: 'likely', lines, mayBeElse: 'anything' };
  }
  const recorded = objected === undefined && isLast ? act : undefined;
  const wrong = objected ?? recorded?.line;
  const lines = wrong === undefined ? [] : linesSwapped(said, { line: wrong, recorded, why: line }, context, strictly);
  return lines && { is: 'likely', lines };
}

/** Nothing of the speaker's own stands there that it might put right: `undo` says so. */
export const nothingToPutRight: Understands = (line, context) => {
  const last = context.last?.();
  if (last === undefined || !mayPutRight(line, context) || last.said() !== undefined) return undefined;
  const { share, otherwise } = heardIn(line, context);
  const isSaid = share > (otherwise === undefined ? surelyOtherwise : leastOpened);
  const isOf = (otherwise !== undefined && otherwise.takenBack !== 'no') || namesAny(line, context);
  return isSaid && isOf ? { is: 'sure', line: 'undo' } : undefined;
};

/** `sorry I'm late` names nothing that would be otherwise. */
const namesAny = (line: string, context: LineContext): boolean =>
  (piecesOf(line, context) ?? []).some(({ is }) => is !== 'word' && is !== 'person' && is !== 'place');

/** Somebody may mean the alarm that is about to ring; `por qué no puedo pintar la 8` puts nothing right. */
const mayPutRight = (line: string, context: LineContext): boolean =>
  !line.endsWith('?') &&
  context.mayCallOff !== true &&
  context.saysClean !== true &&
  !asksWhy(line, context) &&
  !findsNothing(line, context) &&
  !isBesides(line, context);

/** `part B is also a 1 kg can`: it tells one thing more. */
const isBesides = (line: string, context: LineContext): boolean =>
  wordsOf(line).some(({ word }) => context.hearing.otherwise.besides.has(word)) &&
  shareOtherwise(line, context) < likelyOtherwise;

/** `looked at 3, no runs`: it denies a fault of what it names, and nothing that was said before. */
function findsNothing(line: string, context: LineContext): boolean {
  const pieces = piecesOf(line, context) ?? [];
  const { claims } = claimed(pieces, context.hearing.said);
  const isFaultDenied = claims.some(
    (claim, i) => i > 0 && claim?.is === 'denial' && wordOf(pieces[i + 1]) !== undefined && claims[i + 1] === undefined,
  );
  const isOfPart = pieces.some(({ is }) => is === 'parts' || is === 'number');
  return isFaultDenied && isOfPart && shareOtherwise(line, context) < surelyOtherwise;
}

const asksWhy = (line: string, { hearing }: LineContext): boolean =>
  verbAt(tokenize(line, hearing), 0, hearing)?.row.name === 'why';

interface Heard {
  readonly line: string;
  /** How likely it puts something right, by its words. */
  readonly share: number;
  /** What it says behind a word with which people put right what they said. */
  readonly otherwise: Otherwise | undefined;
}

const heardIn = (line: string, context: LineContext): Heard => ({
  line,
  share: shareOtherwise(line, context),
  otherwise: saidOtherwise(line, context.hearing.otherwise),
});

interface Found {
  readonly lines: readonly string[];
  /** Its own words say what it should have been; else it is told by what they speak for. */
  readonly isPlain: boolean;
}

const asRead = ({ lines, isPlain }: Found, { share }: Heard): Understood => ({
  ...{ is: 'likely', lines },
  ...(!isPlain && share < surelyOtherwise && { mayBeElse: share > likelyOtherwise ? 'an answer' : 'anything' }),
});

function putRight(heard: Heard, wrong: Wrong, context: LineContext, strictly: Strictly): Found | undefined {
  // `only 1 to 3`: no one part of them is what it should have been.
  const list =
    heard.otherwise !== undefined && heard.otherwise.from === undefined && wrong.line !== undefined
      ? listInstead(heard.line, wrong.line, context)
      : undefined;
  if (list !== undefined) return { lines: takenBackAnd(list, wrong, context, strictly), isPlain: true };
  const plain = heard.otherwise === undefined ? [] : linesFor(heard.otherwise, wrong, context, strictly);
  if (plain.length > 0) return { lines: plain, isPlain: true };
  const { recorded } = wrong;
  const isLast = recorded === undefined || (recorded.isFresh && !recorded.isBeforeLast);
  const lines = isLast ? linesInPlace(heard, wrong, context, strictly) : [];
  return lines.length === 0 ? undefined : { lines, isPlain: false };
}

function linesFor({ to, from }: Otherwise, wrong: Wrong, context: LineContext, strictly: Strictly): readonly string[] {
  const was = from === undefined ? undefined : (saidPlainly(from, context)[0]?.line ?? from);
  for (const piece of to) {
    const lines = linesForPiece({ to: piece, from: was }, wrong, context, strictly);
    if (lines.length > 0) return lines;
  }
  return [];
}

/** By what the line speaks for: another way of the act, or of several things that it names each in the place of its like. */
function linesInPlace(heard: Heard, wrong: Wrong, context: LineContext, strictly: Strictly): readonly string[] {
  const { line, share, otherwise } = heard;
  const { line: was = '' } = wrong;
  const [said = line] = saidPlainly(line, context).map((plain) => plain.line);
  const isOpened = otherwise !== undefined;
  // `forget that, it's still on the rack`: it was not done in another way, but not at all.
  const isUndone = otherwise?.takenBack === 'plainly' && !namesPlace(said, context);
  const ways = !isUndone && (isOpened || share > leastOpened) ? retold(said, was, context) : [];
  if (ways.length > 0) return ways.flatMap((each) => takenBackAnd(each, wrong, context, strictly));
  const named = inItsPlace({ said: behindOpening(said, otherwise), was, share, isOpened }, context);
  if (named === undefined) return [];
  const { from } = named;
  if (isOfAnother(named.to)) return [];
  const [only, ...more] = named.to;
  if (only !== undefined && more.length === 0) return linesForPiece({ to: only, from }, wrong, context, strictly);
  let anew = was;
  for (const to of named.to) {
    const [one] = actsAnew({ to, from }, anew, context, strictly);
    // `8 hit 91 ten minutes ago`, of a coat: an act of its own.
    if (one === undefined && share < surelyOtherwise) return [];
    if (one !== undefined && one.line !== '') anew = one.line;
  }
  return anew === was ? [] : takenBackAnd(anew, wrong, context, strictly);
}

const namesPlace = (said: string, context: LineContext): boolean =>
  (piecesOf(said, context) ?? []).some(({ is }) => is === 'place');

/** `and for pot 2 it was 601 and 598`: another pot with its own figures is an act of its own, and so are two that nobody tells apart. */
function isOfAnother(to: readonly string[]): boolean {
  const units = to.flatMap((one) => /^[\d.,]+ ?(\p{L}*)$/u.exec(one)?.[1] ?? []);
  return new Set(units).size < units.length || (units.length > 0 && to.some((one) => one.startsWith('batch ')));
}

/** `wait, no, 26 in here`: what opens it denies and puts off nothing. */
const behindOpening = (said: string, otherwise: Otherwise | undefined): string =>
  otherwise === undefined || otherwise.to.length === 0 || otherwise.from !== undefined ? said : otherwise.to.join(', ');
