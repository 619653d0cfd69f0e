// Events as Slack delivers them: what is said to us, changed afterwards, dropped in a thread, opened or joined.

import { z } from 'zod';
import type { Where } from '../messages/platform.ts';
import type { Inbound } from './inbound.ts';
import { mentions, msOf, unescaped, withoutMention } from './slack-text.ts';

/** Who we are, as far as it is known: a payload's own team may be that of a guest, or none. */
export interface Ourselves {
  readonly team: string | undefined;
  readonly botUser: string | undefined;
}

const id = z.string().min(1);
const nullable = z.string().nullish();

const Changed = z.object({ user: nullable, bot_id: nullable, text: nullable, ts: id, thread_ts: nullable });

const EventBody = z.object({
  type: z.literal('event_callback'),
  event_id: id,
  team_id: id,
  context_team_id: nullable,
  authorizations: z
    .array(z.object({ team_id: nullable, user_id: nullable, is_bot: z.boolean().nullish() }))
    .nullish()
    .catch(undefined),
  event: z.object({
    type: z.string(),
    subtype: nullable,
    bot_id: nullable,
    user: nullable,
    text: nullable,
    ts: nullable,
    channel: nullable,
    channel_type: nullable,
    thread_ts: nullable,
    tab: nullable,
    edited: z.unknown().optional(),
    files: z.array(z.object({ id, name: nullable, mimetype: nullable })).optional(),
    message: Changed.nullish().catch(undefined),
    previous_message: z.object({ text: nullable }).nullish().catch(undefined),
  }),
});
type Body = z.infer<typeof EventBody>;

export function readEvent(body: unknown, ourselves: Ourselves): Inbound | undefined {
  const read = EventBody.safeParse(body).data;
  if (read === undefined) return undefined;
  // While Slack has not told us who we are, the delivery says for whom it is.
  const [authorization] = read.authorizations ?? [];
  const named = authorization?.is_bot === true ? (authorization.user_id ?? undefined) : undefined;
  const botUser = ourselves.botUser ?? named;
  const team = ourselves.team ?? authorization?.team_id ?? read.context_team_id ?? read.team_id;
  return read.event.subtype === 'message_changed' ? fromChange(read, team, botUser) : fromEvent(read, team, botUser);
}

function fromEvent({ event, event_id }: Body, team: string, botUser: string | undefined): Inbound | undefined {
  const user = event.user ?? undefined;
  if (user === undefined || event.bot_id || (user === botUser && event.type !== 'member_joined_channel'))
    return undefined;
  const where: Where = {
    team,
    user,
    channel: event.channel ?? undefined,
    thread: event.thread_ts ?? undefined,
    responseUrl: undefined,
    via: event.type === 'app_home_opened' ? 'home' : event.channel_type === 'im' ? 'direct' : 'mention',
  };
  const head = { id: `event:${event_id}`, where, saidAt: msOf(event.ts) };
  switch (event.type) {
    case 'app_home_opened':
      return event.tab === 'home' ? { ...head, kind: 'home' } : undefined;
    case 'member_joined_channel':
      return user === botUser ? { ...head, kind: 'joined' } : undefined;
    case 'app_mention':
      // A change comes as a message too.
      return event.edited ? undefined : fromSaid(event, head, botUser, true);
    case 'message': {
      const isPlain = !event.subtype || event.subtype === 'file_share' || event.subtype === 'thread_broadcast';
      return isPlain ? fromSaid(event, head, botUser, where.via === 'direct') : undefined;
    }
    default:
      return undefined;
  }
}

/** `addressed`: to us, and not only beside us in a channel. */
function fromSaid(
  event: Body['event'],
  head: Pick<Inbound, 'id' | 'where' | 'saidAt'>,
  botUser: string | undefined,
  addressed: boolean,
): Inbound | undefined {
  const said = {
    text: unescaped(withoutMention(event.text ?? '', botUser)),
    message: event.ts ?? undefined,
  };
  const pictures = (event.files ?? []).filter(({ mimetype }) => mimetype?.startsWith('image/') !== false);
  const isMention = event.type === 'app_mention';
  if (pictures.length === 0) {
    // A mention without words asks for help.
    return addressed && (isMention || said.text !== '') ? { ...head, kind: 'line', ...said } : undefined;
  }
  if (!addressed && head.where.thread === undefined) return undefined;
  const files = pictures.map((file) => ({ id: file.id, name: file.name ?? '' }));
  return { ...head, kind: 'picture', ...said, files, addressed, mentions: mentions(event.text ?? '', botUser) };
}

/** Unfolding a link changes a message too: only other words count. */
function fromChange({ event, event_id }: Body, team: string, botUser: string | undefined): Inbound | undefined {
  const { message } = event;
  const user = message?.user ?? undefined;
  if (message === undefined || message === null || user === undefined || message.bot_id || user === botUser)
    return undefined;
  const before = event.previous_message?.text ?? '';
  const now = message.text ?? '';
  const isDirect = event.channel_type === 'im';
  if (before === now || !(isDirect || mentions(now, botUser))) return undefined;
  const where: Where = {
    team,
    user,
    channel: event.channel ?? undefined,
    thread: message.thread_ts ?? undefined,
    responseUrl: undefined,
    via: isDirect ? 'direct' : 'mention',
  };
  // The act is as old as the message that first told of it.
  const head = { id: `event:${event_id}`, where, saidAt: msOf(message.ts) };
  const said = { text: unescaped(withoutMention(now, botUser)), message: message.ts };
  const wasSaid = isDirect || mentions(before, botUser);
  return { ...head, kind: wasSaid ? 'edited' : 'line', ...said };
}
