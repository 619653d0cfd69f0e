// What a form's sender is told at once, and how long Slack waits for it.

import { wallPace } from '../time/pace.ts';
import { answerWithinMs } from './limits.ts';

export type FormAnswer =
  | { readonly is: 'closed' }
  /** By block: what is wrong stands beside its field, and what was typed stays. */
  | { readonly is: 'wrong'; readonly errors: Readonly<Record<string, string>> };

export interface Submitted {
  /** Never rejects. */
  readonly answer: Promise<FormAnswer>;
  /** Worked off, and shown; rejects where it broke. */
  readonly done: Promise<void>;
}

export interface Filling {
  /** Nobody waits any more: what is wrong is told by itself. */
  readonly isLate: () => boolean;
  /** Part of the work, but the form closes without it. */
  readonly after: (shown: Promise<void>) => void;
}

/** Slack waits 3 s for what stands beside the fields. `resumed`: nobody waits for what an earlier life took in. */
export function answeredInTime(fill: (filling: Filling) => Promise<FormAnswer>, resumed: boolean): Submitted {
  let late = resumed;
  const afterwards: Promise<void>[] = [];
  const filled = fill({ isLate: () => late, after: (shown) => afterwards.push(shown) });
  const closed: FormAnswer = { is: 'closed' };
  const answer = Promise.race([filled, wallPace.wait(answerWithinMs).then(() => undefined)]).then(
    (first) => {
      late ||= first === undefined;
      return first ?? closed;
    },
    () => closed,
  );
  return { answer, done: filled.then(() => Promise.all(afterwards)).then(() => undefined) };
}
