// Batchbell as a service in Slack: starts it, keeps every crew's bells going, and runs until it is told to stop. Loaded only
// where Slack is on. A single crew may have its shop page beside it: what is said in one is seen in the other.

import type { CrewFile } from '../../core/crew/crew.ts';
import type { CrewId } from '../../core/ids.ts';
import type { Clock, Log, Postbox } from '../../core/ports.ts';
import type { ConfigFault } from '../config/config.ts';
import type { CrewRead } from '../config/crew-files.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import type { RingsTo } from '../slack/make-desk.ts';
import { createSlackLog } from '../slack/slack-log.ts';
import type { SlackSettings } from '../slack/slack-settings.ts';
import { type Slack, startSlack } from '../slack/start-slack.ts';
import type { Host } from '../talk/host.ts';
import type { Overview } from '../talk/overview.ts';
import { startTicker, type Ticker } from '../time/ticker.ts';
import type { Conversation } from '../web/conversation.ts';
import { overheardHost } from '../web/overheard-host.ts';
import type { Page } from '../web/page.ts';
import { ringsInBoth } from './rings-in-both.ts';
import type { Wired } from './wiring.ts';

/** What the page shows of the crew. */
export interface PageShown {
  readonly host: Host;
  readonly conversation: Conversation;
  readonly overview: Overview;
  readonly picture: Wired['picture'];
  readonly papers: PaperTray;
  readonly crewFile: CrewFile;
  readonly tongues: Tongues;
  readonly log: Log;
}

export interface PageBeside {
  readonly openConversation: (log: Log) => Conversation;
  readonly open: (shown: PageShown) => Promise<Page | ConfigFault>;
}

export interface ServeSlackNeeds {
  readonly settings: SlackSettings;
  readonly crews: readonly CrewRead[];
  readonly postbox: Postbox;
  readonly clock: Clock;
  readonly speed: number;
  /** One crew over the record; its bells go to `rings`. */
  readonly wire: (crew: CrewId, crewFile: CrewFile, rings: RingsTo, log: Log) => Wired;
  /** Of a single crew; `undefined`: none. */
  readonly page: PageBeside | undefined;
  /** Ends when the process is to stop. */
  readonly stop: Promise<unknown>;
}

/** Until it is stopped; a fault where it cannot start. */
export async function serveSlack(needs: ServeSlackNeeds): Promise<ConfigFault | undefined> {
  const { settings, crews, postbox, clock, speed } = needs;
  const log = createSlackLog();
  const tickers: Ticker[] = [];
  const conversation = needs.page?.openConversation(log);
  let shown: (Omit<PageShown, 'host' | 'conversation' | 'log'> & { wired: Wired; wake: () => void }) | undefined;

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

  /** A page that cannot be opened takes no bell with it. */
  async function openBeside(slack: Slack): Promise<Page | undefined> {
    if (needs.page === undefined || conversation === undefined || shown === undefined) return undefined;
    const { wired, wake, ...parts } = shown;
    const host = overheardHost(wired.host, conversation, (answer) => {
      if (!answer.recorded) return;
      wake();
      void slack.refresh(answer).catch((error: unknown) => log.error('refresh-failed', { error: String(error) }));
    });
    const page = await needs.page.open({ ...parts, host, conversation, log });
    if (!('fault' in page)) return page;
    log.error('page-not-opened', page);
    return undefined;
  }

  const slack = await startSlack({
    settings,
    postbox,
    clock,
    log,
    crews,
    wire: (crew, crewFile, rings) => {
      const both = conversation === undefined ? rings : ringsInBoth(rings, conversation);
      const wired = needs.wire(crew, crewFile, both, log);
      const wake = tick(wired);
      if (conversation === undefined) return { ...wired, wake };
      const { overview, picture, papers, tongues } = wired;
      shown = { wired, wake, overview, picture, papers, tongues, crewFile };
      return { ...wired, wake, host: overheardHost(wired.host, conversation, () => undefined) };
    },
  });
  if ('fault' in slack) {
    await stopTickers();
    conversation?.close();
    return slack;
  }
  const page = await openBeside(slack);
  log.info('serving', {
    mode: settings.mode,
    port: slack.port() ?? null,
    crews: crews.length,
    page: page !== undefined,
  });
  await needs.stop;
  log.info('stopping');
  await page?.stop();
  await slack.stop();
  await stopTickers();
  conversation?.close();
  return undefined;
}
