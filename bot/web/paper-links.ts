// Download links for what was written: each is signed with the page's secret, so that no name can be guessed or made up,
// and opens only to who is signed in.

import { createHmac } from 'node:crypto';
import { Hono } from 'hono';
import { ownValue } from '../../core/own-key.ts';
import { isRead } from '../cards/card.ts';
import type { PageDeps } from './page-deps.ts';
import type { PageEnv } from './page-env.ts';
import { isSame } from './session.ts';

/** The crew stands in the signature: several may share a folder and its secret. */
export function paperLink(secret: string, crew: string, paper: string): string {
  return `/papers/${paper.split('/').map(encodeURIComponent).join('/')}?key=${keyOf(secret, crew, paper)}`;
}

const keyOf = (secret: string, crew: string, paper: string): string =>
  createHmac('sha256', secret)
    .update(JSON.stringify(['paper', crew, paper]))
    .digest('base64url');

const contentTypes: Readonly<Record<string, string>> = {
  pdf: 'application/pdf',
  csv: 'text/csv; charset=utf-8',
  json: 'application/json; charset=utf-8',
  jsonl: 'application/x-ndjson; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
  png: 'image/png',
  jpg: 'image/jpeg',
};

export function paperRoutes({ secret, crew, papers }: PageDeps): Hono<PageEnv> {
  const app = new Hono<PageEnv>();
  app.get('/papers/:shelf/:name', (c) => {
    if (c.get('session').who.is !== 'person') return c.body(null, 403);
    const { shelf, name } = c.req.param();
    const paper = `${shelf}/${name}`;
    if (!isSame(c.req.query('key') ?? '', keyOf(secret, crew, paper))) return c.body(null, 404);
    const content = papers.read(paper);
    if (content === undefined) return c.notFound();
    c.header('content-type', ownValue(contentTypes, name.split('.').at(-1) ?? '') ?? 'application/octet-stream');
    c.header(
      'content-disposition',
      `${isRead(paper) ? 'inline' : 'attachment'}; filename*=UTF-8''${encodeURIComponent(name)}`,
    );
    return c.body(content);
  });
  return app;
}
