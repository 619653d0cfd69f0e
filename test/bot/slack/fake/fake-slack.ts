// A stand-in for Slack on this machine: the methods that we call, with their limits, and the faults that the real one has:
// too much, broken, slow, refused, and "taken, then the line dropped".

import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { HomeView, KnownBlock, ModalView } from '@slack/types';
import type { SlackMethod } from '../../../../bot/slack/slack-methods.ts';
import { assertSlackMessage, viewComplaints } from './assert-slack-message.ts';
import { fakeFiles } from './fake-files.ts';
import { bodyOf, send } from './fake-http.ts';
import { fakeOnce } from './fake-once.ts';
import type { Rates } from './fake-rates.ts';
import { type Acknowledged, fakeSocket } from './fake-socket.ts';

export interface FakeMessage {
  readonly channel: string;
  readonly ts: string;
  readonly thread: string | undefined;
  text: string;
  blocks: KnownBlock[];
  readonly key: string | undefined;
  edits: number;
}

export type Fault =
  | { readonly is: 'limited'; readonly seconds: number | undefined }
  | { readonly is: 'broken'; readonly status: number }
  | { readonly is: 'refused'; readonly error: string }
  | { readonly is: 'held'; readonly until: Promise<void> }
  /** It was done, and nobody heard of it. */
  | { readonly is: 'dropped' };

export interface FakeCall {
  readonly method: string;
  readonly body: Readonly<Record<string, string>>;
  readonly token: string;
}

export interface Whisper {
  readonly to: string;
  readonly text: string;
  readonly blocks: readonly KnownBlock[];
}

/** `deleted`: their account is switched off. */
export interface FakeUser {
  readonly name: string;
  readonly locale?: string;
  readonly tz?: string;
  readonly deleted?: true;
}

export interface FakeSlack extends Pick<ReturnType<typeof fakeFiles>, 'files' | 'setFilesDown'> {
  readonly apiUrl: string;
  readonly calls: FakeCall[];
  readonly messages: FakeMessage[];
  /** Ephemeral messages and answers to one-time addresses. */
  readonly whispers: Whisper[];
  readonly views: Map<string, ModalView>;
  readonly homes: Map<string, HomeView>;
  /** By user: what names their home tab as it is shown now. */
  readonly homeHashes: Map<string, string>;
  readonly users: Map<string, FakeUser>;
  /** Channels into which nobody has invited it. */
  readonly strange: Set<string>;
  readonly groups: Map<string, readonly string[]>;
  /** What the limits would have refused. Empty at the end of every test. */
  readonly complaints: string[];
  /** One fault for the next call of a method; several wait in a row. */
  readonly fail: (method: SlackMethod, ...faults: readonly Fault[]) => void;
  /** Refuses every connection until it is turned off again. */
  readonly setDown: (down: boolean) => void;
  readonly trigger: () => string;
  readonly responseUrl: () => string;
  readonly inChannel: (channel: string) => readonly FakeMessage[];
  readonly inThread: (ts: string) => readonly FakeMessage[];
  /** Connections of Socket Mode, newest last. */
  readonly sockets: ReturnType<typeof fakeSocket>['sockets'];
  readonly acknowledged: Acknowledged[];
  readonly close: () => Promise<void>;
}

export const fakeTeam = 'T1';
export const botUser = 'UBOT';

