// Socket Mode of the stand-in: the line that the program opens to Slack, and what it acknowledges on it.

import type { AddressInfo } from 'node:net';
import { type WebSocket, WebSocketServer } from 'ws';

export interface Acknowledged {
  readonly envelope_id: string;
  readonly payload?: unknown;
}

export function fakeSocket() {
  /** Newest last. */
  const sockets: WebSocket[] = [];
  const acknowledged: Acknowledged[] = [];
  const server = new WebSocketServer({ port: 0, host: '127.0.0.1' });
  server.on('connection', (socket) => {
    sockets.push(socket);
    socket.on('message', (data) => acknowledged.push(JSON.parse(String(data)) as Acknowledged));
    socket.send(JSON.stringify({ type: 'hello', num_connections: 1, connection_info: { app_id: 'A1' } }));
  });
  return {
    sockets,
    acknowledged,
    address: () => `ws://127.0.0.1:${(server.address() as AddressInfo).port}/link`,
    close: () => {
      for (const socket of sockets) socket.terminate();
      server.close();
    },
  };
}
