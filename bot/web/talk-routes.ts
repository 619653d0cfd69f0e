// The conversation's page, and the lines and taps that come from it.

import { Hono } from 'hono';
import type { Board } from '../cards/board.ts';
import { isOwnPost } from './guards.ts';
import { turnedAwayHtml } from './html/door-html.ts';
import { frameHtml } from './html/frame-html.ts';
import { postHtml } from './html/post-html.ts';
import { talkHtml } from './html/talk-html.ts';
import type { PageDeps } from './page-deps.ts';
import type { PageContext, PageEnv, Session } from './page-env.ts';
import { boardFor, peopleOf, viewerOf } from './page-viewer.ts';
import { withParts } from './parts-form.ts';
import { type RateLimit, rateLimit } from './rate-limit.ts';
import { deliveryOf, readSayForm } from './say-form.ts';
import { startSession } from './session.ts';
import { isTap, pressedOn } from './tap-places.ts';

/** More than a phone shows in a shift's half; older ones stand in the record. */
const shown = 60;

type TurnedAway = 400 | 403 | 409 | 413 | 429;

export function talkRoutes(deps: PageDeps): Hono<PageEnv> {
  const app = new Hono<PageEnv>();
  // A phone that comes back after an hour sends all it has kept; a hand types a line in some seconds.
  const lines = rateLimit({ atOnce: deps.linesAtOnce ?? 30, secondsEach: 1 });
  app.get('/', (c) => showTalk(deps, c));
  app.post('/say', (c) => say(deps, lines, c));
  app.get('/picture', async (c) => {
    if (c.get('session').who.is !== 'person') return c.body(null, 403);
    const drawn = await deps.picture(c.req.query('ref') ?? '');
    if (drawn === undefined) return c.body(null, 404);
    c.header('content-type', 'image/png');
    return c.body(new Uint8Array(drawn));
  });
  return app;
}

async function showTalk(deps: PageDeps, c: PageContext) {
  const { conversation } = deps;
  const session = await whoeverItMustBe(deps, c);
  if (session.who.is === 'board') return c.redirect('/board', 303);
  const viewer = await viewerOf(deps, session);
  if (viewer === undefined) return c.redirect('/join', 303);
  const [board, posts] = [await boardFor(deps, viewer.name), conversation.newest(shown, viewer.name)];
  const mayChange = (await peopleOf(deps)).length > 1;
  const talk = { viewer, board, posts, conversation: conversation.id, notice: deps.notice, mayChange };
  const title = `${viewer.words.page.title}: ${board.crew}`;
  return c.html(frameHtml(deps, 'talk', title, talkHtml(talk)));
}

/** On this machine, a crew of one is not asked who it is. */
async function whoeverItMustBe(deps: PageDeps, c: PageContext): Promise<Session> {
  const session = c.get('session');
  const [only, ...others] = await peopleOf(deps);
  if (session.who.is !== 'visitor' || deps.joinCode !== undefined || only === undefined || others.length > 0) {
    return session;
  }
  return startSession(c, deps.secret, { is: 'person', name: only });
}

async function say(deps: PageDeps, lines: RateLimit, c: PageContext) {
  const { conversation } = deps;
  const session = c.get('session');
  const viewer = await viewerOf(deps, session);
  const { page } = (viewer ?? deps).words;
  const form = readSayForm(await withParts(await c.req.parseBody(), deps.hearing));
  if (form === undefined) return refuse(deps, c, 400, page.tooLong);
  if (viewer === undefined || !isOwnPost(c, deps, session, form.token)) return refuse(deps, c, 403, page.badForm);
  if (form.as !== viewer.name) return refuse(deps, c, 409, page.otherPerson(form.as));
  const wait = lines.take(viewer.name);
  if (wait > 0) {
    c.header('retry-after', String(wait));
    return refuse(deps, c, 429, page.tooMany(wait));
  }
  const said = deliveryOf(form, viewer.name, deps.clock.now());
  // Only for a tap is the board drawn: what is typed was meant.
  const pressed = isTap(form) ? pressedOn(form, await boardUnder(deps, viewer.name), conversation, viewer) : undefined;
  const delivery = pressed === undefined ? said : { ...said, pressed };
  // A question is answered once a delivery, too: the host remembers only what it has recorded.
  if (conversation.answered(delivery.id) === undefined) await deps.host.handle(delivery);
  const post = conversation.lastTo(delivery.id);
  if (!wantsJson(c)) return c.redirect(post === undefined ? '/' : `/#post-${post.n}`, 303);
  if (post === undefined) return c.json({ n: 0, html: '' });
  const html = String(await postHtml(post, { ...viewer, latest: conversation.latest() }));
  return c.json({ n: post.n, html });
}

/** `undefined` where it cannot be drawn: a tap, be it a cry for help, is said all the same. */
async function boardUnder(deps: PageDeps, name: string): Promise<Board | undefined> {
  try {
    return await boardFor(deps, name);
  } catch (error) {
    deps.log.error('board-broke', { error: String(error) });
    return undefined;
  }
}

function refuse(deps: PageDeps, c: PageContext, status: TurnedAway, why: string) {
  const { words } = deps;
  if (wantsJson(c)) return c.json({ why }, status);
  return c.html(frameHtml(deps, 'door', words.page.title, turnedAwayHtml(words, why)), status);
}

const wantsJson = (c: PageContext): boolean => (c.req.header('accept') ?? '').includes('application/json');
