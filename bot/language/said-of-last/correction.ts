// The speaker's latest act put right as people say it: through `amend` where it takes what was said, else taken back and said anew.
// Each is a tap that shows what changes; only what is plainly taken back goes at once, as `undo` itself takes it.

import type { EpochMs } from '../../../core/units.ts';
import { saidPlainly } from '../as-said/as-said.ts';
import { withoutDegrees } from '../as-said/units-left-out.ts';
import type { LineContext } from '../reading.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { saidTimeFrom } from '../times/said-time.ts';
import { isoLocal } from '../times/wall-clock.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Strictly, Understands } from '../understood.ts';
import { verbAt } from '../verbs-typed.ts';
import { actsAnew } from './acts-anew.ts';
import { inItsPlace } from './in-its-place.ts';
import type { SaidAct } from './last.ts';
import { type Otherwise, saidOtherwise } from './said-otherwise.ts';

export const correction: Understands = (line, context, strictly) => {
  const otherwise = saidOtherwise(line, context.hearing.otherwise);
  // Somebody may mean the alarm that is about to ring; `por qué no puedo pintar la 8` puts nothing right.
  if (line.endsWith('?') || context.mayCallOff === true || asksWhy(line, context)) return undefined;
  const act = context.last?.().said();
  if (act === undefined) return undefined;
  const wrong = { ...act, why: line };
  const lines = otherwise === undefined ? [] : linesFor(otherwise, wrong, context, strictly);
  if (lines.length > 0) return { is: 'likely', lines };
  const inPlace = act.isFresh && !act.isBeforeLast ? linesInPlace(line, wrong, context, strictly) : [];
  if (inPlace.length > 0) return { is: 'likely', lines: inPlace };
  if (otherwise === undefined) return undefined;
  if (otherwise.takenBack === 'plainly' && !act.isBeforeLast) return { is: 'sure', line: 'undo' };
  return otherwise.takenBack === 'no' ? undefined : { is: 'likely', lines: [`undo entry ${act.entry}`] };
};

const asksWhy = (line: string, { hearing }: LineContext): boolean =>
  verbAt(tokenize(line, hearing), 0, hearing)?.row.name === 'why';

/** `why`: in the speaker's own words. */
type Wrong = SaidAct & { readonly why: string };

function linesFor({ to, from }: Otherwise, act: Wrong, context: LineContext, strictly: Strictly): readonly string[] {
  const was = from === undefined ? undefined : (saidPlainly(from, context)[0]?.line ?? from);
  for (const piece of to) {
    const lines = linesForPiece(piece, was, act, context, strictly);
    if (lines.length > 0) return lines;
  }
  return [];
}

/** By what the line speaks for: of several things that it names each in the place of its like. */
function linesInPlace(line: string, act: Wrong, context: LineContext, strictly: Strictly): readonly string[] {
  const [said = line] = saidPlainly(line, context).map((plain) => plain.line);
  const named = inItsPlace(line, said, act.line ?? '', context);
  if (named === undefined) return [];
  const [only, ...more] = named.to;
  if (only !== undefined && more.length === 0) return linesForPiece(only, named.from, act, context, strictly);
  const anew = named.to.reduce((before, to) => {
    const [one] = actsAnew({ to, from: named.from }, { ...act, line: before }, context, strictly);
    return one === undefined || one.line === '' ? before : one.line;
  }, act.line ?? '');
  return anew === act.line ? [] : takenBackAnd(anew, act, context, strictly);
}

function linesForPiece(
  to: string,
  from: string | undefined,
  act: Wrong,
  context: LineContext,
  strictly: Strictly,
): readonly string[] {
  const each = [to, ...figureIn(to, context), ...saidPlainly(to, context).map(({ line }) => line)].map((said) =>
    inDegrees(said, context),
  );
  const time = each.map((said) => timeIn(said, context)).find((at) => at !== undefined);
  if (time !== undefined) return at(time, act, context, strictly);
  const anew = [...new Set(each)].flatMap((said) => actsAnew({ to: said, from }, act, context, strictly));
  const amended = anew.flatMap(({ figure }) =>
    // Its time names it: pressed later, the tap puts no other right.
    figure === undefined ? [] : amending(`${figure} at ${isoLocal(act.happenedAt, context.zone)}`, act, strictly),
  );
  // What can be corrected in place is not taken back.
  const again = anew.flatMap(({ line }) => takenBackAnd(line, act, context, strictly));
  return [...new Set(amended.length > 0 ? amended : again)];
}

/** `humidity was 58`: told by the word beside it. */
function figureIn(to: string, context: LineContext): readonly string[] {
  const figures = (piecesOf(to, context) ?? []).flatMap((piece) =>
    piece.is === 'figure' && piece.of === 'percent' ? [piece.text] : [],
  );
  return figures.length === 1 ? figures : [];
}

/** `23 grados`: in the speaker's own. */
function inDegrees(said: string, context: LineContext): string {
  const number = withoutDegrees(said, context);
  return number !== said && /^-?[\d.,]+$/.test(number) ? `${number}${context.units === 'us' ? 'F' : 'C'}` : said;
}

/** The whole of what was said is a time; a number alone is none. */
function timeIn(said: string, context: LineContext): EpochMs | undefined {
  for (const line of said.includes(':') ? [said, `at ${said}`] : [said]) {
    const tokens = tokenize(line, context.hearing);
    const time = saidTimeFrom(tokens, 0, context);
    if (time !== undefined && 'at' in time && time.to === tokens.length) return time.at;
  }
  return undefined;
}

function at(time: EpochMs, act: Wrong, context: LineContext, strictly: Strictly): readonly string[] {
  const moved = `at ${isoLocal(time, context.zone)}`;
  const amended = amending(moved, act, strictly);
  return amended.length > 0 ? amended : takenBackAnd(act.line ?? '', { ...act, at: time }, context, strictly);
}

function amending(figure: string, { target, corrects, why }: Wrong, strictly: Strictly): readonly string[] {
  if (target === undefined) return [];
  const line = `${target} ${figure} ${JSON.stringify(why)}`;
  const read = strictly(line);
  const isIt = read.kind === 'command' && read.command.verb === 'amend' && corrects(read.command) !== undefined;
  return isIt ? [line] : [];
}

/** When it was done stays. */
function takenBackAnd(line: string, act: SaidAct, context: LineContext, strictly: Strictly): readonly string[] {
  if (act.line === undefined || strictly(line).kind !== 'command') return [];
  const when = act.at === undefined ? '' : ` at ${isoLocal(act.at, context.zone)}`;
  return [`undo entry ${act.entry}; ${line}${when}`];
}
