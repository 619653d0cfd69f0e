// Starts the bells of a crew and, where there is one, its page: both go on by themselves until they are stopped.

import { join } from 'node:path';
import { type Failed, isFailed } from '../../core/failed.ts';

import { converse } from '../terminal/interactive.ts';
import { startTicker } from '../time/ticker.ts';
import { stderrLog } from './log.ts';
import { packageFolder } from './open-record.ts';
import type { StartedCrew } from './start-crew.ts';

export interface BellsAndPage {
  /** Something was recorded: the next bell may have moved. */
  readonly wake: () => void;
  /** Somebody types at this terminal, until the input ends. */
  readonly typed: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** `notice`: stands on every page. A fault where the page cannot be opened. */
export async function startBellsAndPage(
  started: StartedCrew,
  speed: number,
  notice?: string,
): Promise<BellsAndPage | Failed<string>> {
  const { flags, crewFile, opened, clock, wired, host, conversation, papers, terminal, print } = started;
  const { executor, ringer, pageOverview: overview, picture, tongues } = wired;
  const page =
    conversation === undefined
      ? undefined
      : await (await import('../web/start-page.ts')).startPage({
          flags,
          folder: opened.place?.folder,
          host,
          conversation,
          overview,
          picture,
          papers,
          crewFile,
          tongues,
          clock,
          log: stderrLog,
          assetFolder: join(packageFolder(), 'bot/web/assets'),
          notice,
          // Standard output holds nothing but JSON where JSON was asked for.
          out: flags.json ? process.stderr : process.stdout,
        });
  if (page !== undefined && isFailed(page)) {
    opened.store.close();
    return page;
  }
  const ticker = startTicker({ ringer, executor, clock, log: stderrLog, speed });
  started.onLine(ticker.wake);
  return {
    wake: ticker.wake,
    typed: () => converse({ input: process.stdin, output: process.stdout, terminal, ticker, ringer, clock, print }),
    stop: async () => {
      await ticker.stop();
      await page?.stop();
      conversation?.close();
      opened.store.close();
      process.stdin.destroy();
    },
  };
}
