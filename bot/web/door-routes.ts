// Becoming somebody: on this machine by choosing a name, on the crew's phones by the code as well.

import { Hono } from 'hono';
import { callerOf } from './called-as.ts';
import { isOwnPost } from './guards.ts';
import { doorHtml } from './html/door-html.ts';
import { frameHtml } from './html/frame-html.ts';
import { opens } from './join-code.ts';
import type { PageDeps } from './page-deps.ts';
import type { PageContext, PageEnv } from './page-env.ts';
import { peopleOf } from './page-viewer.ts';
import { rateLimit } from './rate-limit.ts';
import { formToken, startSession } from './session.ts';

export function doorRoutes(deps: PageDeps): Hono<PageEnv> {
  const { secret, joinCode } = deps;
  const app = new Hono<PageEnv>();
  // A code of 37 bits, tried 30 times a minute by everybody together, holds for millennia.
  const tries = {
    each: rateLimit({ atOnce: 5, secondsEach: 12 }),
    together: rateLimit({ atOnce: 30, secondsEach: 2 }),
  };

  async function door(c: PageContext, status: 200 | 403 | 429, fault?: string) {
    const { words } = deps;
    const crew = await deps.overview.crew();
    const people = crew.people.map(({ name }) => name);
    const session = c.get('session');
    const asksCode = joinCode !== undefined && session.who.is === 'visitor';
    const token = formToken(secret, session);
    const body = doorHtml({ words, crew: crew.name, people, token, asksCode, fault, notice: deps.notice });
    return c.html(frameHtml(deps, 'door', words.page.title, body), status);
  }

  app.get('/join', (c) => door(c, 200));

  app.post('/join', async (c) => {
    const { page } = deps.words;
    const session = c.get('session');
    const form = await c.req.parseBody();
    if (!isOwnPost(c, deps, session, text(form.token))) return door(c, 403, page.badForm);
    if (joinCode !== undefined && session.who.is === 'visitor') {
      const from = callerOf(c, deps.publicUrls);
      const wait = Math.max(tries.each.take(from), tries.together.take('all'));
      if (wait > 0) return door(c, 429, page.tooMany(wait));
      if (!opens(text(form.code), joinCode)) {
        deps.log.info('page-code-refused', { from });
        return door(c, 403, page.wrongCode);
      }
    }
    if (text(form.board) !== '') {
      await startSession(c, secret, { is: 'board' });
      return c.redirect('/board', 303);
    }
    const name = (await peopleOf(deps)).find((known) => known === text(form.as));
    if (name === undefined) return door(c, 403, page.chooseName);
    await startSession(c, secret, { is: 'person', name });
    return c.redirect('/', 303);
  });

  return app;
}

const text = (value: unknown): string => (typeof value === 'string' ? value : '');
