// The answer to `purge`: how long the gas runs, what oxygen is left, by which sum, and what was taken for it.

import { type PurgeSum, purgeFor } from '../../core/can/purge.ts';
import type { Question } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import { percent } from '../../core/units.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf } from './facts.ts';

export function purgeCard(telling: Telling, { asked }: Extract<Question, { ask: 'purge' }>): Card {
  const { purge: words, gasSlowly } = telling.words.material;
  const sum = purgeFor(telling.shop, asked);
  if (isFailed(sum)) return makeCard(words.title, 'warn', { lines: [words[sum.failed]] });
  const isShort = sum.oxygenPercent > sum.targetPercent;
  return makeCard(words.title, isShort ? 'warn' : 'plain', {
    facts: factsOf(telling, {
      headspace: sum.headspaceLitres,
      'gas-needed': sum.gasLitres,
      'oxygen-left': sum.oxygenPercent,
    }),
    lines: [
      gasRunsLine(telling, sum),
      ...(isShort ? [words.short(sum.targetPercent, telling.figures)] : []),
      words.sum(sum.targetPercent, telling.figures),
      words.taken(sum.of, telling.figures),
      gasSlowly,
    ],
  });
}

/** On the card of a can too, where the shop has set its flow. Some oxygen is always left: never told lower than it is. */
export const gasRunsLine = ({ words: { material }, figures }: Telling, sum: PurgeSum): string =>
  material.purge.runs(sum.minutes, sum.litresPerMinute, percent(Math.ceil(sum.oxygenPercent * 10) / 10), figures);
