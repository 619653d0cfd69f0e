// Batchbell as a service in Slack: starts it, keeps every crew's bells going, and runs until it is told to stop. Loaded only
// where Slack is on. A single crew may have its shop page beside it: what is said in one is seen in the other.

import type { CrewFile } from '../../core/crew/crew.ts';
import { type Failed, isFailed } from '../../core/failed.ts';
import type { CrewId } from '../../core/ids.ts';
import type { Clock, Log, Postbox } from '../../core/ports.ts';

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
  readonly tongues: Tongues;
  readonly crewFile: CrewFile;
  readonly log: Log;
}

export interface PageBeside {
  readonly openConversation: (log: Log) => Conversation;
  readonly open: (shown: PageShown) => Promise<Page | Failed<string>>;
}

export interface ServeSlackDeps {
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

/** What is open while it serves. */
interface Serving extends ServeSlackDeps {
  readonly log: Log;
  readonly tickers: Ticker[];
  readonly conversation: Conversation | undefined;
  /** Of the crew whose page it is. */
  shown: (Omit<PageShown, 'host' | 'conversation' | 'log'> & { wired: Wired; wake: () => void }) | undefined;
}

/** Until it is stopped; a fault where it cannot start. */
export async function serveSlack(deps: ServeSlackDeps): Promise<Failed<string> | undefined> {
  const { settings, crews, postbox, clock } = deps;
  const log = createSlackLog();
  const conversation = deps.page?.openConversation(log);
  const serving: Serving = { ...deps, log, tickers: [], conversation, shown: undefined };
  const wire: Wiring = (crew, crewFile, rings) => wireCrew(serving, crew, crewFile, rings);
  const slack = await startSlack({ settings, postbox, clock, log, crews, wire });
  if (isFailed(slack)) {
    await stopTickers(serving);
    conversation?.close();
    return slack;
  }
  const page = await openBeside(serving, slack);
  log.info('serving', {
    mode: settings.mode,
    port: slack.port() ?? null,
    crews: crews.length,
    page: page !== undefined,
  });
  await deps.stop;
  log.info('stopping');
  await page?.stop();
  await slack.stop();
  await stopTickers(serving);
  conversation?.close();
  return undefined;
}

type Wiring = Parameters<typeof startSlack>[0]['wire'];

function wireCrew(serving: Serving, ...[crew, crewFile, rings]: Parameters<Wiring>): ReturnType<Wiring> {
  const { conversation, log } = serving;
  const both = conversation === undefined ? rings : ringsInBoth(rings, conversation);
  const wired = serving.wire(crew, crewFile, both, log);
  const wake = tick(serving, wired);
  if (conversation === undefined) return { ...wired, wake };
  const { pageOverview: overview, picture, papers, tongues } = wired;
  serving.shown = { wired, wake, overview, picture, papers, tongues, crewFile };
  return { ...wired, wake, host: overheardHost(wired.host, conversation, () => undefined) };
}

/** Keeps its bells going; what is given wakes them. */
function tick({ clock, log, speed, tickers }: Serving, { executor, ringer }: Wired): () => void {
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

async function stopTickers({ tickers }: Serving): Promise<void> {
  for (const ticker of tickers) await ticker.stop();
}

/** A page that cannot be opened takes no bell with it. */
async function openBeside(serving: Serving, slack: Slack): Promise<Page | undefined> {
  const { conversation, shown, log } = serving;
  if (serving.page === undefined || conversation === undefined || shown === undefined) return undefined;
  const { wired, wake, ...parts } = shown;
  const host = overheardHost(wired.host, conversation, (answer) => {
    if (!answer.recorded) return;
    wake();
    void slack.refresh(answer).catch((error: unknown) => log.error('refresh-failed', { error: String(error) }));
  });
  const page = await serving.page.open({ ...parts, host, conversation, log });
  if (!isFailed(page)) return page;
  log.error('page-not-opened', { fault: page.failed });
  return undefined;
}
