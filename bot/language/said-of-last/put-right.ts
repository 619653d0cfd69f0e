// The strict lines that put one thing of an act right: through `amend` where it takes what was said, else taken back and said anew;
// of what was objected to only said anew.

import type { EpochMs } from '../../../core/units.ts';
import { saidPlainly } from '../as-said/as-said.ts';
import { withoutDegrees } from '../as-said/units-left-out.ts';
import type { LineContext } from '../reading.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { saidTimeFrom } from '../times/said-time.ts';
import { isoLocal } from '../times/wall-clock.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Strictly } from '../understood.ts';
import { actsAnew, type Change } from './acts-anew.ts';
import type { SaidAct } from './last.ts';

export interface Wrong {
  readonly line: string | undefined;
  /** `undefined`: it was objected to. */
  readonly recorded: SaidAct | undefined;
  /** In the speaker's own words. */
  readonly why: string;
}

export function linesForPiece(
  { to, from }: Change,
  wrong: Wrong,
  context: LineContext,
  strictly: Strictly,
): readonly string[] {
  const told = figureIn(to, context);
  const each =
    told.length > 0
      ? told
      : [to, ...saidPlainly(to, context).map(({ line }) => line)].map((said) => inDegrees(said, context));
  const { recorded, line = '' } = wrong;
  const time = each.map((said) => timeIn(said, context)).find((at) => at !== undefined);
  if (time !== undefined) return recorded === undefined ? [] : at(time, { ...wrong, recorded }, context, strictly);
  const anew = [...new Set(each)].flatMap((said) => actsAnew({ to: said, from }, line, context, strictly));
  const amended = anew.flatMap(({ figure }) =>
    figure === undefined || recorded === undefined
      ? []
      : // Its time names it: pressed later, the tap puts no other right.
        amending(`${figure} at ${isoLocal(recorded.happenedAt, context.zone)}`, recorded, wrong.why, strictly),
  );
  // What can be corrected in place is not taken back.
  const again = anew.flatMap((one) => takenBackAnd(one.line, wrong, context, strictly));
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

function at(
  time: EpochMs,
  { line, recorded, why }: Wrong & { readonly recorded: SaidAct },
  context: LineContext,
  strictly: Strictly,
): readonly string[] {
  const amended = amending(`at ${isoLocal(time, context.zone)}`, recorded, why, strictly);
  if (amended.length > 0) return amended;
  return takenBackAnd(line ?? '', { line, recorded: { ...recorded, at: time }, why }, context, strictly);
}

function amending(figure: string, { target, corrects }: SaidAct, why: string, strictly: Strictly): readonly string[] {
  if (target === undefined) return [];
  const line = `${target} ${figure} ${JSON.stringify(why)}`;
  const read = strictly(line);
  const isIt = read.kind === 'command' && read.command.verb === 'amend' && corrects(read.command) !== undefined;
  return isIt ? [line] : [];
}

/** When it was done stays. */
export function takenBackAnd(
  line: string,
  { line: was, recorded }: Wrong,
  context: LineContext,
  strictly: Strictly,
): readonly string[] {
  if (was === undefined || strictly(line).kind !== 'command') return [];
  if (recorded === undefined) return [line];
  const when = recorded.at === undefined ? '' : ` at ${isoLocal(recorded.at, context.zone)}`;
  return [`undo entry ${recorded.entry}; ${line}${when}`];
}
