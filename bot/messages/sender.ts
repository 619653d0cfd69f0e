// Sends in turn: one queue a channel, what is limited spaced apart, and a platform's "later" obeyed by whom it concerns. A
// channel that must wait holds up no other.

import type { Pace } from '../time/pace.ts';
import { createTurns } from '../time/turns.ts';
import type { Limit, Sent } from './platform.ts';

/** `waited`: what there is to send may have changed since it was asked for. */
type Try<T> = (waited: boolean) => Promise<Sent<T>>;

export interface Sender {
  /** In the channel's turn; a limit is waited out, a few times, but none that lasts. */
  readonly send: <T>(channel: string, limit: Limit, work: Try<T>) => Promise<Sent<T>>;
  /** In the channel's turn, but a limit is not waited out: whoever rings knows when to try again. */
  readonly sendNow: <T>(channel: string, limit: Limit, work: Try<T>) => Promise<Sent<T>>;
}

/** How often a limit is waited out before the call is given up. */
const patience = 5;
/** A platform may say "in 0 seconds": a limit is a limit. */
const shortestWaitMs = 1_000;
/** A limit that lasts longer is not waited out: by then the answer helps nobody, and the person is told alone. */
const longestWaitMs = 60_000;

interface State {
  readonly pace: Pace;
  readonly turns: ReturnType<typeof createTurns<string>>;
  readonly freeAt: Map<string, number>;
}

export function createSender(pace: Pace): Sender {
  const state: State = { pace, turns: createTurns(), freeAt: new Map() };
  return {
    send: (channel, limit, work) => {
      const queue = `${channel} ${limit.name}`;
      const waited = !state.turns.isFree(queue);
      // Those under the same limit stay in order; the channel is free for others while they wait.
      return state.turns.take(queue, () => tried(state, channel, limit, work, { waited, longestWaitMs, patience }));
    },
    sendNow: (channel, limit, work) =>
      tried(state, channel, limit, work, { waited: true, longestWaitMs: limit.spacingMs, patience: 1 }),
  };
}

interface Patience {
  readonly waited: boolean;
  readonly longestWaitMs: number;
  readonly patience: number;
}

async function tried<T>(
  state: State,
  channel: string,
  limit: Limit,
  work: Try<T>,
  { waited, longestWaitMs: longest, patience: most }: Patience,
): Promise<Sent<T>> {
  let hasWaited = waited;
  for (let limited = 0; ; ) {
    const wait = waitOf(state, limit);
    if (wait > longest) return { kind: 'limited', retryAfterMs: wait };
    if (wait > 0) await state.pace.wait(wait);
    hasWaited ||= wait > 0 || !state.turns.isFree(channel);
    const sent = await once(state, channel, limit, () => work(hasWaited));
    if (sent?.kind === 'limited') limited += 1;
    if (sent !== undefined && (sent.kind !== 'limited' || limited === most)) return sent;
    hasWaited = true;
  }
}

/** `undefined`: its turn came while the limit still stood. */
function once<T>(state: State, channel: string, limit: Limit, work: () => Promise<Sent<T>>) {
  return state.turns.take(channel, async () => {
    if (waitOf(state, limit) > 0) return undefined;
    const sent = await work();
    const wait = sent.kind === 'limited' ? Math.max(sent.retryAfterMs, shortestWaitMs) : limit.spacingMs;
    if (wait > 0) state.freeAt.set(limit.name, state.pace.now() + wait);
    return sent;
  });
}

const waitOf = ({ freeAt, pace }: State, { name }: Limit): number => Math.max(0, (freeAt.get(name) ?? 0) - pace.now());
