// Starts Slack as a front end: one connection, one inbox, and a desk for each crew. Loaded only where Slack is on.

import type { CrewFile } from '../../core/crew/crew.ts';
import type { Failed } from '../../core/failed.ts';
import type { CrewId } from '../../core/ids.ts';
import type { Clock, Postbox } from '../../core/ports.ts';
import { shipped, type Tongues } from '../language/tongues/tongues.ts';
import { createFiles } from '../messages/files.ts';
import { createMail } from '../messages/mail.ts';
import { createSender } from '../messages/sender.ts';
import type { Answer } from '../talk/answer.ts';
import { createBackgroundWork } from '../time/background-work.ts';
import { type Pace, wallPace } from '../time/pace.ts';
import { createTurns } from '../time/turns.ts';
import { recordedElsewhere, refreshed } from './answering.ts';
import { type BoltApp, createBoltApp, type Identity } from './bolt-app.ts';
import { type Listening, makeConnection } from './connection.ts';
import { submit, work } from './conversation.ts';
import type { Desk } from './crew-desk.ts';
import { createUpload } from './file-uploads.ts';
import { createHomes } from './homes.ts';
import { askUntilKnown } from './identity.ts';
import type { Inbound } from './inbound.ts';
import { type DeskDeps, makeDesk } from './make-desk.ts';
import { withInbox } from './receiver.ts';
import { type Respond, respond as respondByUrl } from './respond.ts';
import { createCall, watchedCall } from './slack-client.ts';
import { slackCrewOf } from './slack-crew.ts';
import type { SlackLog } from './slack-log.ts';
import type { SlackParts } from './slack-parts.ts';
import { slackPlatform } from './slack-platform.ts';
import type { SlackSettings } from './slack-settings.ts';
import { createWhichCrew } from './which-crew.ts';

export interface SlackDeps {
  readonly settings: SlackSettings;
  readonly postbox: Postbox;
  readonly clock: Clock;
  readonly log: SlackLog;
  /** `file`: the crew's file as read, for its Slack fields. */
  readonly crews: readonly { readonly crew: CrewId; readonly crewFile: CrewFile; readonly file: unknown }[];
  readonly wire: DeskDeps['wire'];
  readonly tongues?: Tongues;
  readonly pace?: Pace;
  readonly respond?: Respond;
}

