// `can 3 4` on a line that pours: which cans it came from. They are taken off before the weights are read.

import type { CanNumber } from '../../../core/ids.ts';
import { known } from '../../../core/known.ts';
import type { Fault } from '../reading.ts';
import { canMarks } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { countFrom } from './figure-of-slot.ts';

export interface CansApart {
  /** `undefined` where none is named. */
  readonly cans: readonly CanNumber[] | undefined;
  readonly rest: readonly Token[];
}

export function cansApart(tokens: readonly Token[]): CansApart | Fault {
  const mark = tokens.findIndex((token) => canMarks.has(wordIn(token)));
  if (mark === -1) return { cans: undefined, rest: tokens };
  const cans: CanNumber[] = [];
  let next = mark + 1;
  for (; next < tokens.length; next++) {
    const token = tokens[next];
    if (['and', '&'].includes(wordIn(token))) continue;
    if (token?.kind !== 'number') break;
    const can = countFrom(token);
    if (typeof can !== 'number') return { ...can, needs: ['can'] };
    if (!cans.includes(can)) cans.push(can);
  }
  const [token] = tokens.slice(mark);
  if (cans.length === 0) return { failed: 'incomplete', needs: ['can'], ...known({ token }) };
  return { cans, rest: [...tokens.slice(0, mark), ...tokens.slice(next)] };
}
