// What stands in front of a page that crews open from elsewhere: it has the certificate, and hands on in plain HTTP.

import { once } from 'node:events';
import { type RequestOptions, request } from 'node:http';
import { createServer } from 'node:https';
import { ownCertificate } from './own-certificate.ts';

/** How proxies are usually set: the called host is handed on, or written over, and then mostly told beside it. */
export type HandsOn = 'the host as called' | 'its own, and the called one beside it' | 'its own, and nothing beside it';

export async function tlsProxy(name: string, page: string, handsOn: HandsOn, port: number) {
  const { hostname, port: pagePort, host: own } = new URL(page);
  const server = createServer(ownCertificate(name), (asked, answered) => {
    const { host = '' } = asked.headers;
    const beside = { 'x-forwarded-host': host, 'x-forwarded-proto': 'https', 'x-forwarded-for': '203.0.113.9' };
    const said =
      handsOn === 'the host as called'
        ? { host, 'x-forwarded-proto': 'https' }
        : { host: own, ...(handsOn === 'its own, and nothing beside it' ? {} : beside) };
    const onwards: RequestOptions = { hostname, port: pagePort, path: asked.url, method: asked.method };
    const handed = request({ ...onwards, headers: { ...asked.headers, ...said } }, (answer) => {
      answered.writeHead(answer.statusCode ?? 502, answer.headers);
      answer.pipe(answered);
    });
    handed.on('error', () => answered.destroy());
    answered.on('close', () => handed.destroy());
    asked.pipe(handed);
  });
  server.listen(port, '127.0.0.1');
  await once(server, 'listening');
  return {
    stop: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}
