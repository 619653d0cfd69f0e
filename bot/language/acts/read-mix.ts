// `mix 2.4kg build 24C 48%`: how much, and optionally by which sheet and in what air.

import type { Amount, CommandOf } from '../../../core/commands.ts';
import { type Fault, isFault } from '../reading.ts';
import type { ActLine } from './act-line.ts';
import { type Gathered, gather } from './gather.ts';
import { withLeadingOnes } from './leading-ones.ts';
import { sheetFrom } from './read-names.ts';

export function readMix(typed: ActLine): CommandOf<'mix'> | Fault {
  const act = withLeadingOnes(typed);
  const gathered = gather(act);
  if (isFault(gathered)) return gathered;
  const amount = amountFrom(gathered);
  const sheet = sheetFrom(act, gathered.words);
  if (typeof sheet === 'object') return sheet;
  if (amount === undefined) return { code: 'incomplete', needs: ['amount'] };
  const { temperature, percent } = gathered;
  return {
    verb: 'mix',
    amount,
    ...(sheet !== undefined && { sheet }),
    ...((temperature !== undefined || percent !== undefined) && {
      air: {
        ...(temperature !== undefined && { celsius: temperature }),
        ...(percent !== undefined && { relativeHumidityPercent: percent }),
      },
    }),
  };
}

function amountFrom({ mass, volume }: Gathered): Amount | undefined {
  if (mass !== undefined) return { kind: 'mass', grams: mass };
  return volume === undefined ? undefined : { kind: 'volume', litres: volume };
}
