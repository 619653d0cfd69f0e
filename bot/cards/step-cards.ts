// The answer about a step of the maker's paper: kept, or lacking and what to do instead.

import type { CommandOf } from '../../core/commands.ts';
import { peopleLeading } from '../../core/crew/crew.ts';
import type { Recorded } from '../../core/execute.ts';
import { statusOf } from '../../core/status.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, undoTap } from './card-context.ts';
import { nextTaps } from './next-taps.ts';
import { leftBy } from './recorded-act.ts';

export function confirmedCard(
  telling: Telling,
  { step, kept: said = true }: CommandOf<'confirm'>,
  outcome: Recorded,
): Card {
  const { steps } = telling.words;
  const [answer] = leftBy(outcome, 'StepAnswered');
  const { kept = said, batch: of } = answer ?? {};
  const batch = of === undefined ? undefined : telling.shop.batches.get(of);
  return makeCard(steps.noted(step, kept), kept ? 'good' : 'warn', {
    lines: kept ? [] : [steps.rows[step].instead],
    actions: [
      ...(batch === undefined ? [] : nextTaps(telling, statusOf.batch(telling, batch).next())),
      ...outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq)),
    ],
    ping: kept ? [] : peopleLeading(telling.shop.crew),
  });
}
