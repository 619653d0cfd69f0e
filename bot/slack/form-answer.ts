// What a form's sender is told at once, and how long Slack waits for it.

import { answerWithinMs } from './limits.ts';
import type { Pace } from './sender.ts';

export type FormAnswer =
  | { readonly is: 'closed' }
  /** By block: what is wrong stands beside its field, and what was typed stays. */
  | { readonly is: 'wrong'; readonly errors: Readonly<Record<string, string>> };

/**
 * Slack waits 3 s for what stands beside the fields; what takes longer is told afterwards, by `fill` itself. `resumed`:
 * nobody waits any more for what an earlier life took in.
 */
export async function answeredInTime(
  fill: (isLate: () => boolean) => Promise<FormAnswer>,
  pace: Pace,
  resumed: boolean,
): Promise<FormAnswer> {
  let late = resumed;
  const filled = fill(() => late);
  const first = await Promise.race([filled, pace.wait(answerWithinMs).then(() => undefined)]);
  late ||= first === undefined;
  return first ?? { is: 'closed' };
}