export interface Slack {
  /** Everything taken in has been worked off. */
  readonly idle: () => Promise<void>;
  readonly isReady: () => boolean;
  /** Somebody recorded something elsewhere: shows every batch as it stands now. */
  readonly refresh: (recorded?: Answer) => Promise<void>;
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

/** One life of it, from its start to its stop. */
interface Life {
  readonly needs: SlackDeps;
  readonly parts: SlackParts;
  readonly desks: readonly Desk[];
  /** What the life before took in and never finished; read before anything new can come. */
  readonly unfinished: ReturnType<Postbox['unfinished']>;
  readonly shutOut: () => string | undefined;
  identity: Identity | undefined;
  listening: Listening | undefined;
  stopped: boolean;
}

export async function startSlack(deps: SlackDeps): Promise<Slack | Failed<string>> {
  const { settings, log, clock, postbox } = deps;
  const life = makeLife(deps);
  const { parts } = life;
  const team = () => life.identity?.team;
  const connection = makeConnection(settings, { log, pace: parts.pace, isReady: () => isReady(life) });
  const ourselves = () => ({ team: team(), botUser: life.identity?.botUserId });
  const receiver = withInbox({ inner: connection.receiver, postbox, ourselves, now: clock.now, log });
  const { botToken, apiUrl } = settings;
  const bolt = createBoltApp({
    ...{ receiver, botToken, apiUrl, postbox, log, background: parts.background },
    identity: () => life.identity,
    work: (inbound) => work(parts, inbound),
    submit: (form) => submit(parts, form, false),
  });
  const beginning = begin(life, bolt);
  // A token that Slack refuses ends the start; a Slack that does not answer does not.
  const early = await Promise.race([beginning, wallPace.wait(firstAnswerMs).then(() => undefined)]);
  if (early !== undefined) return early;
  void beginning.then((late) => late !== undefined && log.error('slack-refused', { fault: late.failed }));
  try {
    life.listening = await connection.listen(bolt);
  } catch (error) {
    life.stopped = true;
    return { failed: `PORT ${settings.port}: ${error instanceof Error ? error.message : String(error)}` };
  }
  const slowRound = setInterval(() => lookAround(life), groupsReadMs);
  slowRound.unref();
  return {
    idle: parts.background.idle,
    readGroups: () => readGroups(life),
    isReady: () => isReady(life),
    refresh: async (recorded) => {
      for (const desk of life.desks) {
        await (recorded === undefined ? refreshed(parts, desk) : recordedElsewhere(parts, desk, recorded));
      }
    },
    port: () => life.listening?.port(),
    stop: async () => {
      life.stopped = true;
      clearInterval(slowRound);
      await life.listening?.stop();
      await within(stopWithinMs, parts.background.idle());
    },
  };
}

function makeLife(deps: SlackDeps): Life {
  const { settings, postbox, clock, log, pace = wallPace, respond = respondByUrl, tongues = shipped } = deps;
  const unfinished = postbox.unfinished();
  const { botToken: token, apiUrl } = settings;
  const { call, shutOut } = watchedCall(createCall({ token, apiUrl, log: log.forSdk }), log);
  const mail = createMail({
    platform: slackPlatform(call, respond, tongues),
    sender: createSender(pace),
    now: clock.now,
  });
  const background = createBackgroundWork(log);
  const files = createFiles(createUpload({ call, pace, log }), background);
  const homes = createHomes(call, postbox, clock.now, log, tongues);
  const team = () => life.identity?.team;
  const making = {
    ...{ wire: deps.wire, call, mail, files, postbox, clock, pace, log, tongues, team },
    rang: (desk: Desk) => homeFollows(parts, desk),
  };
  const desks = deps.crews.map(({ crew, crewFile, file }) => makeDesk(slackCrewOf(crew, file), crewFile, making));
  const parts: SlackParts = {
    ...{
      which: createWhichCrew(desks, postbox),
      homes,
      call,
      mail,
      files,
      respond,
      postbox,
      background,
      pace,
      log,
      tongues,
    },
    ...{ turns: createTurns<Desk>(), presses: new Map(), now: clock.now },
  };
  const life: Life = {
    ...{ needs: deps, parts, desks, unfinished, shutOut },
    ...{ identity: undefined, listening: undefined, stopped: false },
  };
  return life;
}

function homeFollows({ background, pace, homes }: SlackParts, desk: Desk): void {
  void background.run('refresh-failed', desk.crew, async () => {
    await pace.wait(homesFollowMs);
    await homes.refresh(desk);
  });
}

const isReady = ({ identity, listening, shutOut }: Life): boolean =>
  identity !== undefined && listening?.isConnected() === true && shutOut() === undefined;

async function readGroups({ identity, desks }: Life): Promise<void> {
  if (identity === undefined) return;
  for (const desk of desks) await desk.roster.readGroups(identity.team);
}

async function begin(life: Life, bolt: BoltApp): Promise<Failed<string> | undefined> {
  const { parts, needs } = life;
  const { log } = needs;
  const asked = await askUntilKnown(parts.call, parts.pace, log, () => life.stopped);
  if (asked?.is === 'refused') return { failed: `SLACK_BOT_TOKEN: Slack answers ${asked.error}` };
  life.identity = asked?.identity;
  if (life.identity === undefined) return undefined;
  log.info('slack-known', { team: life.identity.team, mode: needs.settings.mode });
  await readGroups(life);
  resume(life, bolt);
  for (const { messages } of life.desks) await messages.refresh();
  return undefined;
}

/** What an earlier life took in and never finished. */
function resume({ parts, unfinished }: Life, bolt: BoltApp): void {
  for (const { content } of unfinished) {
    // Written by this program, as it was read.
    const inbound = JSON.parse(content) as Inbound;
    parts.mail.resumed(inbound.id, inbound.saidAt ?? parts.now());
    bolt.work(inbound);
  }
}

function lookAround(life: Life): void {
  const { parts, shutOut, desks } = life;
  // Where every call is refused nothing else asks whether that is over.
  if (shutOut() !== undefined) void parts.call('auth.test', {});
  void readGroups(life);
  // What Slack did not take before may have been given up since.
  for (const { crew, messages } of desks) void parts.background.run('refresh-failed', crew, () => messages.refresh());
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
