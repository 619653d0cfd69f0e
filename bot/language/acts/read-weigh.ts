// `weigh 1 1201g 1198g`: both parts; `weigh 1 a 1201g`: one, named by its letter. `add 1 b 14g`: more of one.
// No fields are read off such a line: two figures of one kind go by their letters or their order.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import type { Fault } from '../reading.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, lineWith } from './act-line.ts';
import { cansApart } from './cans-named.ts';
import { withLabelsApart, withLeadingOnes } from './leading-ones.ts';
import { type Weights, weightsFrom } from './weights.ts';

export function readWeigh(typed: ActLine): CommandOf<'weigh'> | Fault {
  const read = pouredFrom(typed);
  if (isFailed(read)) return read;
  const { weights, hasLetter, manner } = read;
  const { partAGrams, partBGrams } = weights;
  if (partAGrams !== undefined && partBGrams !== undefined) return { verb: 'weigh', ...manner, partAGrams, partBGrams };
  if (!hasLetter)
    return partAGrams === undefined ? incomplete() : { ...incomplete(), needs: ['part-b'], tries: lettered(read) };
  if (partAGrams !== undefined) return { verb: 'weigh', ...manner, partAGrams };
  return partBGrams === undefined ? incomplete() : { verb: 'weigh', ...manner, partBGrams };
}

export function readAdd(typed: ActLine): CommandOf<'add'> | Fault {
  const read = pouredFrom(typed);
  if (isFailed(read)) return read;
  const { weights, hasLetter, manner } = read;
  const { partAGrams, partBGrams } = weights;
  const grams = partAGrams ?? partBGrams;
  if (grams === undefined) return { failed: 'incomplete', needs: ['component', 'added'] };
  if (!hasLetter || (partAGrams !== undefined && partBGrams !== undefined)) {
    return { failed: 'incomplete', needs: ['component'], tries: lettered(read) };
  }
  return { verb: 'add', ...manner, component: partAGrams === undefined ? 'part-b' : 'part-a', grams };
}

interface PouredRead {
  readonly act: ActLine;
  readonly weights: Weights;
  readonly hasLetter: boolean;
  readonly manner: Pick<CommandOf<'weigh'>, 'batch' | 'cans'>;
}

function pouredFrom(typed: ActLine): PouredRead | Fault {
  const apart = cansApart(typed.tokens);
  if (isFailed(apart)) return apart;
  const act = withLabelsApart(withLeadingOnes({ ...typed, tokens: apart.rest }));
  const weights = weightsFrom(act.tokens, act.line, act.context);
  if (isFailed(weights)) return weights;
  const manner = known({ batch: weights.batch, cans: apart.cans });
  return { act, weights, hasLetter: act.tokens.some(isLetter), manner };
}

function isLetter(token: Token): boolean {
  return ['a', 'b'].includes(wordIn(token));
}

function incomplete(): Fault {
  return { failed: 'incomplete', needs: ['part-a', 'part-b'] };
}

/** One weight without a letter: of A or of B? */
function lettered({ act }: PouredRead): readonly string[] {
  const weight = act.tokens.find((token) => token.kind === 'quantity');
  return weight === undefined ? [] : ['a', 'b'].map((letter) => lineWith(act.line, weight, `${letter} ${weight.text}`));
}
