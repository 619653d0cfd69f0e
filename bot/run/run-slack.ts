// The service in Slack, for every crew it is given; a single crew has the shop page beside it, over the same record.

import { join } from 'node:path';
import { isFailed } from '../../core/failed.ts';
import type { CrewId } from '../../core/ids.ts';
import { openSqlitePostbox } from '../../core/store/sqlite-postbox.ts';
import type { Flags } from '../config/config.ts';
import { readCrewFiles } from '../config/crew-files.ts';
import { paperTray } from '../records/paper-tray.ts';
import type { SlackSettings } from '../slack/slack-settings.ts';
import { openConversation } from '../web/conversation.ts';
import { complain, exitCodes, untilStopped } from './exit-codes.ts';
import { stderrLog } from './log.ts';
import { openRecord, packageFolder } from './open-record.ts';
import { openPractisers } from './practisers-file.ts';
import { clockFrom } from './run-clock.ts';
import type { PageBeside } from './serve-slack.ts';
import { wire } from './wiring.ts';

const lastWordsMs = 1_000;

export async function runInSlack(settings: SlackSettings, flags: Flags): Promise<number> {
  const crews = readCrewFiles(flags);
  if (isFailed(crews)) return complain(crews.failed);
  const opened = openRecord(flags, false);
  if (isFailed(opened)) return opened.failed;
  const { place, store, shelf } = opened;
  const clock = clockFrom(undefined, flags.speed);
  const postbox = openSqlitePostbox(place?.file ?? ':memory:');
  const single = crews.length === 1;
  const practisers = openPractisers(place?.folder, stderrLog);
  const trayOf = (crew: CrewId) => paperTray(place?.folder, single ? undefined : crew);

  function pageBeside(): PageBeside {
    return {
      openConversation: (log) => openConversation(place?.folder, log),
      open: async (shown) =>
        (await import('../web/start-page.ts')).startPage({
          ...shown,
          flags,
          clock,
          folder: place?.folder,
          notice: undefined,
          assetFolder: join(packageFolder(), 'bot/web/assets'),
          // A service writes nothing to standard output.
          out: process.stderr,
        }),
    };
  }

  // Loading it costs what Slack's packages cost: only where it is on.
  const { serveSlack } = await import('./serve-slack.ts');
  const ended = await serveSlack({
    settings,
    crews,
    postbox,
    clock,
    speed: flags.speed ?? 1,
    stop: untilStopped(),
    page: single ? pageBeside() : undefined,
    wire: (crew, crewFile, frontEnd, log) =>
      wire({ store, clock, log, crewFile, shelf, crew, papers: trayOf(crew), frontEnd, practisers: practisers(crew) }),
  });
  postbox.close();
  store.close();
  // What still waits for Slack is in the inbox: it holds up no stop.
  setTimeout(() => process.exit(), lastWordsMs).unref();
  return ended === undefined ? exitCodes.done : complain(ended.failed);
}
