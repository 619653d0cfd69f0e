// Rounds over all that is to be shown: one at a time, and once more for whoever asked meanwhile. What a platform did not
// take is brought to it again by itself, after a few seconds, then less and less often; what it still does not take waits
// for the next act or for the slow round.

import type { Log } from '../../core/ports.ts';
import type { Pace } from '../time/pace.ts';

export type Rounds = ReturnType<typeof createRounds>;

interface RoundsDeps {
  readonly pace: Pace;
  readonly log: Log;
  /** True where all of it arrived. */
  readonly round: () => Promise<boolean>;
}

const pausesMs = [5_000, 10_000, 20_000, 40_000, 60_000] as const;

interface State extends RoundsDeps {
  running: Promise<boolean> | undefined;
  again: boolean;
  isWaiting: boolean;
}

export function createRounds(deps: RoundsDeps) {
  const state: State = { ...deps, running: undefined, again: false, isWaiting: false };
  const behind = () => {
    if (!state.isWaiting) retry(state, 0);
  };
  return {
    /** Something is behind. Asked again while it waits, it comes no sooner. */
    behind,
    /** Ends when all that was asked for by now has been shown or tried. */
    now: async (): Promise<void> => {
      if (!(await run(state))) behind();
    },
  };
}

function run(state: State): Promise<boolean> {
  state.again = state.running !== undefined;
  state.running ??= untilNobodyAsks(state);
  return state.running;
}

async function untilNobodyAsks(state: State): Promise<boolean> {
  try {
    for (;;) {
      state.again = false;
      const all = await state.round();
      if (!state.again) return all;
    }
  } finally {
    state.running = undefined;
  }
}

function retry(state: State, tries: number): void {
  const pause = pausesMs[tries];
  state.isWaiting = pause !== undefined;
  if (pause === undefined) {
    state.log.error('messages-stay-behind', { tries });
    return;
  }
  const work = async () => {
    try {
      if (!(await run(state))) return retry(state, tries + 1);
    } catch (error) {
      state.log.error('not-caught-up', { error: String(error) });
    }
    state.isWaiting = false;
  };
  const { pace } = state;
  if (pace.later !== undefined) pace.later(pause, () => void work());
  else void pace.wait(pause).then(work);
}
