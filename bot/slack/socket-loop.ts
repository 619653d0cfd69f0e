// Keeps a socket to Slack open for good: connects, and connects again whenever it ends, at once after a planned end and
// with a growing pause while Slack cannot be reached. The SDK's own reconnecting leaves a gap of 5 s at each refresh, and
// gives up with an unhandled rejection when Slack is down at that moment.

import type { Log } from '../../core/ports.ts';
import type { Pace } from '../time/pace.ts';

/** What is used of the SDK's socket client, made with `autoReconnectEnabled: false`. */
export interface SocketClient {
  readonly start: () => Promise<unknown>;
  readonly disconnect: () => Promise<void>;
  readonly on: (event: 'disconnected', listener: () => void) => unknown;
}

export interface SocketLoop {
  readonly isConnected: () => boolean;
  readonly stop: () => Promise<void>;
}

const pausesMs = [500, 1_000, 2_000, 5_000, 10_000, 20_000] as const;

export function startSocketLoop(client: SocketClient, pace: Pace, log: Log): SocketLoop {
  let connected = false;
  let stopped = false;
  let ended: () => void = () => undefined;
  client.on('disconnected', () => ended());

  async function run(): Promise<void> {
    let failures = 0;
    while (!stopped) {
      const end = new Promise<void>((resolve) => {
        ended = resolve;
      });
      try {
        await client.start();
        connected = true;
        failures = 0;
        log.info('socket-connected');
        await end;
        log.info('socket-ended');
      } catch (error) {
        failures += 1;
        log.error('socket-not-connected', { error: String(error), tries: failures });
      }
      connected = false;
      if (failures > 0 && !stopped) await pace.wait(pausesMs[Math.min(failures, pausesMs.length) - 1] ?? 20_000);
    }
  }

  const running = run();
  return {
    isConnected: () => connected,
    stop: async () => {
      stopped = true;
      await client.disconnect().catch(() => undefined);
      ended();
      // A pause may still run; nothing is waited for that does nothing.
      await Promise.race([running, pace.wait(100)]);
    },
  };
}
