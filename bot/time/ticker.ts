// Wakes the ringer: sleeps until the next due time, never longer than 15 s, since clocks jump and laptops sleep; and a
// cron tick each minute makes the rows equal to the plan again.

import cron from 'node-cron';
import type { Executor } from '../../core/execute.ts';
import type { Clock, Log } from '../../core/ports.ts';
import type { Ringer } from '../../core/reminders/run.ts';
import { createTurns } from './turns.ts';

const longestSleepMs = 15_000;
/** Where something is due that could not ring just now: long enough not to spin. */
const shortestRetryMs = 1_000;

export interface Ticker {
  /** Something was recorded: the next due time may have moved. */
  readonly wake: () => void;
  readonly stop: () => Promise<void>;
}

interface TickerDeps {
  readonly ringer: Ringer;
  readonly executor: Pick<Executor, 'reconcile'>;
  readonly clock: Clock;
  readonly log: Log;
  /** How many times faster than the wall's the clock runs. */
  readonly speed: number;
}

export function startTicker({ ringer, executor, clock, log, speed }: TickerDeps): Ticker {
  let timer: NodeJS.Timeout | undefined;
  const turns = createTurns<'ringing'>();
  let stopped = false;

  const everyMinute = cron.schedule('* * * * *', async () => {
    try {
      await executor.reconcile(clock.now());
    } catch (error) {
      log.error('reconcile-failed', { error: String(error) });
    }
    wake();
  });

  function wake(): void {
    if (stopped) return;
    clearTimeout(timer);
    void turns.take('ringing', ringThenSleep);
  }

  async function ringThenSleep(): Promise<void> {
    const wait = await ringing();
    if (stopped) return;
    clearTimeout(timer);
    timer = setTimeout(wake, Math.min(longestSleepMs, Math.ceil(wait)));
  }

  /** How long to sleep. A bell that breaks must not take the later ones with it. */
  async function ringing(): Promise<number> {
    try {
      await ringer.ringDue();
      const due = await ringer.nextDueAt();
      if (due === undefined) return longestSleepMs;
      const wait = (due - clock.now()) / speed;
      return wait > 0 ? wait : shortestRetryMs;
    } catch (error) {
      log.error('ringing-failed', { error: String(error) });
      return shortestRetryMs;
    }
  }

  wake();
  return {
    wake,
    stop: async () => {
      stopped = true;
      clearTimeout(timer);
      await everyMinute.stop();
      await turns.idle();
    },
  };
}
