// What arrives by itself: server-sent events. A page that was away names the last post it saw and gets all since; while
// nothing happens it is told so every few seconds, so that silence means a lost connection.

import { Hono } from 'hono';
import { type SSEStreamingApi, streamSSE } from 'hono/streaming';
import { isSeenBy } from './conversation.ts';
import type { Post } from './conversation-file.ts';
import { stripHtml, wallHtml } from './html/board-html.ts';
import { postHtml } from './html/post-html.ts';
import type { Html } from './html/viewer.ts';
import type { PageDeps } from './page-deps.ts';
import type { PageContext, PageEnv } from './page-env.ts';
import { boardFor, maySeeWall, nameOf, viewerOf } from './page-viewer.ts';
import { type RateLimit, rateLimit } from './rate-limit.ts';

export interface LiveRoutes {
  readonly app: Hono<PageEnv>;
  /** Ends every open stream: the program stops. */
  readonly stop: () => void;
}

/** A crew of eight with two pages each, and some left open. */
const mostStreams = 60;

/** What all open streams share. */
interface Streams {
  readonly open: Set<() => void>;
  readonly opening: RateLimit;
}

export function liveRoutes(deps: PageDeps): LiveRoutes {
  const app = new Hono<PageEnv>();
  const streams: Streams = { open: new Set(), opening: rateLimit({ atOnce: 30, secondsEach: 1 }) };
  app.get('/events', (c) => talkEvents(deps, streams, c));
  app.get('/board/events', (c) => boardEvents(deps, streams, c));
  return {
    app,
    stop: () => {
      for (const done of streams.open) done();
      streams.open.clear();
    },
  };
}

/** What one stream tells: `first` on opening, `onPost` for each post, `scene` whenever it has changed. */
interface Told {
  readonly first?: (sse: Sender) => void;
  readonly onPost?: (sse: Sender, post: Post) => void;
  readonly scene: () => Promise<Scene>;
}

async function talkEvents(deps: PageDeps, streams: Streams, c: PageContext) {
  const { conversation } = deps;
  const viewer = await viewerOf(deps, c.get('session'));
  if (viewer === undefined) return c.text('', 403);
  const { name } = viewer;
  const current = () => ({ ...viewer, latest: conversation.latest() });
  const seen = c.req.header('last-event-id') ?? c.req.query('after') ?? '';
  return stream(deps, streams, c, {
    first: (sse) => {
      const missed = missedSince(deps, seen, name);
      if (missed === 'gone') return sse.send({ event: 'anew', data: '' });
      for (const post of missed) sse.post(post, postHtml(post, current()));
    },
    onPost: (sse, post) => {
      if (isSeenBy(post, name)) sse.post(post, postHtml(post, current()));
    },
    scene: async () => {
      const board = await boardFor(deps, name);
      return { clock: board.clock, content: stripHtml(board, current()) };
    },
  });
}

function boardEvents(deps: PageDeps, streams: Streams, c: PageContext) {
  const session = c.get('session');
  if (!maySeeWall(deps, session)) return c.text('', 403);
  const name = nameOf(session);
  return stream(deps, streams, c, {
    scene: async () => {
      const board = await boardFor(deps, name);
      const { words } = await deps.overview.voice(name);
      return { clock: board.clock, content: wallHtml(board, words) };
    },
  });
}

/** `seen`: the conversation and the number of the last post, as they stood in the event's id. */
function missedSince({ conversation }: PageDeps, seen: string, name: string): readonly Post[] | 'gone' {
  const [id, n] = seen.split('-');
  if (id !== conversation.id || n === undefined || !/^\d+$/.test(n)) return 'gone';
  return conversation.after(Number(n), name);
}

function stream(deps: PageDeps, { open, opening }: Streams, c: PageContext, told: Told) {
  const wait = opening.take(c.get('session').id);
  if (wait > 0 || open.size >= mostStreams) return c.text('', 429, { 'retry-after': String(Math.max(wait, 5)) });
  // A proxy that collects answers before it hands them on would keep the bells to itself.
  c.header('x-accel-buffering', 'no');
  return streamSSE(c, async (stream) => {
    const sse = sender(stream, deps);
    const refresh = refreshing(deps, sse, told.scene);
    const unfollow = deps.conversation.follow((post) => {
      told.onPost?.(sse, post);
      refresh();
    });
    told.first?.(sse);
    refresh();
    const beat = setInterval(refresh, deps.beatMs);
    let end = () => {};
    await new Promise<void>((done) => {
      end = done;
      open.add(end);
      stream.onAbort(end);
    });
    open.delete(end);
    clearInterval(beat);
    unfollow();
    await stream.close();
  });
}

/** The scene is sent only when it says something else; in between the page is told that it is connected. */
function refreshing({ log }: PageDeps, sse: Sender, scene: Told['scene']): () => void {
  let shown = '';
  const show = async () => {
    const { clock, content } = await scene();
    const html = String(await content);
    if (html === shown) return sse.send({ event: 'beat', data: clock });
    shown = html;
    sse.send({ event: 'scene', data: html });
  };
  return () => {
    show().catch((error: unknown) => log.error('page-scene-failed', { error: String(error) }));
  };
}

interface Scene {
  /** What the wall clock says in it. */
  readonly clock: string;
  readonly content: Html;
}

interface Sender {
  readonly send: (message: { event: string; data: string; id?: string }) => void;
  readonly post: (post: Post, content: Html) => void;
}

/** One after another, whatever takes longer to write. A reader that has gone is noticed by `onAbort`. */
function sender(stream: SSEStreamingApi, { conversation, log }: PageDeps): Sender {
  let turn: Promise<unknown> = Promise.resolve();
  const inTurn = (write: () => Promise<void>) => {
    turn = turn.then(write).catch((error: unknown) => log.error('page-event-failed', { error: String(error) }));
  };
  return {
    send: (message) => inTurn(() => stream.writeSSE(message)),
    post: ({ n }, content) =>
      inTurn(async () =>
        stream.writeSSE({ event: 'post', id: `${conversation.id}-${n}`, data: String(await content) }),
      ),
  };
}
