// Opens the shop page: a small server of plain pages for this machine, or with a code for the crew's network.

import { networkInterfaces } from 'node:os';
import { type ServerType, serve } from '@hono/node-server';
import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { boardRoutes } from './board-routes.ts';
import { calledAs } from './called-as.ts';
import { doorRoutes } from './door-routes.ts';
import { onlyOwnName, strictHeaders } from './guards.ts';
import { liveRoutes } from './live-routes.ts';
import type { PageDeps } from './page-deps.ts';
import type { PageEnv } from './page-env.ts';
import { peopleOf } from './page-viewer.ts';
import { paperRoutes } from './paper-links.ts';
import { readSession, startSession } from './session.ts';
import { talkRoutes } from './talk-routes.ts';

export interface Page {
  /** Where it can be opened, this machine's own address first. */
  readonly addresses: readonly string[];
  readonly stop: () => Promise<void>;
}

/** More than a list of parts takes, each of its commas and ends of lines written in three. */
const mostBytes = 128 * 1024;

/** Fails where the port is taken. Port 0 takes any that is free. */
export async function openPage(deps: PageDeps, port: number): Promise<Page> {
  const { lan } = deps;
  const live = liveRoutes(deps);
  const app = pageApp(deps, live.app);
  const server = await listening(app, lan ? '0.0.0.0' : '127.0.0.1', port);
  const at = server.address();
  const open = typeof at === 'object' && at !== null ? at.port : port;
  const hosts = ['127.0.0.1', ...(lan ? networkAddresses() : [])];
  return {
    addresses: hosts.map((host) => `http://${host}:${open}`),
    stop: () =>
      new Promise((done) => {
        live.stop();
        server.close(() => done());
        if ('closeAllConnections' in server) server.closeAllConnections();
      }),
  };
}

function pageApp(deps: PageDeps, live: Hono<PageEnv>): Hono<PageEnv> {
  const { assets, secret, log, publicUrls } = deps;
  const app = new Hono<PageEnv>();
  app.use(strictHeaders, onlyOwnName(deps));
  // One version in the address: it never changes under a browser that keeps it.
  app.get('/assets/:version/:name', (c) => {
    const asset = assets.find(c.req.param('name'));
    if (asset === undefined) return c.notFound();
    const zipped = (c.req.header('accept-encoding') ?? '').includes('gzip');
    c.header('content-type', asset.type);
    c.header('cache-control', 'public, max-age=31536000, immutable');
    c.header('vary', 'accept-encoding');
    if (zipped) c.header('content-encoding', 'gzip');
    return c.body(zipped ? asset.gzipped : asset.plain);
  });
  app.use(async (c, next) => {
    c.header('cache-control', 'no-store');
    c.set('calledAs', calledAs(c, publicUrls));
    c.set(
      'session',
      (await readSession(c, secret, await peopleOf(deps))) ?? (await startSession(c, secret, { is: 'visitor' })),
    );
    return next();
  });
  app.use(bodyLimit({ maxSize: mostBytes, onError: (c) => c.json({ why: deps.words.page.tooLong }, 413) }));
  app.route('/', live);
  app.route('/', talkRoutes(deps));
  app.route('/', boardRoutes(deps));
  app.route('/', paperRoutes(deps));
  app.route('/', doorRoutes(deps));
  app.notFound((c) => c.text(deps.words.page.notHere, 404));
  app.onError((error, c) => {
    log.error('page-failed', { path: c.req.path, error: String(error) });
    return c.text(deps.words.replies.failed, 500);
  });
  return app;
}

function listening(app: Hono<PageEnv>, hostname: string, port: number): Promise<ServerType> {
  return new Promise((opened, failed) => {
    const server = serve({ fetch: app.fetch, hostname, port }, () => opened(server));
    server.once('error', failed);
  });
}

/** Where the crew's phones find this machine. */
function networkAddresses(): readonly string[] {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}
