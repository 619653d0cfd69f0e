// Which of all that runs is shown first: what is over, then what is about to be, then what waits for somebody, then the
// rest; of the same weight the one that ends sooner, and of the same moment by name.

import { known } from '../../core/known.ts';
import { inNaturalOrder } from '../../core/natural-order.ts';
import type { NounClock } from '../../core/noun-clock.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Tone } from './card.ts';

/**
 * From the most urgent on, with the tone that each is shown in; of one rank they are shown by their ends. `soon`: from where
 * an at-most clock is near its end. The next three go on only when somebody acts: `waits` is not as it should be, `given` has
 * lasted as long as it must, `ready` is the next step.
 */
const weights = {
  over: { rank: 0, tone: 'stop' },
  soon: { rank: 1, tone: 'warn' },
  waits: { rank: 2, tone: 'warn' },
  given: { rank: 2, tone: 'good' },
  ready: { rank: 2, tone: 'plain' },
  runs: { rank: 3, tone: 'plain' },
} as const satisfies Record<string, { readonly rank: number; readonly tone: Tone }>;
type Weight = keyof typeof weights;
const inOrder: readonly Weight[] = ['over', 'soon', 'waits', 'given', 'ready', 'runs'];

export interface Urgency {
  readonly is: Weight;
  /** The end of what may last at most so long. */
  readonly endsAt?: EpochMs;
  /** The end of what must last at least so long: nothing spoils before it. */
  readonly dueAt?: EpochMs;
}

export const toneOf = ({ is }: Urgency): Tone => weights[is].tone;

/** Of one clock. */
export function urgencyOf(clock: NounClock, now: EpochMs): Urgency {
  switch (clock.errs) {
    case 'at-least':
      if (clock.goes === 'given') return { is: 'given' };
      if (clock.goes !== 'runs') return { is: 'waits' };
      return { is: 'runs', dueAt: clock.dueAt };
    case 'at-most':
      return { is: clock.dueAt <= now ? 'over' : clock.nearAt <= now ? 'soon' : 'runs', endsAt: clock.dueAt };
  }
}

/** Of all that is true of one thing; nothing at all runs on. */
export function mostUrgent(of: readonly Urgency[]): Urgency {
  const is = inOrder.find((weight) => of.some((each) => each.is === weight)) ?? 'runs';
  const endsAt = earliest(of.map((each) => each.endsAt));
  return { is, ...known({ endsAt, dueAt: earliest(of.map((each) => each.dueAt)) }) };
}

interface Listed {
  readonly name: string;
  readonly urgency: Urgency;
}

export function byUrgency(a: Listed, b: Listed): number {
  return (
    weights[a.urgency.is].rank - weights[b.urgency.is].rank ||
    inTime(endOf(a.urgency), endOf(b.urgency)) ||
    inNaturalOrder(a.name, b.name)
  );
}

/** What only has to last holds nobody up while something else waits. */
function endOf({ is, endsAt, dueAt }: Urgency): EpochMs | undefined {
  return is === 'runs' ? earliest([endsAt, dueAt]) : endsAt;
}

function earliest(times: readonly (EpochMs | undefined)[]): EpochMs | undefined {
  return times.flatMap((time) => time ?? []).sort((a, b) => a - b)[0];
}

const inTime = (a: EpochMs | undefined, b: EpochMs | undefined): number =>
  a === b ? 0 : (a ?? Number.POSITIVE_INFINITY) - (b ?? Number.POSITIVE_INFINITY);
