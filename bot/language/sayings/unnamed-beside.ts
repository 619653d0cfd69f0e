// `blasted some argon in can 3`: an act that the line as a whole hardly speaks for, of a thing that it does not name, is no act beside
// the one that it tells.

import { linesApart } from '../lines-apart.ts';
import type { LineContext } from '../reading.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { actOfLine } from './likeliest.ts';

/** So clearly the line tells one act alone. */
const clearly = 0.95;
const hardly = 0.02;

/** `lines`: the acts of each tap; without those that hold such an act. */
export function withoutUnnamed(lines: readonly string[], line: string, context: LineContext): readonly string[] {
  const { weigh } = context.hearing.weighed;
  const weighed = weigh(line);
  if ((weighed[0]?.share ?? 0) < clearly) return lines;
  const pieces = piecesOf(line, context) ?? [];
  const named = new Set(pieces.flatMap((piece) => (piece.is === 'parts' || piece.is === 'one-of' ? piece.names : [])));
  const isThing = pieces.some(({ is }) => is === 'can' || is === 'batch');
  if (!isThing || pieces.some(({ is }) => is === 'number')) return lines;
  const isBeside = (act: string): boolean =>
    (weighed.find(({ meaning }) => meaning === actOfLine(act))?.share ?? 1) < hardly &&
    context.parts.some((part) => act.split(' ').includes(part) && !named.has(part));
  return lines.filter((each) => !linesApart(each).some(isBeside));
}

/** `argon in can 3, capped it`: whoever puts gas over it closes it with that gas, so that no tap closes it without. */
export const withoutHeld = (lines: readonly string[]): readonly string[] =>
  lines.filter((each) => {
    const [verb, can, ...more] = each.split(' ');
    return !(verb === 'shut' && more.length === 0 && lines.some((other) => other === `blanket ${can}`));
  });
