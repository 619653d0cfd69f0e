// Starts Slack as a front end: one connection, one inbox, and a desk for each crew. Loaded only where Slack is on.

import type { Server } from 'node:http';
import { HTTPReceiver, SocketModeReceiver } from '@slack/bolt';
import type { CrewFile } from '../../core/crew/crew.ts';
import type { CrewId } from '../../core/ids.ts';
import type { Clock, Postbox } from '../../core/ports.ts';
import type { Answer } from '../answer.ts';
import type { FrontEnd } from '../front-end.ts';
import type { Host } from '../host.ts';
import type { Overview } from '../overview.ts';
import type { Picture } from '../pictures.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import { createBatchMessages } from './batch-messages.ts';
import { createBoltApp, type Identity } from './bolt-app.ts';
import { createConversation } from './conversation.ts';
import type { Desk } from './desk.ts';
import { createFileUploads } from './file-uploads.ts';
import { healthRoutes, serveHealth } from './health.ts';
import { createHomes } from './homes.ts';
import { askUntilKnown } from './identity.ts';
import { createOutbox } from './outbox.ts';
import { withInbox } from './receiver.ts';
import { type Respond, respond } from './respond.ts';
import { createRings } from './rings.ts';
import { createRoster } from './roster.ts';
import { createSender, type Pace, wallPace } from './sender.ts';
import { createShowAnswer } from './show-answer.ts';
import { clientOptions, createCall } from './slack-client.ts';
import { type SlackCrew, slackCrewOf } from './slack-crew.ts';
import type { SlackLog } from './slack-log.ts';
import type { SlackSettings } from './slack-settings.ts';
import { startSocketLoop } from './socket-loop.ts';
import { createThreadEvents } from './thread-events.ts';
import { channelNote, createWhichCrew } from './which-crew.ts';

/** What a wired crew gives to its desk. */
export interface WiredCrew {
  readonly host: Pick<Host, 'handle'>;
  readonly overview: Overview;
  readonly filePicture: (picture: Picture) => Promise<Answer>;
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  readonly papers: Pick<PaperTray, 'read'>;
  readonly wake: () => void;
}

export type RingsTo = Pick<FrontEnd, 'tell' | 'wasTold'>;

