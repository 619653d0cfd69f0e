// What tells in words of its own that an act is done which a card of the last minutes offered: `argon, done`, `sí, ya está seco, lo
// acabo de tocar`. It names nothing else, so that it is the tap of that card, and no more than a tap; nobody
// vouches for anything so.

import { fieldsOf } from '../line-fields.ts';
import type { LineContext } from '../reading.ts';
import { actOfLine } from '../sayings/likeliest.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { isUnsaid } from '../slots-heard/unsaid.ts';
import type { Understands } from '../understood.ts';
import { longestAnswer } from './bare-answer.ts';
import { mayBeBare } from './may-be-bare.ts';

/** So likely its words are of that act, which is likelier than others since it was offered. */
const leastShare = 0.35;

export const offeredAct: Understands = (line, context, strictly) => {
  if (line.endsWith('?') || line.length > longestAnswer || !namesNothing(line, context)) return undefined;
  const open = context.last?.().open ?? [];
  const likely = context.hearing.weighed.weigh(line).filter(({ share }) => share >= leastShare);
  const letters = lettersIn(line);
  const lines = open.flatMap((each) =>
    fieldsOf(each.line).length === 0 &&
    // What takes back is said so: `and the last one` is no undo.
    actOfLine(each.line) !== 'undo' &&
    // `opened A` is no tap that opens B.
    letters.every((letter) => lettersIn(each.line).includes(letter)) &&
    likely.some(({ meaning }) => meaning === actOfLine(each.line))
      ? [each.line]
      : [],
  );
  const read = lines.filter((each) => {
    const came = strictly(each);
    return came.kind === 'command' && mayBeBare(came, false);
  });
  return read.length === 0 ? undefined : { is: 'likely', lines: [...new Set(read)] };
};

const namesNothing = (line: string, context: LineContext): boolean =>
  namesOnlyWords(line, context) && !isDenied(line, context);

/** No part, pot, can or figure. */
export const namesOnlyWords = (line: string, context: LineContext): boolean =>
  (piecesOf(line, context) ?? []).every(({ is }) => is === 'word' || is === 'gas' || is === 'method');

function isDenied(line: string, context: LineContext): boolean {
  const pieces = piecesOf(line, context) ?? [];
  const { said } = context.hearing;
  return isUnsaid(pieces, claimed(pieces, said), said);
}

const lettersIn = (line: string): readonly string[] => line.match(/\b[AB]\b/g) ?? [];
