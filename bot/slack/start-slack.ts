// Starts Slack as a front end: one connection, one inbox, and a desk for each crew. Loaded only where Slack is on.

import type { CrewFile } from '../../core/crew/crew.ts';
import type { CrewId } from '../../core/ids.ts';
import type { Clock, Postbox } from '../../core/ports.ts';
import { createBackgroundWork } from './background-work.ts';
import { createBoltApp, type Identity } from './bolt-app.ts';
import { createCalls } from './calls.ts';
import { type Listening, makeConnection } from './connection.ts';
import { createConversation } from './conversation.ts';
import type { Desk } from './crew-desk.ts';
import { createFileUploads } from './file-uploads.ts';
import { findBeforePosting } from './find-before-posting.ts';
import { createHomes } from './homes.ts';
import { askUntilKnown } from './identity.ts';
import type { Inbound } from './inbound.ts';
import { type DeskNeeds, makeDesk } from './make-desk.ts';
import { createOutbox } from './outbox.ts';
import { withInbox } from './receiver.ts';
import { type Respond, respond } from './respond.ts';
import { createSender, type Pace, wallPace } from './sender.ts';
import { createShowAnswer } from './show-answer.ts';
import { createCall } from './slack-client.ts';
import { slackCrewOf } from './slack-crew.ts';
import type { SlackLog } from './slack-log.ts';
import type { SlackSettings } from './slack-settings.ts';
import { watchedCall } from './watched-call.ts';
import { createWhichCrew } from './which-crew.ts';

export interface SlackNeeds {
  readonly settings: SlackSettings;
  readonly postbox: Postbox;
  readonly clock: Clock;
  readonly log: SlackLog;
  /** `file`: the crew's file as read, for its Slack fields. */
  readonly crews: readonly { readonly crew: CrewId; readonly crewFile: CrewFile; readonly file: unknown }[];
  readonly wire: DeskNeeds['wire'];
  readonly pace?: Pace;
  readonly respond?: Respond;
}

export interface Slack {
  /** Everything taken in has been worked off. */
  readonly idle: () => Promise<void>;
  readonly isReady: () => boolean;
  /** Somebody recorded something elsewhere: shows every batch as it stands now. */
  readonly refresh: () => Promise<void>;
  /** Who is in which user group, read anew: also every ten minutes by itself. */
  readonly readGroups: () => Promise<void>;
  /** Of HTTP; `undefined` where nothing listens. */
  readonly port: () => number | undefined;
  readonly stop: () => Promise<void>;
}

/** For so long the start waits for Slack's first answer. */
const firstAnswerMs = 3_000;
const groupsReadMs = 10 * 60_000;
/** A bell is in the record a moment after it has rung; homes follow then. */
const homesFollowMs = 1_000;
/** What a stop waits for at most: what has not been answered by then is still in the inbox. */
const stopWithinMs = 8_000;

export async function startSlack(needs: SlackNeeds): Promise<Slack | { readonly fault: string }> {
  const { settings, postbox, clock, log, pace = wallPace } = needs;
  const { botToken, apiUrl } = settings;
  let identity: Identity | undefined;
  let listening: Listening | undefined;
  let stopped = false;
  // Before anything new can come.
  const unfinished = postbox.unfinished();
  const { call, shutOut } = watchedCall(createCall({ token: botToken, apiUrl, log: log.forSdk }), log);
  const sent = createOutbox({ call, sender: createSender(call, pace), now: clock.now });
  const { outbox, resumed } = findBeforePosting(sent);
  const files = createFileUploads({ call, pace, log });
  const background = createBackgroundWork(log);
  const homes = createHomes(call, postbox, clock.now, log);
  const team = () => identity?.team;

  function rang(desk: Desk): void {
    const follow = async () => {
      await pace.wait(homesFollowMs);
      await homes.refresh(desk);
    };
    void background.run('refresh-failed', desk.crew, follow);
  }

  const making = { ...{ wire: needs.wire, call, outbox, files, postbox, clock, pace, log, team }, rang };
  const desks = needs.crews.map(({ crew, crewFile, file }) => makeDesk(slackCrewOf(crew, file), crewFile, making));
  const readGroups = async (): Promise<void> => {
    const known = team();
    if (known === undefined) return;
    for (const desk of desks) await desk.roster.readGroups(known);
  };
  const ask = needs.respond ?? respond;
  const conversation = createConversation({
    ...{ homes, outbox, call, postbox, background, pace, log },
    respond: ask,
    now: clock.now,
    which: createWhichCrew(desks, postbox),
    showing: createShowAnswer({ outbox, calls: createCalls({ outbox, log }), files, respond: ask, log }),
  });

  const isReady = () => identity !== undefined && listening?.isConnected() === true && shutOut() === undefined;
  const connection = makeConnection(settings, { log, pace, isReady });
  const ourselves = () => ({ team: team(), botUser: identity?.botUserId });
  const receiver = withInbox({ inner: connection.receiver, postbox, ourselves, now: clock.now, log });
  const bolt = createBoltApp({
    ...{ receiver, botToken, apiUrl, conversation, postbox, log },
    identity: () => identity,
  });

  /** What an earlier life took in and never finished. */
  function resume(): void {
    for (const { content } of unfinished) {
      // Written by this program, as it was read.
      const inbound = JSON.parse(content) as Inbound;
      resumed(inbound.id, inbound.saidAt ?? clock.now());
      bolt.work(inbound);
    }
  }

  async function broughtUp({ standing, thread }: Desk): Promise<void> {
    await thread.tidy();
    await standing.refresh();
  }

  async function began(): Promise<{ readonly fault: string } | undefined> {
    const asked = await askUntilKnown(call, pace, log, () => stopped);
    if (asked?.is === 'refused') return { fault: `SLACK_BOT_TOKEN: Slack answers ${asked.error}` };
    identity = asked?.identity;
    if (identity === undefined) return undefined;
    log.info('slack-known', { team: identity.team, mode: settings.mode });
    await readGroups();
    resume();
    for (const desk of desks) await broughtUp(desk);
    return undefined;
  }

  const beginning = began();
  // A token that Slack refuses ends the start; a Slack that does not answer does not.
  const early = await Promise.race([beginning, wallPace.wait(firstAnswerMs).then(() => undefined)]);
  if (early !== undefined) return early;
  void beginning.then((late) => late !== undefined && log.error('slack-refused', late));

  try {
    listening = await connection.listen(bolt);
  } catch (error) {
    stopped = true;
    return { fault: `PORT ${settings.port}: ${error instanceof Error ? error.message : String(error)}` };
  }
  const groups = setInterval(() => {
    // Where every call is refused nothing else asks whether that is over.
    if (shutOut() !== undefined) void call('auth.test', {});
    void readGroups();
    // What Slack did not take before may have been given up since.
    for (const desk of desks) void background.run('refresh-failed', desk.crew, () => broughtUp(desk));
  }, groupsReadMs);
  groups.unref();

  async function idle(): Promise<void> {
    await bolt.idle();
    await background.idle();
    await files.idle();
  }

  return {
    idle,
    readGroups,
    isReady,
    refresh: async () => {
      for (const desk of desks) {
        await desk.standing.refresh();
        await homes.refresh(desk);
      }
    },
    port: () => listening?.port(),
    stop: async () => {
      stopped = true;
      clearInterval(groups);
      await listening?.stop();
      await within(stopWithinMs, idle());
    },
  };
}

/** Ends then at the latest. */
async function within(ms: number, work: Promise<unknown>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const over = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, ms);
  });
  await Promise.race([work, over]);
  clearTimeout(timer);
}
