// Messages out, each under a key in its metadata: where a post has no answer, it is looked for by its key before it is
// posted again. Where it stands is remembered by channel and `ts`, which is a string.

import { z } from 'zod';
import type { CardMessage } from './card-blocks.ts';
import type { Sender } from './sender.ts';
import type { Call, Called } from './slack-client.ts';

export interface Address {
  readonly channel: string;
  readonly thread: string | undefined;
}

export type Posting =
  | { readonly kind: 'posted'; readonly ts: string }
  | { readonly kind: 'rejected'; readonly error: string }
  | { readonly kind: 'unknown' };

export type Search =
  | { readonly kind: 'found'; readonly ts: string }
  | { readonly kind: 'none' }
  | { readonly kind: 'unknown' };

/** `gone`: the message can no longer be changed. `refused`: not like this. `failed`: perhaps another time. */
export type Updating =
  | { readonly kind: 'done' }
  | { readonly kind: 'gone' | 'refused' | 'failed'; readonly error: string };

export interface Outbox {
  /** Waits its turn and Slack's limits; looked for, then posted once more where the first try had no answer. */
  readonly post: (to: Address, message: CardMessage, key: string) => Promise<Posting>;
  /** One try: for a bell, whose ringer knows when to try again. */
  readonly ring: (to: Address, message: CardMessage, key: string) => Promise<Posting>;
  /** As it is when its turn has come; `undefined`: nothing to change any more. */
  readonly update: (channel: string, ts: string, make: () => Promise<CardMessage | undefined>) => Promise<Updating>;
  /** Only that person sees it, and only for a while: an answer to their own act. */
  readonly whisper: (to: Address, user: string, message: CardMessage) => Promise<boolean>;
  readonly find: (to: Address, key: string, since: number) => Promise<Search>;
  /** The channel in which somebody is written to alone. */
  readonly directTo: (user: string) => Promise<string | undefined>;
  /** The same, or why there is none. */
  readonly reach: (user: string) => Promise<{ readonly channel: string } | { readonly error: string }>;
}

export interface OutboxNeeds {
  readonly call: Call;
  readonly sender: Sender;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

export const metadataType = 'batchbell_message';
/** Slack's clock and ours differ; older than this before the post it cannot be. */
const slackMs = 120_000;
/** The newest are looked at; a bell that is looked for rang a minute ago. */
const looked = 100;

const Posted = z.object({ ts: z.string().min(1) });
const Opened = z.object({ channel: z.object({ id: z.string().min(1) }) });
const Found = z.object({
  messages: z.array(
    z.object({
      ts: z.string(),
      metadata: z
        .object({ event_payload: z.object({ key: z.string().optional() }) })
        .optional()
        .catch(undefined),
    }),
  ),
});

/** The message is not there to be changed any more. */
const goneErrors: readonly string[] = [
  'message_not_found',
  'cant_update_message',
  'edit_window_closed',
  'channel_not_found',
];

export function createOutbox({ call, sender, now }: OutboxNeeds): Outbox {
  const direct = new Map<string, string>();

  const bodyOf = (to: Address, message: CardMessage, key: string) => ({
    channel: to.channel,
    ...(to.thread === undefined ? {} : { thread_ts: to.thread }),
    text: message.text,
    blocks: message.blocks,
    unfurl_links: false,
    unfurl_media: false,
    metadata: { event_type: metadataType, event_payload: { key } },
  });

  async function post(to: Address, message: CardMessage, key: string): Promise<Posting> {
    const since = now();
    const body = bodyOf(to, message, key);
    const first = postingOf(await sender.send(to.channel, 'chat.postMessage', body));
    if (first.kind !== 'unknown') return first;
    const search = await find(to, key, since);
    if (search.kind === 'found') return { kind: 'posted', ts: search.ts };
    return postingOf(await sender.send(to.channel, 'chat.postMessage', body));
  }

  async function find(to: Address, key: string, since: number): Promise<Search> {
    const oldest = String(Math.floor((since - slackMs) / 1000));
    const range = { channel: to.channel, oldest, limit: looked, include_all_metadata: true };
    const called =
      to.thread === undefined
        ? await call('conversations.history', range)
        : await call('conversations.replies', { ...range, ts: to.thread });
    const messages = called.kind === 'done' ? Found.safeParse(called.result).data?.messages : undefined;
    if (messages === undefined) return { kind: 'unknown' };
    const found = messages.find(({ metadata }) => metadata?.event_payload.key === key);
    return found === undefined ? { kind: 'none' } : { kind: 'found', ts: found.ts };
  }

  async function reach(user: string): Promise<{ readonly channel: string } | { readonly error: string }> {
    const known = direct.get(user);
    if (known !== undefined) return { channel: known };
    const called = await call('conversations.open', { users: user });
    const id = called.kind === 'done' ? Opened.safeParse(called.result).data?.channel.id : undefined;
    if (id === undefined) return { error: 'error' in called ? called.error : 'no_answer' };
    direct.set(user, id);
    return { channel: id };
  }

  return {
    post,
    find,
    ring: async (to, message, key) =>
      postingOf(await sender.sendNow(to.channel, 'chat.postMessage', bodyOf(to, message, key))),
    update: async (channel, ts, make) => {
      const called = await sender.send(channel, 'chat.update', async () => {
        const message = await make();
        return message && { channel, ts, text: message.text, blocks: message.blocks };
      });
      if (called.kind === 'done') return { kind: 'done' };
      if (called.kind === 'limited') return { kind: 'failed', error: 'ratelimited' };
      if (called.kind !== 'refused') return { kind: 'failed', error: called.error };
      return { kind: goneErrors.includes(called.error) ? 'gone' : 'refused', error: called.error };
    },
    whisper: async (to, user, message) => {
      const thread = to.thread === undefined ? {} : { thread_ts: to.thread };
      const body = { channel: to.channel, user, text: message.text, blocks: message.blocks, ...thread };
      return (await sender.send(to.channel, 'chat.postEphemeral', body)).kind === 'done';
    },
    reach,
    directTo: async (user) => {
      const reached = await reach(user);
      return 'channel' in reached ? reached.channel : undefined;
    },
  };
}

function postingOf(called: Called): Posting {
  switch (called.kind) {
    case 'done': {
      const ts = Posted.safeParse(called.result).data?.ts;
      return ts === undefined ? { kind: 'unknown' } : { kind: 'posted', ts };
    }
    case 'limited':
      return { kind: 'rejected', error: 'ratelimited' };
    case 'refused':
    case 'unsent':
      return { kind: 'rejected', error: called.error };
    case 'unknown':
      return { kind: 'unknown' };
    default: {
      const never: never = called;
      return never;
    }
  }
}