/** `now`: of the clock by which messages get their `ts`. `rates`: its own limits, where it is to keep them. */
export async function startFakeSlack(now: () => number, rates?: Rates): Promise<FakeSlack> {
  const calls: FakeCall[] = [];
  const messages: FakeMessage[] = [];
  const whispers: Whisper[] = [];
  const complaints: string[] = [];
  const views = new Map<string, ModalView>();
  const homes = new Map<string, HomeView>();
  const homeHashes = new Map<string, string>();
  const users = new Map<string, FakeUser>();
  const strange = new Set<string>();
  const groups = new Map<string, readonly string[]>();
  const { files, setFilesDown, ...filed } = fakeFiles(() => origin);
  const faults = new Map<string, Fault[]>();
  const once = fakeOnce(now);
  const line = fakeSocket();
  let down = false;
  const next = counter();

  const nextTs = (): string => `${Math.floor(now() / 1000)}.${String(next()).padStart(6, '0')}`;

  type Answer = Readonly<Record<string, unknown>>;
  const refused = (error: string): Answer => ({ ok: false, error });

  const methods: Readonly<Record<SlackMethod, (body: Readonly<Record<string, string>>) => Answer>> = {
    'apps.connections.open': () => ({ ok: true, url: line.address() }),
    'auth.test': () => ({ ok: true, team_id: fakeTeam, bot_id: 'B1', user_id: botUser }),
    'chat.postMessage': ({ channel = '', thread_ts, text = '', blocks = '[]', metadata }) => {
      const parsed = JSON.parse(blocks) as KnownBlock[];
      check('chat.postMessage', { text, blocks: parsed });
      if (!/^[CDG]/.test(channel)) return refused('channel_not_found');
      const key = metadata === undefined ? undefined : (JSON.parse(metadata).event_payload.key as string);
      const message = { channel, ts: nextTs(), thread: thread_ts, text, blocks: parsed, key, edits: 0 };
      messages.push(message);
      return { ok: true, channel, ts: message.ts };
    },
    'chat.update': ({ channel, ts, text = '', blocks = '[]' }) => {
      const message = messages.find((each) => each.channel === channel && each.ts === ts);
      if (message === undefined) return refused('message_not_found');
      const parsed = JSON.parse(blocks) as KnownBlock[];
      check('chat.update', { text, blocks: parsed });
      if (text.length > 4_000) return refused('msg_too_long');
      Object.assign(message, { text, blocks: parsed, edits: message.edits + 1 });
      return { ok: true, channel, ts };
    },
    'chat.postEphemeral': ({ user = '', text = '', blocks = '[]' }) => {
      whisper(user, text, JSON.parse(blocks) as KnownBlock[]);
      return { ok: true, message_ts: nextTs() };
    },
    'conversations.open': ({ users: user = '' }) =>
      users.get(user)?.deleted === true ? refused('user_disabled') : { ok: true, channel: { id: `D${user}` } },
    'conversations.info': ({ channel = '' }) =>
      /^[CG]/.test(channel)
        ? { ok: true, channel: { id: channel, is_member: !strange.has(channel), is_archived: false } }
        : refused('channel_not_found'),
    'conversations.history': ({ channel }) =>
      found((message) => message.channel === channel && message.thread === undefined),
    'conversations.replies': ({ channel, ts }) =>
      found((message) => message.channel === channel && message.thread === ts),
    ...filed.methods,
    'users.info': ({ user = '' }) => {
      const known = users.get(user);
      if (known === undefined) return refused('user_not_found');
      const { name, locale = 'en-US', tz = 'America/New_York', deleted = false } = known;
      return {
        ok: true,
        user: { id: user, name, deleted, locale, tz, profile: { display_name: name, real_name: name } },
      };
    },
    'usergroups.users.list': ({ usergroup = '' }) => {
      const members = groups.get(usergroup);
      return members === undefined ? refused('no_such_subteam') : { ok: true, users: members };
    },
    'views.open': ({ trigger_id = '', view = '' }) => {
      const fault = once.spend(trigger_id);
      if (fault !== undefined) return refused(fault);
      return keepView(`V${next()}`, JSON.parse(view) as ModalView);
    },
    'views.update': ({ view_id = '', view = '' }) =>
      views.has(view_id) ? keepView(view_id, JSON.parse(view) as ModalView) : refused('not_found'),
    'views.publish': ({ user_id = '', view = '' }) => {
      const home = JSON.parse(view) as HomeView;
      complain('views.publish', viewComplaints(home));
      homes.set(user_id, home);
      const hash = String(next());
      homeHashes.set(user_id, hash);
      return { ok: true, view: { id: `H${user_id}`, hash } };
    },
  };

  function complain(where: string, found: readonly string[]): void {
    complaints.push(...found.map((complaint) => `${where}: ${complaint}`));
  }

  function check(where: string, message: Parameters<typeof assertSlackMessage>[0]): void {
    try {
      assertSlackMessage(message);
    } catch (error) {
      complain(where, [String(error)]);
    }
  }

  function whisper(to: string, text: string, blocks: readonly KnownBlock[]): void {
    check('ephemeral', { text, blocks });
    whispers.push({ to, text, blocks });
  }

  function keepView(id: string, view: ModalView): Answer {
    complain('view', viewComplaints(view));
    views.set(id, view);
    return { ok: true, view: { id } };
  }

  function found(wanted: (message: FakeMessage) => boolean): Answer {
    return {
      ok: true,
      messages: messages.filter(wanted).map(({ ts, text, key }) => ({
        ts,
        text,
        ...(key === undefined ? {} : { metadata: { event_type: 'x', event_payload: { key } } }),
      })),
    };
  }

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    if (down) {
      request.socket.destroy();
      return;
    }
    const path = request.url ?? '';
    if (path.startsWith('/upload/')) return filed.takeBytes(request, response);
    const raw = await bodyOf(request);
    if (path.startsWith('/respond/')) return answerOnce(path, raw, response);
    const method = path.replace('/api/', '');
    const body = Object.fromEntries(new URLSearchParams(raw));
    calls.push({ method, body, token: (request.headers.authorization ?? '').replace('Bearer ', '') });
    const rated = rates?.(method, body.channel ?? '');
    const fault = rated === undefined ? faults.get(method)?.shift() : { is: 'limited' as const, seconds: rated };
    switch (fault?.is) {
      case 'limited': {
        const after = fault.seconds === undefined ? {} : { 'retry-after': String(fault.seconds) };
        return send(response, 429, { ok: false, error: 'ratelimited' }, after);
      }
      case 'broken':
        return send(response, fault.status, {});
      case 'refused':
        return send(response, 200, refused(fault.error));
      case 'held':
        await fault.until;
        break;
      case 'dropped':
        perform(method, body);
        request.socket.destroy();
        return;
      case undefined:
        break;
    }
    send(response, 200, perform(method, body));
  }

  function perform(method: string, body: Readonly<Record<string, string>>): Answer {
    return isMethod(method) ? methods[method](body) : refused('unknown_method');
  }
  const isMethod = (method: string): method is SlackMethod => method in methods;

  function answerOnce(path: string, raw: string, response: ServerResponse): void {
    const error = once.use(path);
    if (error !== undefined) {
      send(response, 404, { ok: false, error });
      return;
    }
    const { text = '', blocks = [] } = JSON.parse(raw) as { text?: string; blocks?: KnownBlock[] };
    whisper(path, text, blocks);
    send(response, 200, { ok: true });
  }

  const server = createServer((request, response) => void answer(request, response));
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  const origin = `http://127.0.0.1:${port}`;

  return {
    ...{ calls, messages, whispers, views, homes, homeHashes, files, setFilesDown },
    ...{ users, groups, strange, complaints, sockets: line.sockets, acknowledged: line.acknowledged },
    apiUrl: `${origin}/api/`,
    fail: (method, ...more) => {
      faults.set(method, [...(faults.get(method) ?? []), ...more]);
    },
    setDown: (is) => {
      down = is;
      if (is) server.closeAllConnections();
    },
    trigger: once.trigger,
    responseUrl: () => `${origin}${once.address()}`,
    inChannel: (channel) => messages.filter((message) => message.channel === channel && message.thread === undefined),
    inThread: (ts) => messages.filter((message) => message.thread === ts),
    close: async () => {
      line.close();
      server.closeAllConnections();
      await new Promise((resolve) => {
        server.close(resolve);
      });
    },
  };
}

/** 1, 2, 3 … */
export function counter(): () => number {
  let count = 0;
  return () => {
    count += 1;
    return count;
  };
}
