// Who we are to Slack, asked once: the bot's own id, and the workspace. While Slack cannot be reached it is asked again; a
// token that Slack refuses is a fault of the set-up.

import { z } from 'zod';
import type { Log } from '../../core/ports.ts';
import type { Pace } from '../time/pace.ts';
import type { Identity } from './bolt-app.ts';
import type { Call } from './slack-client.ts';

const Known = z.object({ team_id: z.string(), bot_id: z.string(), user_id: z.string() });
const pausesMs = [1_000, 2_000, 5_000, 10_000, 30_000] as const;

export type Asked =
  | { readonly is: 'known'; readonly identity: Identity }
  | { readonly is: 'refused'; readonly error: string };

/** `undefined`: no answer yet. */
export async function askIdentity(call: Call): Promise<Asked | undefined> {
  const called = await call('auth.test', {});
  if (called.kind === 'refused') return { is: 'refused', error: called.error };
  const known = called.kind === 'done' ? Known.safeParse(called.result).data : undefined;
  if (known === undefined) return undefined;
  return { is: 'known', identity: { team: known.team_id, botId: known.bot_id, botUserId: known.user_id } };
}

/** Until there is an answer, or `stopped`. */
export async function askUntilKnown(
  call: Call,
  pace: Pace,
  log: Log,
  stopped: () => boolean,
): Promise<Asked | undefined> {
  for (let tries = 0; !stopped(); tries += 1) {
    const asked = await askIdentity(call);
    if (asked !== undefined) return asked;
    log.error('slack-not-reached', { tries: tries + 1 });
    await pace.wait(pausesMs[Math.min(tries, pausesMs.length - 1)] ?? 30_000);
  }
  return undefined;
}
