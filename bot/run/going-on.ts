// What goes on by itself until it is stopped: the bells, and where there is one the page.

import { join } from 'node:path';
import type { ConfigFault } from '../config/config.ts';
import { converse } from '../terminal/interactive.ts';
import { startTicker } from '../time/ticker.ts';
import type { AtWork } from './at-work.ts';
import { packageFolder } from './ground.ts';
import { stderrLog } from './log.ts';

export interface GoingOn {
  /** Something was recorded: the next bell may have moved. */
  readonly wake: () => void;
  /** Somebody types at this terminal, until the input ends. */
  readonly typed: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** `notice`: stands on every page. A fault where the page cannot be opened. */
export async function goOn(work: AtWork, speed: number, notice?: string): Promise<GoingOn | ConfigFault> {
  const { flags, crewFile, ground, clock, wired, host, conversation, papers, terminal, print } = work;
  const { executor, ringer, overview, picture } = wired;
  const page =
    conversation === undefined
      ? undefined
      : await (await import('../web/start-page.ts')).startPage({
          flags,
          folder: ground.place?.folder,
          host,
          conversation,
          overview,
          picture,
          papers,
          crewFile,
          clock,
          log: stderrLog,
          assetFolder: join(packageFolder(), 'bot/web/assets'),
          notice,
          // Standard output holds nothing but JSON where JSON was asked for.
          out: flags.json ? process.stderr : process.stdout,
        });
  if (page !== undefined && 'fault' in page) {
    ground.store.close();
    return page;
  }
  const ticker = startTicker({ ringer, executor, clock, log: stderrLog, speed });
  work.onLine(ticker.wake);
  return {
    wake: ticker.wake,
    typed: () => converse({ input: process.stdin, output: process.stdout, terminal, ticker, ringer, clock, print }),
    stop: async () => {
      await ticker.stop();
      await page?.stop();
      conversation?.close();
      ground.store.close();
      process.stdin.destroy();
    },
  };
}
