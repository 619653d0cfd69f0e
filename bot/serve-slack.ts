// Batchbell as a service in Slack: starts it, keeps every crew's bells going, and runs until it is told to stop. Loaded only
// where Slack is on.

import type { CrewFile } from '../core/crew/crew.ts';
import type { CrewId } from '../core/ids.ts';
import type { Clock, Log, Postbox } from '../core/ports.ts';
import type { ConfigFault } from './config.ts';
import type { CrewRead } from './crew-files.ts';
import { createSlackLog } from './slack/slack-log.ts';
import type { SlackSettings } from './slack/slack-settings.ts';
import { type RingsTo, startSlack } from './slack/start-slack.ts';
import { startTicker, type Ticker } from './ticker.ts';
import type { Wired } from './wiring.ts';

export interface ServeSlackNeeds {
  readonly settings: SlackSettings;
  readonly crews: readonly CrewRead[];
  readonly postbox: Postbox;
  readonly clock: Clock;
  readonly speed: number;
  /** One crew over the record; its bells go to `rings`. */
  readonly wire: (crew: CrewId, crewFile: CrewFile, rings: RingsTo, log: Log) => Wired;
  /** Ends when the process is to stop. */
  readonly stop: Promise<unknown>;
}

/** Until it is stopped; a fault where it cannot start. */
export async function serveSlack(needs: ServeSlackNeeds): Promise<ConfigFault | undefined> {
  const { settings, crews, postbox, clock, speed } = needs;
  const log = createSlackLog();
  const tickers: Ticker[] = [];

  function tick({ executor, ringer }: Wired): () => void {
    let ticker: Ticker | undefined;
    void executor
      .reconcile(clock.now())
      .catch((error: unknown) => log.error('reconcile-failed', { error: String(error) }))
      .then(() => {
        ticker = startTicker({ ringer, executor, clock, log, speed });
        tickers.push(ticker);
      });
    return () => ticker?.wake();
  }

  async function stopTickers(): Promise<void> {
    for (const ticker of tickers) await ticker.stop();
  }

  const slack = await startSlack({
    ...{ settings, postbox, clock, log, crews },
    wire: (crew, crewFile, rings) => {
      const wired = needs.wire(crew, crewFile, rings, log);
      return { ...wired, wake: tick(wired) };
    },
  });
  if ('fault' in slack) {
    await stopTickers();
    return slack;
  }
  log.info('serving', { mode: settings.mode, port: slack.port() ?? null, crews: crews.length });
  await needs.stop;
  log.info('stopping');
  await slack.stop();
  await stopTickers();
  return undefined;
}
