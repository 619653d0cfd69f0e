// A scale of the shop, `set scale bench 0.1g to 2kg`: its name, the step that it shows, the most that it carries. Of two
// weights the smaller is the step; a scale without a name is the only one.

import { type SettingValues, usualScale } from '../../../core/setting-kinds.ts';
import { grams } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { fillers, reachJoints } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { leftOver } from './act-line.ts';
import { missing, outside, type ValueSaid } from './setting-said.ts';

export function readScale(said: ValueSaid): SettingValues['scale'] | Fault {
  let scale: string | undefined;
  let isGone = false;
  const weights: { readonly token: Token; readonly value: number }[] = [];
  for (const token of said.values) {
    const word = wordIn(token);
    if (reachJoints.has(word) || fillers.has(word)) continue;
    if (token.kind === 'quantity' && token.quantity.is === 'mass' && weights.length < 2)
      weights.push({ token, value: token.quantity.value });
    else if (token.kind === 'word' && ['off', 'no'].includes(word) && !isGone) isGone = true;
    else if (token.kind === 'word' && /^\p{L}[\p{L}\d-]*$/u.test(word) && scale === undefined) scale = word;
    else return leftOver(token);
  }
  const [step, most] = weights.toSorted((one, other) => one.value - other.value);
  if (isGone) return step === undefined ? { scale: scale ?? usualScale } : leftOver(step.token);
  if (step === undefined) return missing(said);
  const fault = outside(said, step.token, step.value);
  if (fault !== undefined) return fault;
  const stepGrams = grams(step.value);
  return { scale: scale ?? usualScale, stepGrams, ...(most !== undefined && { mostGrams: grams(most.value) }) };
}
