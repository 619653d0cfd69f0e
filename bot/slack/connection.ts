// How deliveries reach us: over HTTP, or over a socket with the health addresses beside it.

import type { Server } from 'node:http';
import { HTTPReceiver, type Receiver, SocketModeReceiver } from '@slack/bolt';
import type { Pace } from '../time/pace.ts';
import { healthRoutes, serveHealth } from './health.ts';
import { clientOptions } from './slack-client.ts';
import type { SlackLog } from './slack-log.ts';
import type { SlackSettings } from './slack-settings.ts';
import { startSocketLoop } from './socket-loop.ts';

export interface Listening {
  readonly isConnected: () => boolean;
  /** Of HTTP; `undefined` where nothing listens. */
  readonly port: () => number | undefined;
  readonly stop: () => Promise<void>;
}

export interface Connection {
  readonly receiver: Receiver;
  readonly listen: (app: ListeningApp) => Promise<Listening>;
}

/** Of Bolt's application: what starts and ends its receiver. */
interface ListeningApp {
  readonly start: (port?: number) => Promise<unknown>;
  readonly stop: () => Promise<unknown>;
}

export function makeConnection(
  settings: SlackSettings,
  { log, pace, isReady }: { readonly log: SlackLog; readonly pace: Pace; readonly isReady: () => boolean },
): Connection {
  const { apiUrl } = settings;
  if (settings.mode === 'http') {
    const receiver = new HTTPReceiver({
      signingSecret: settings.signingSecret,
      logger: log.forSdk,
      customRoutes: healthRoutes(isReady),
      // An event's 200 waits until it is written down.
      processBeforeResponse: true,
    });
    return {
      receiver,
      listen: async (app) => {
        const server = (await app.start(settings.port)) as Server;
        let stopped = false;
        return {
          isConnected: () => !stopped,
          port: () => portOf(server),
          stop: async () => {
            stopped = true;
            await app.stop();
          },
        };
      },
    };
  }
  const receiver = new SocketModeReceiver({
    appToken: settings.appToken,
    logger: log.forSdk,
    autoReconnectEnabled: false,
    installerOptions: { clientOptions: clientOptions({ apiUrl, log: log.forSdk }) },
  });
  return {
    receiver,
    listen: async () => {
      const { port } = settings;
      const server = port === undefined ? undefined : await serveHealth(port, isReady);
      const loop = startSocketLoop(receiver.client, pace, log);
      return {
        isConnected: loop.isConnected,
        port: () => portOf(server),
        stop: async () => {
          server?.close();
          await loop.stop();
        },
      };
    },
  };
}

function portOf(server: Server | undefined): number | undefined {
  const address = server?.address();
  return typeof address === 'object' && address !== null ? address.port : undefined;
}
