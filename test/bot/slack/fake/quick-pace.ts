// A pace for tests: nobody waits.

import type { Pace } from '../../../../bot/time/pace.ts';

/** Waits cost no time: the clock by which Slack's limits are kept jumps instead, and only by them. */
export function quickPace(): Pace & { readonly waits: number[] } {
  let skipped = 0;
  const waits: number[] = [];
  return {
    waits,
    now: () => skipped,
    wait: async (ms) => {
      waits.push(ms);
      skipped += ms;
      await new Promise((resolve) => setImmediate(resolve));
    },
  };
}
