// `used acetone 500ml gun-cleaning`: what, how much of it, and for what. No fields are read off it: what was used may have
// several words, of which only the last may say for what.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { type SolventUse, solventUses } from '../../../core/solvent-uses.ts';
import type { Fault } from '../reading.ts';
import { roundsOffUse, usesCalled } from '../tongues/english/line-words.ts';
import type { ActLine } from './act-line.ts';
import { amountFrom } from './figure-of-slot.ts';
import { wordOf } from './read-names.ts';
import { sortPieces } from './sort-pieces.ts';

const usesByWord: ReadonlyMap<string, SolventUse> = new Map([
  ...solventUses.map((use): [string, SolventUse] => [use, use]),
  ...usesCalled,
]);

export function readUsed(act: ActLine): CommandOf<'used'> | Fault {
  const gathered = sortPieces(act);
  if (isFailed(gathered)) return gathered;
  const { words: typed, figures } = gathered;
  const said = typed.map(wordOf).filter((word, i) => i === 0 || !roundsOffUse.has(word));
  // `para limpiar pistola`: what is cleaned says it.
  const words = said.filter((word, i) => i === 0 || word !== 'wipe' || usesByWord.get(said[i + 1] ?? '') === undefined);
  const last = words.at(-1) ?? '';
  const use = words.length > 1 ? usesByWord.get(last) : undefined;
  const material = (use === undefined ? words : words.slice(0, -1)).join('-');
  if (material === '') return { failed: 'incomplete', needs: ['material'] };
  const used = figures.get('solvent-amount');
  if (used === undefined) return { failed: 'incomplete', needs: ['solvent-amount'] };
  return { verb: 'used', material, amount: amountFrom(used), use: use ?? 'other' };
}
