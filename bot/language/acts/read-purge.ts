// `purge can 3 5L/min`, `purge 20kg can 8kg left 5L/min`, `purge 4L 5L/min 3min`: of which can, how full, at which flow, and where
// somebody asks it, after how long.

import type { PurgeAsked } from '../../../core/can/purge.ts';
import type { Question } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { grams, litres, minutes } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { canMarks, fillers } from '../tongues/english/line-words.ts';
import { flowFrom } from '../typed/rare-figures.ts';
import type { Token } from '../typed/token.ts';
import { wordIn } from '../typed/token.ts';
import { isIgnoredOn } from '../verbs-typed.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { countFrom, outside } from './figure-of-slot.ts';

type Writable = { -readonly [K in keyof PurgeAsked]: PurgeAsked[K] };

export function readPurge({ tokens, context: { hearing } }: ActLine): Question | Fault {
  const asked: Writable = {};
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const flow = flowFrom(tokens, i);
    if (flow !== undefined && asked.litresPerMinute === undefined) {
      const fault = outside('gas-flow', token, flow.value);
      if (fault !== undefined) return fault;
      asked.litresPerMinute = flow.value;
      i = flow.to - 1;
      continue;
    }
    const word = wordIn(token);
    const isSaid = canMarks.has(word) || fillers.has(word) || isIgnoredOn('purge', word, hearing);
    const fault = isSaid ? undefined : take(asked, token);
    if (fault !== undefined) return fault;
  }
  if (asked.can === undefined && asked.soldGrams === undefined && asked.headspaceLitres === undefined)
    return { failed: 'incomplete', needs: ['can'] };
  return { ask: 'purge', asked };
}

function take(asked: Writable, token: Token): Fault | undefined {
  if (token.kind === 'number' && asked.can === undefined) {
    const can = countFrom(token, 'can');
    if (isFailed(can)) return can;
    asked.can = can;
    return undefined;
  }
  if (token.kind !== 'quantity') return leftOver(token);
  const { is, value } = token.quantity;
  if (is === 'mass' && asked.soldGrams === undefined) asked.soldGrams = grams(value);
  else if (is === 'mass' && asked.leftGrams === undefined) asked.leftGrams = grams(value);
  else if (is === 'volume' && asked.headspaceLitres === undefined) asked.headspaceLitres = litres(value);
  else if (is === 'duration' && asked.minutes === undefined) asked.minutes = minutes(value);
  else return leftOver(token);
  return undefined;
}
