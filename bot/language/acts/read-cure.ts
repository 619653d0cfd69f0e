// `cure impeller-7 oven 90C`: which parts, where, and at how many degrees.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { Fault } from '../reading.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { partsFrom, wordOf } from './read-names.ts';
import { sortPieces } from './sort-pieces.ts';

export function readCure(act: ActLine): CommandOf<'cure'> | Fault {
  const gathered = sortPieces(act);
  if (isFailed(gathered)) return gathered;
  const ways = gathered.words.filter((token) => ['oven', 'room'].includes(wordOf(token)));
  const parts = partsFrom(
    gathered.words.filter((token) => !ways.includes(token)),
    act.context,
  );
  if (isFailed(parts)) return parts;
  const [way, second] = ways;
  const { temperature } = gathered;
  if (second !== undefined) return leftOver(second);
  const named = way === undefined ? act.verb.way : wordOf(way);
  if (named === undefined) {
    return { failed: 'incomplete', needs: ['way'], tries: ['oven', 'room'].map((word) => `${act.line} ${word}`) };
  }
  if (named === 'oven') {
    return {
      verb: 'cure',
      parts,
      way: { kind: 'oven', ...(temperature !== undefined && { setCelsius: temperature }) },
    };
  }
  const stray = act.tokens.find((token) => token.kind === 'quantity');
  return stray === undefined ? { verb: 'cure', parts, way: { kind: 'room' } } : leftOver(stray);
}
