// `mix 2.4kg build 24C 48%`: how much, and optionally by which sheet and in what air.

import type { Amount, CommandOf } from '../../../core/commands.ts';
import { type Fault, isFault } from '../reading.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { airFrom } from './air-said.ts';
import { type Gathered, gather } from './gather.ts';
import { withLeadingOnes } from './leading-ones.ts';
import { sheetFrom } from './read-names.ts';

export function readMix(typed: ActLine): CommandOf<'mix'> | Fault {
  const act = withLeadingOnes(typed);
  const gathered = gather(act);
  if (isFault(gathered)) return gathered;
  const amount = amountFrom(gathered);
  const sheet = sheetFrom(act, gathered.words);
  const stray = gathered.words.find((token) => /^\d/.test(token.text)) ?? gathered.words[0];
  if (typeof sheet === 'object') {
    // `mix two kg`, `mix 2.4k`: what fits no sheet was rather meant as the amount.
    return amount === undefined && stray !== undefined ? { ...leftOver(stray), needs: ['amount'] } : sheet;
  }
  if (amount === undefined) return { code: 'incomplete', needs: ['amount'] };
  const air = airFrom(gathered);
  if (sheet === undefined) return air === undefined ? { verb: 'mix', amount } : { verb: 'mix', amount, air };
  return air === undefined ? { verb: 'mix', amount, sheet } : { verb: 'mix', amount, sheet, air };
}

function amountFrom({ mass, volume }: Gathered): Amount | undefined {
  if (mass !== undefined) return { kind: 'mass', grams: mass };
  return volume === undefined ? undefined : { kind: 'volume', litres: volume };
}
