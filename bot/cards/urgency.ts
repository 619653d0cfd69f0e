// Which of all that runs is shown first: what is over, then what is about to be, then what waits for somebody, then the
// rest; of the same weight the one that ends sooner, and of the same moment by name.

import { inNaturalOrder } from '../../core/natural-order.ts';
import type { EpochMs } from '../../core/units.ts';

const weights = ['over', 'soon', 'waits', 'runs'] as const;

export interface Urgency {
  /** `soon`: from where an at-most clock is near its end. `waits`: it goes on only when somebody acts. */
  readonly is: (typeof weights)[number];
  /** The end of what may last at most so long. */
  readonly endsAt?: EpochMs;
  /** The end of what must last at least so long: nothing spoils before it. */
  readonly dueAt?: EpochMs;
}

/** Of all that is true of one thing; nothing at all runs on. */
export function mostUrgent(of: readonly Urgency[]): Urgency {
  const is = weights.find((weight) => of.some((each) => each.is === weight)) ?? 'runs';
  const [endsAt, dueAt] = [earliest(of.map((each) => each.endsAt)), earliest(of.map((each) => each.dueAt))];
  return { is, ...(endsAt === undefined ? {} : { endsAt }), ...(dueAt === undefined ? {} : { dueAt }) };
}

interface Listed {
  readonly name: string;
  readonly urgency: Urgency;
}

export function byUrgency(a: Listed, b: Listed): number {
  return (
    weights.indexOf(a.urgency.is) - weights.indexOf(b.urgency.is) ||
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
