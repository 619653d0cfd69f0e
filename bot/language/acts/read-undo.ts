// `undo`; of a tap also which act it was meant to be, and up to which entry its presser was shown what rests on it:
// `undo entry 37 despite 41`.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { Fault } from '../reading.ts';
import type { Token } from '../typed/token.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { sortPieces } from './sort-pieces.ts';

export function readUndo(act: ActLine): CommandOf<'undo'> | Fault {
  const [first, second, third, fourth, stray] = act.tokens;
  if (!isWord(first, 'entry')) {
    const gathered = sortPieces(act);
    return isFailed(gathered) ? gathered : { verb: 'undo' };
  }
  const entry = countIn(second);
  if (entry === undefined) return leftOver(second ?? first);
  if (third === undefined) return { verb: 'undo', entry };
  const despite = isWord(third, 'despite') ? countIn(fourth) : undefined;
  if (despite === undefined) return leftOver(third);
  return stray === undefined ? { verb: 'undo', entry, despite } : leftOver(stray);
}

function isWord(token: Token | undefined, word: string): token is Token {
  return token?.kind === 'word' && token.word === word;
}

function countIn(token: Token | undefined): number | undefined {
  if (token?.kind !== 'number' || !token.number.whole || token.number.other !== undefined) return undefined;
  return token.number.value > 0 ? token.number.value : undefined;
}
