// What Slack did not take is brought to it again by itself: after a few seconds, then less and less often. What it still
// does not take waits for the next act or for the slow round.

import type { Log } from '../../core/ports.ts';
import type { Pace } from './sender.ts';

export interface CatchUp {
  /** Something is behind. Asked again while it waits, it comes no sooner. */
  readonly behind: () => void;
}

export interface CatchUpNeeds {
  readonly pace: Pace;
  readonly log: Log;
  /** True where all of it arrived. */
  readonly again: () => Promise<boolean>;
}

const pausesMs = [5_000, 10_000, 20_000, 40_000, 60_000] as const;

export function createCatchUp({ pace, log, again }: CatchUpNeeds): CatchUp {
  let isWaiting = false;

  function later(ms: number, work: () => void): void {
    if (pace.later !== undefined) pace.later(ms, work);
    else void pace.wait(ms).then(work);
  }

  function wait(tries: number): void {
    const pause = pausesMs[tries];
    isWaiting = pause !== undefined;
    if (pause === undefined) {
      log.error('slack-stays-behind', { tries });
      return;
    }
    later(pause, () => {
      again().then(
        (arrived) => (arrived ? rest() : wait(tries + 1)),
        (error: unknown) => {
          log.error('not-caught-up', { error: String(error) });
          rest();
        },
      );
    });
  }

  function rest(): void {
    isWaiting = false;
  }

  return {
    behind: () => {
      if (!isWaiting) wait(0);
    },
  };
}
