// Two addresses for whoever watches the process: is it up, and can it do its work. They say nothing else.

import { createServer, type Server } from 'node:http';
import type { CustomRoute } from '@slack/bolt';

export function healthRoutes(isReady: () => boolean): CustomRoute[] {
  const route = (path: string, isWell: () => boolean): CustomRoute => ({
    path,
    method: ['GET'],
    handler: (_, response) => {
      const well = isWell();
      response.writeHead(well ? 200 : 503, { 'content-type': 'application/json', 'cache-control': 'no-store' });
      response.end(JSON.stringify({ status: well ? 'up' : 'waiting' }));
    },
  });
  return [route('/health', () => true), route('/ready', isReady)];
}

/** Where no other server of ours listens: beside a socket. */
export async function serveHealth(port: number, isReady: () => boolean): Promise<Server> {
  const routes = healthRoutes(isReady);
  const server = createServer((request, response) => {
    const route = routes.find(({ path }) => path === request.url);
    if (route !== undefined && request.method === 'GET')
      return route.handler(Object.assign(request, { params: {} }), response);
    response.writeHead(404).end();
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, resolve);
  });
  return server;
}
