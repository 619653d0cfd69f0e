// `weigh 1 1201g 1198g`: both parts, or nothing is recorded.

import type { CommandOf } from '../../../core/commands.ts';
import { type Fault, isFault } from '../reading.ts';
import type { ActLine } from './act-line.ts';
import { withLabelsApart, withLeadingOnes } from './leading-ones.ts';
import { weightsFrom } from './weights.ts';

export function readWeigh(typed: ActLine): CommandOf<'weigh'> | Fault {
  const act = withLabelsApart(withLeadingOnes(typed));
  const weights = weightsFrom(act.tokens, act.line, act.context);
  if (isFault(weights)) return weights;
  const { batch, partAGrams, partBGrams } = weights;
  if (partAGrams === undefined) {
    return { code: 'incomplete', needs: partBGrams === undefined ? ['part-a', 'part-b'] : ['part-a'] };
  }
  if (partBGrams === undefined) return { code: 'incomplete', needs: ['part-b'] };
  return batch === undefined
    ? { verb: 'weigh', partAGrams, partBGrams }
    : { verb: 'weigh', batch, partAGrams, partBGrams };
}
