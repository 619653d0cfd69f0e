// Weights of no named pot, by whoever has just weighed another: they may put that one right, and are never recorded of the next at
// once.

import type { CommandOf } from '../../../core/commands.ts';
import type { BatchNumber } from '../../../core/ids.ts';
import { saidPlainly } from '../as-said/as-said.ts';
import type { LineContext, Reading } from '../reading.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import type { Strictly } from '../understood.ts';
import { writeLine } from '../write-line.ts';
import { linesSwapped, saysSwapped } from './swapped.ts';

type Act = Extract<Reading, { kind: 'command' }>;

/** Which it may be, a tap each; `undefined`: it is plain. `line`: as it was said. */
export function ofWhichPot(
  line: string,
  act: Act,
  context: LineContext,
  strictly: Strictly,
): readonly string[] | undefined {
  const { command } = act;
  if (command.verb !== 'weigh') return undefined;
  const said = context.last?.().said();
  const latest = /^amend (\d+) weigh$/.exec(said?.target ?? '')?.[1];
  if (said === undefined || latest === undefined) return undefined;
  const pots = otherPots(line, { ...act, command }, Number(latest), context);
  if (pots.length === 0) return undefined;
  const swapped = said.line === undefined ? undefined : saysSwapped(line, said.line, context);
  const right = swapped && linesSwapped(swapped, { line: said.line, recorded: said, why: line }, context, strictly);
  return [...(right ?? []), ...pots.map((batch) => writeLine({ ...act, command: { ...command, batch } }, context))];
}

/** Those that it may be recorded of, and that neither the line names nor the latest act weighed. */
function otherPots(
  line: string,
  { command, takenAs }: Act & { readonly command: CommandOf<'weigh'> },
  latest: BatchNumber,
  context: LineContext,
): readonly BatchNumber[] {
  const { batch } = command;
  if (batch !== undefined)
    return batch === latest || takenAs === undefined || names(batch, line, context) ? [] : [batch];
  const waiting = (context.live?.().batches ?? []).flatMap(({ number, phase }) =>
    phase === 'to-weigh' ? [number] : [],
  );
  return waiting.includes(latest) ? [] : waiting;
}

/** `pot one` too. */
const names = (batch: BatchNumber, line: string, context: LineContext): boolean =>
  [line, ...saidPlainly(line, context).map((each) => each.line)].some((each) =>
    (piecesOf(each, context) ?? []).some(
      (piece) => (piece.is === 'batch' && piece.number === batch) || (piece.is === 'number' && piece.value === batch),
    ),
  );
