// What happens to a pot: `stir 1`, `stop 1`, `filter 1`, `thick 1`, `gel 1`, `empty 1 200g`, `catch 12 300g`.

import type { Command, CommandOf } from '../../../core/commands.ts';
import { type Fault, isFault } from '../reading.ts';
import type { ActLine } from './act-line.ts';
import { withLeadingOnes } from './leading-ones.ts';
import { sortPieces } from './sort-pieces.ts';

type PotVerb = 'stir' | 'stop' | 'cover' | 'uncover' | 'filter' | 'thick' | 'gel' | 'judge';

export function potReader(verb: PotVerb): (act: ActLine) => Command | Fault {
  return (act) => {
    const gathered = sortPieces(act);
    if (isFault(gathered)) return gathered;
    return { verb, ...(gathered.batch !== undefined && { batch: gathered.batch }) };
  };
}

export function readEmpty(act: ActLine): CommandOf<'empty'> | Fault {
  const gathered = sortPieces(withLeadingOnes(act));
  if (isFault(gathered)) return gathered;
  const { batch, mass } = gathered;
  return { verb: 'empty', ...(batch !== undefined && { batch }), ...(mass !== undefined && { leftGrams: mass }) };
}

export function readCatch(act: ActLine): CommandOf<'catch'> | Fault {
  const gathered = sortPieces(withLeadingOnes(act));
  if (isFault(gathered)) return gathered;
  const { batch, mass } = gathered;
  if (mass === undefined) return { code: 'incomplete', needs: ['caught'] };
  return { verb: 'catch', grams: mass, ...(batch !== undefined && { batch }) };
}
