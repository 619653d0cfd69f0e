// Sends in turn: one queue a channel, one message a second in it, and Slack's Retry-After obeyed by whom it concerns.
// A channel that must wait holds up no other.

import { channelSpacingMs, longestWaitMs } from './limits.ts';
import type { Call, Called } from './slack-client.ts';
import type { SlackMethod } from './slack-methods.ts';

export interface Pace {
  /** Milliseconds that only go forward. */
  readonly now: () => number;
  readonly wait: (ms: number) => Promise<void>;
  /** Does it then, without keeping the program running for it; where there is none, `wait` serves. */
  readonly later?: (ms: number, work: () => void) => void;
}

export const wallPace: Pace = {
  now: () => performance.now(),
  wait: (ms) =>
    new Promise((resolve) => {
      setTimeout(resolve, ms);
    }),
  later: (ms, work) => {
    setTimeout(work, ms).unref();
  },
};

type Body = Readonly<Record<string, unknown>>;
/** Made when its turn has come, as things stand then; `undefined`: there is nothing to send any more. */
type MakeBody = () => Promise<Body | undefined>;

export interface Sender {
  /** In the channel's turn; a limit is waited out, a few times, but none that lasts. */
  readonly send: (channel: string, method: SlackMethod, body: Body | MakeBody) => Promise<Called>;
  /** In the channel's turn, but a limit is not waited out: whoever rings knows when to try again. */
  readonly sendNow: (channel: string, method: SlackMethod, body: Body) => Promise<Called>;
}

/** How often a limit is waited out before the call is given up. */
const patience = 5;
/** Slack may say "in 0 seconds": a limit is a limit. */
const shortestWaitMs = 1_000;

export function createSender(call: Call, pace: Pace): Sender {
  const turns = new Map<string, Promise<unknown>>();
  /** By what Slack limits: messages by channel, everything else by method. */
  const freeAt = new Map<string, number>();

  const limitOf = (channel: string, method: SlackMethod): string =>
    method === 'chat.postMessage' ? `${method} ${channel}` : method;

  const waitOf = (limit: string): number => Math.max(0, (freeAt.get(limit) ?? 0) - pace.now());

  /** One at a time in a queue, in the order of asking. */
  function inTurn<T>(queue: string, work: () => Promise<T>): Promise<T> {
    const turn = (turns.get(queue) ?? Promise.resolve()).then(work);
    const ended = turn.then(
      () => undefined,
      () => undefined,
    );
    turns.set(queue, ended);
    // The last one out leaves nothing behind.
    void ended.then(() => turns.get(queue) === ended && turns.delete(queue));
    return turn;
  }

  /** `undefined`: its turn came while the limit still stood. */
  async function once(channel: string, method: SlackMethod, body: Body | MakeBody): Promise<Called | undefined> {
    const limit = limitOf(channel, method);
    if (waitOf(limit) > 0) return undefined;
    const made = typeof body === 'function' ? await body() : body;
    if (made === undefined) return { kind: 'done', result: {} };
    const called = await call(method, made);
    const spacing = method === 'chat.postMessage' ? channelSpacingMs : 0;
    const wait = called.kind === 'limited' ? Math.max(called.retryAfterMs, shortestWaitMs) : spacing;
    if (wait > 0) freeAt.set(limit, pace.now() + wait);
    return called;
  }

  return {
    send: (channel, method, body) =>
      // Those under the same limit stay in order; the channel is free for others while they wait.
      inTurn(`${channel} ${method}`, async () => {
        for (let limited = 0; ; ) {
          const wait = waitOf(limitOf(channel, method));
          if (wait > longestWaitMs) return { kind: 'limited', retryAfterMs: wait };
          if (wait > 0) await pace.wait(wait);
          const called = await inTurn(channel, () => once(channel, method, body));
          if (called?.kind === 'limited') limited += 1;
          if (called !== undefined && (called.kind !== 'limited' || limited === patience)) return called;
        }
      }),
    sendNow: async (channel, method, body) => {
      const limit = limitOf(channel, method);
      for (;;) {
        const wait = waitOf(limit);
        if (wait > channelSpacingMs) return { kind: 'limited', retryAfterMs: wait };
        if (wait > 0) await pace.wait(wait);
        const called = await inTurn(channel, () => once(channel, method, body));
        if (called !== undefined) return called;
      }
    },
  };
}
