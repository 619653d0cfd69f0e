// The board for the wall, whole with its first look: the events only bring what changes.

import { Hono } from 'hono';
import { html } from 'hono/html';
import { wallHtml } from './html/board-html.ts';
import { frameHtml } from './html/frame-html.ts';
import type { PageDeps } from './page-deps.ts';
import type { PageEnv } from './page-env.ts';
import { boardFor, maySeeWall, nameOf } from './page-viewer.ts';

export function boardRoutes(deps: PageDeps): Hono<PageEnv> {
  const app = new Hono<PageEnv>();
  app.get('/board', async (c) => {
    const session = c.get('session');
    if (!maySeeWall(deps, session)) return c.redirect('/join', 303);
    const name = nameOf(session);
    const { words } = await deps.overview.voice(name);
    const { live, conversation } = words.page;
    const board = await boardFor(deps, name);
    const link = session.who.is === 'person' ? html`<a class="from-board" href="/">${conversation}</a>` : '';
    const body = html`<p class="lost" role="alert" hidden data-text="${live.lostBoard}"></p>
${deps.notice === undefined ? '' : html`<p class="notice">${deps.notice}</p>`}
<main class="wall" data-at="${board.clock}">${wallHtml(board, words)}</main>${link}`;
    return c.html(frameHtml(deps, 'wall', `${words.page.board}: ${board.crew}`, body));
  });
  return app;
}
