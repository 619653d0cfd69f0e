// `mix 2.4kg build 24C 48% in 5l`: how much, and optionally by which sheet, in what air and in how big a vessel.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { Litres } from '../../../core/units.ts';
import type { Amount } from '../../../core/verbs/said.ts';
import type { Fault } from '../reading.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { airFrom } from './air-said.ts';
import { withLeadingOnes } from './leading-ones.ts';
import { sheetFrom } from './read-names.ts';
import { type SortedPieces, sortPieces } from './sort-pieces.ts';

export function readMix(typed: ActLine): CommandOf<'mix'> | Fault {
  const { act, vesselLitres } = vesselApart(withLeadingOnes(typed));
  const gathered = sortPieces(act);
  if (isFailed(gathered)) return gathered;
  const amount = amountFrom(gathered);
  const sheet = sheetFrom(act, gathered.words);
  const stray = gathered.words.find((token) => /^\d/.test(token.text)) ?? gathered.words[0];
  if (typeof sheet === 'object') {
    // `mix two kg`, `mix 2.4k`: what fits no sheet was rather meant as the amount.
    return amount === undefined && stray !== undefined ? { ...leftOver(stray), needs: ['amount'] } : sheet;
  }
  if (amount === undefined) return { failed: 'incomplete', needs: ['amount'] };
  const air = airFrom(gathered);
  return {
    verb: 'mix',
    amount,
    ...(sheet !== undefined && { sheet }),
    ...(air !== undefined && { air }),
    ...(vesselLitres !== undefined && { vesselLitres }),
  };
}

/** `in 5l`: a volume after `in` is the vessel's. */
function vesselApart(act: ActLine): { readonly act: ActLine; readonly vesselLitres?: Litres } {
  const { tokens } = act;
  for (const [i, token] of tokens.entries()) {
    const next = tokens[i + 1];
    if (token.kind !== 'word' || token.word !== 'in' || next?.kind !== 'quantity') continue;
    const { quantity } = next;
    if (quantity.is === 'volume' && quantity.litres > 0) {
      return { act: { ...act, tokens: tokens.toSpliced(i, 2) }, vesselLitres: quantity.litres };
    }
  }
  return { act };
}

function amountFrom({ mass, volume }: SortedPieces): Amount | undefined {
  if (mass !== undefined) return { kind: 'mass', grams: mass };
  return volume === undefined ? undefined : { kind: 'volume', litres: volume };
}
