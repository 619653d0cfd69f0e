// Slack as a platform for messages: looks become blocks, each post carries its key in its metadata, and Slack's words for
// what became of a call are told apart.

import { z } from 'zod';
import { shipped, type Tongues } from '../language/tongues/tongues.ts';
import type { Look } from '../messages/look.ts';
import type { Address, Closed, Limit, Platform, Search, Sent } from '../messages/platform.ts';
import { type CardMessage, cardMessage } from './card-blocks.ts';
import { channelSpacingMs } from './limits.ts';
import { placesIn } from './places.ts';
import type { Respond } from './respond.ts';
import type { Call, Called } from './slack-client.ts';

const metadataType = 'batchbell_message';
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

/** Slack's words for what is closed to us, now and later. */
const closedErrors: Readonly<Record<Closed, readonly string[]>> = {
  channel: [
    'channel_not_found',
    'not_in_channel',
    'is_archived',
    'restricted_action',
    'restricted_action_read_only_channel',
    'restricted_action_thread_only_channel',
    'restricted_action_thread_locked',
  ],
  person: ['user_not_found', 'user_disabled', 'cannot_dm_bot', 'channel_not_found'],
  message: ['message_not_found', 'cant_update_message', 'edit_window_closed', 'channel_not_found'],
};

const methods = { post: 'chat.postMessage', change: 'chat.update', whisper: 'chat.postEphemeral' } as const;

export const messagesIn =
  (tongues: Tongues) =>
  (look: Look): CardMessage =>
    cardMessage(look.card, { ...look, words: tongues.wordsIn(look.language) });

export function slackPlatform(call: Call, respond: Respond, tongues = shipped): Platform {
  const messageOf = messagesIn(tongues);
  const bodyOf = ({ channel, thread }: Address, look: Look) => ({
    channel,
    ...(thread === undefined ? {} : { thread_ts: thread }),
    ...messageOf(look),
  });
  return {
    post: async (to, look, key) => tsOf(await call(methods.post, { ...bodyOf(to, look), ...underKey(key) })),
    change: (channel, ts, look) => call(methods.change, { channel, ts, ...messageOf(look) }),
    whisper: (to, user, look) => call(methods.whisper, { user, ...bodyOf(to, look) }),
    reply: async ({ via, responseUrl }, look) => {
      if (via !== 'command' || responseUrl === undefined) return false;
      return respond(responseUrl, { response_type: 'ephemeral', ...messageOf(look) });
    },
    find: (to, key, since) => find(call, to, key, since),
    open: async (user) => {
      const called = await call('conversations.open', { users: user });
      const id = called.kind === 'done' ? Opened.safeParse(called.result).data?.channel.id : undefined;
      if (called.kind !== 'done') return called;
      return id === undefined ? { kind: 'unknown', error: 'no_answer' } : { kind: 'done', result: id };
    },
    isDirect: (channel) => channel.startsWith('D'),
    limitOf,
    isClosed: (closed, error) => closedErrors[closed].includes(error),
    // A message has one row of taps; its block's id says which showing it is.
    places: (look) => placesIn(messageOf(look).blocks, () => ''),
    keepsChoice: (look) =>
      messageOf(look).blocks.some(
        (block) => block.type === 'actions' && block.elements.some(({ type }) => type === 'static_select'),
      ),
  };
}

const underKey = (key: string) => ({
  unfurl_links: false,
  unfurl_media: false,
  metadata: { event_type: metadataType, event_payload: { key } },
});

/** Messages are limited by channel, everything else by method. */
function limitOf(doing: keyof typeof methods, channel: string): Limit {
  const isPost = doing === 'post';
  return { name: isPost ? `${methods.post} ${channel}` : methods[doing], spacingMs: isPost ? channelSpacingMs : 0 };
}

async function find(call: Call, to: Address, key: string, since: number): Promise<Search> {
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

function tsOf(called: Called): Sent<string> {
  if (called.kind !== 'done') return called;
  const ts = Posted.safeParse(called.result).data?.ts;
  return ts === undefined ? { kind: 'unknown', error: 'no_ts' } : { kind: 'done', result: ts };
}