export interface SlackNeeds {
  readonly settings: SlackSettings;
  readonly postbox: Postbox;
  readonly clock: Clock;
  readonly log: SlackLog;
  /** `file`: the crew's file as read, for its Slack fields. */
  readonly crews: readonly { readonly crew: CrewId; readonly crewFile: CrewFile; readonly file: unknown }[];
  /** Wires one crew over the store; its bells go to `rings`. */
  readonly wire: (crew: CrewId, crewFile: CrewFile, rings: RingsTo) => WiredCrew;
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

export async function startSlack(needs: SlackNeeds): Promise<Slack | { readonly fault: string }> {
  const { settings, postbox, clock, log, pace = wallPace } = needs;
  const { botToken, apiUrl } = settings;
  let identity: Identity | undefined;
  let stopped = false;
  const call = createCall({ token: botToken, apiUrl, log: log.forSdk });
  const outbox = createOutbox({ call, sender: createSender(call, pace), now: clock.now });
  const files = createFileUploads({ call, pace, log });
  const team = () => identity?.team;

  function deskOf(slackCrew: SlackCrew, crewFile: CrewFile): Desk {
    const { crew } = slackCrew;
    const settled = async () => (await wired.overview.crew()).people.map(({ name }) => name);
    const roster = createRoster({ slackCrew, crewFile, settled, call, postbox, log });
    // The crew is wired with its bells, and its bells need the wired crew: bound once both are there.
    const rings: RingsTo = { tell: (answer) => bells.tell(answer), wasTold: (key) => bells.wasTold(key) };
    const wired = needs.wire(crew, roster.crewFile, rings);
    const channel = () => slackCrew.channels[0] ?? postbox.note(channelNote(crew));
    const batches = createBatchMessages({ crew, overview: wired.overview, outbox, postbox, team, channel });
    const thread = createThreadEvents({ crew, outbox, postbox, team });
    const desk: Desk = { crew, slackCrew, roster, batches, thread, channel, ...wired };
    const bells = createRings({ desk, outbox, files, postbox, team, now: clock.now, log });
    return desk;
  }

  const desks = needs.crews.map(({ crew, crewFile, file }) => deskOf(slackCrewOf(crew, file), crewFile));
  const readGroups = async (): Promise<void> => {
    const known = team();
    if (known === undefined) return;
    for (const desk of desks) await desk.roster.readGroups(known);
  };
  const homes = createHomes(call, postbox);
  const ask = needs.respond ?? respond;
  const conversation = createConversation({
    homes,
    outbox,
    call,
    postbox,
    log,
    respond: ask,
    now: clock.now,
    which: createWhichCrew(desks, postbox),
    showing: createShowAnswer({ outbox, files, respond: ask, log }),
  });

  let isConnected = () => false;
  const isReady = () => identity !== undefined && isConnected();
  const { inner, socket } = innerReceiver(settings, log, isReady);
  const receiver = withInbox({ inner, postbox, botUser: () => identity?.botUserId, now: clock.now, log });
  const bolt = createBoltApp({
    receiver,
    botToken,
    apiUrl,
    conversation,
    postbox,
    log,
    identity: () => identity,
  });

  async function began(): Promise<{ readonly fault: string } | undefined> {
    const asked = await askUntilKnown(call, pace, log, () => stopped);
    if (asked?.is === 'refused') return { fault: `SLACK_BOT_TOKEN: Slack answers ${asked.error}` };
    identity = asked?.identity;
    if (identity === undefined) return undefined;
    log.info('slack-known', { team: identity.team, mode: settings.mode });
    await readGroups();
    bolt.resume();
    for (const desk of desks) await desk.batches.refresh();
    return undefined;
  }

  const beginning = began();
  // A token that Slack refuses ends the start; a Slack that does not answer does not.
  const early = await Promise.race([beginning, wallPace.wait(firstAnswerMs).then(() => undefined)]);
  if (early !== undefined) return early;
  void beginning.then((late) => late !== undefined && log.error('slack-refused', late));

  let server: Server | undefined;
  let stopReceiving: () => Promise<unknown>;
  try {
    if (socket === undefined) {
      server = (await bolt.start(settings.port)) as Server;
      isConnected = () => !stopped;
      stopReceiving = bolt.stop;
    } else {
      const loop = startSocketLoop(socket, pace, log);
      isConnected = loop.isConnected;
      const { port } = settings;
      server = port === undefined ? undefined : await serveHealth(port, isReady);
      stopReceiving = async () => {
        server?.close();
        await loop.stop();
      };
    }
  } catch (error) {
    stopped = true;
    return { fault: `PORT ${settings.port}: ${error instanceof Error ? error.message : String(error)}` };
  }
  const groups = setInterval(() => void readGroups(), groupsReadMs);
  groups.unref();

  async function idle(): Promise<void> {
    await bolt.idle();
    await files.idle();
  }

  return {
    idle,
    readGroups,
    isReady,
    refresh: async () => {
      for (const desk of desks) {
        await desk.batches.refresh();
        await homes.refresh(desk);
      }
    },
    port: () => {
      const address = server?.address();
      return typeof address === 'object' && address !== null ? address.port : undefined;
    },
    stop: async () => {
      stopped = true;
      clearInterval(groups);
      await stopReceiving();
      await idle();
    },
  };
}

function innerReceiver(settings: SlackSettings, log: SlackLog, isReady: () => boolean) {
  const { apiUrl } = settings;
  if (settings.mode === 'http') {
    const inner = new HTTPReceiver({
      signingSecret: settings.signingSecret,
      logger: log.forSdk,
      customRoutes: healthRoutes(isReady),
      // An event's 200 waits until it is written down.
      processBeforeResponse: true,
    });
    return { inner, socket: undefined };
  }
  const inner = new SocketModeReceiver({
    appToken: settings.appToken,
    logger: log.forSdk,
    autoReconnectEnabled: false,
    installerOptions: { clientOptions: clientOptions({ apiUrl, log: log.forSdk }) },
  });
  return { inner, socket: inner.client };
}
