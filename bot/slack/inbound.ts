// What Slack delivers, brought to one shape: who said, tapped or opened what, and where. Payloads are parsed here and
// nowhere else; what is none of our business is `undefined`.

import { z } from 'zod';
import { menuAction, tapPrefix } from './action-blocks.ts';
import { type SetUpOf, setUpPrefix, setUps } from './set-up-view.ts';

/** Where it happened, and so where the answer belongs. */
export interface Where {
  readonly team: string;
  readonly user: string;
  readonly channel: string | undefined;
  /** The thread's first message. */
  readonly thread: string | undefined;
  readonly via: 'command' | 'mention' | 'direct' | 'button' | 'home' | 'form';
  /** Answers a command or an ephemeral message, for half an hour and five times. */
  readonly responseUrl: string | undefined;
}

export type Inbound = { readonly id: string } & (
  | { readonly kind: 'line'; readonly where: Where; readonly text: string; readonly saidAt: number | undefined }
  | {
      readonly kind: 'tap';
      readonly where: Where;
      readonly line: string;
      readonly label: string;
      /** The showing of a message that was tapped: the same tap on it twice is one act. */
      readonly showing: string;
      readonly message: string | undefined;
      readonly ephemeral: boolean;
      readonly trigger: string;
      readonly saidAt: number | undefined;
    }
  | {
      readonly kind: 'form';
      readonly where: Where;
      readonly view: string;
      readonly callback: string;
      readonly values: Readonly<Record<string, string>>;
      readonly carried: string;
    }
  | { readonly kind: 'home'; readonly where: Where }
  /** A button of the home tab that opens a form to set up. */
  | { readonly kind: 'set-up'; readonly where: Where; readonly of: SetUpOf; readonly trigger: string }
  | {
      readonly kind: 'picture';
      readonly where: Where;
      readonly text: string;
      readonly files: readonly { readonly id: string; readonly name: string }[];
      readonly saidAt: number | undefined;
    }
  | { readonly kind: 'joined'; readonly where: Where }
);

const id = z.string().min(1);
const nullable = z.string().nullish();
const ids = z.object({ id });

const CommandBody = z.object({
  command: z.string().startsWith('/'),
  text: z.string().default(''),
  team_id: id,
  channel_id: id,
  user_id: id,
  response_url: z.string(),
  trigger_id: id,
});

const EventBody = z.object({
  type: z.literal('event_callback'),
  event_id: id,
  team_id: id,
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
    files: z.array(z.object({ id, name: nullable, mimetype: nullable })).optional(),
  }),
});

const ActionBody = z.object({
  type: z.literal('block_actions'),
  user: ids,
  team: ids,
  trigger_id: id,
  response_url: nullable,
  channel: ids.nullish(),
  container: z.object({ message_ts: nullable, is_ephemeral: z.boolean().nullish(), thread_ts: nullable }),
  message: z.object({ ts: id, thread_ts: nullable }).nullish(),
  view: z.object({ id, hash: nullable }).nullish(),
  actions: z
    .array(
      z.object({
        action_id: id,
        block_id: z.string().default(''),
        action_ts: nullable,
        value: nullable,
        text: z.object({ text: z.string() }).nullish(),
        selected_option: z.object({ value: z.string(), text: z.object({ text: z.string() }) }).nullish(),
      }),
    )
    .min(1),
});

const Value = z.object({
  value: nullable,
  selected_option: z.object({ value: z.string() }).nullish(),
  selected_conversation: nullable,
  selected_users: z.array(z.string()).nullish(),
});
const SubmissionBody = z.object({
  type: z.literal('view_submission'),
  user: ids,
  team: ids,
  trigger_id: z.string().optional(),
  view: z.object({
    id,
    hash: nullable,
    callback_id: z.string().default(''),
    private_metadata: z.string(),
    state: z.object({ values: z.record(z.string(), z.record(z.string(), Value)) }),
  }),
});

/** `botUser`: so that only its own joining counts. */
export function readInbound(body: unknown, botUser: string | undefined): Inbound | undefined {
  const event = EventBody.safeParse(body).data;
  if (event !== undefined) return fromEvent(event, botUser);
  const action = ActionBody.safeParse(body).data;
  if (action !== undefined) return fromAction(action);
  const submission = SubmissionBody.safeParse(body).data;
  if (submission !== undefined) return fromSubmission(submission);
  const command = CommandBody.safeParse(body).data;
  return command === undefined ? undefined : fromCommand(command);
}

function fromCommand(body: z.infer<typeof CommandBody>): Inbound {
  const where: Where = {
    team: body.team_id,
    user: body.user_id,
    channel: body.channel_id,
    thread: undefined,
    via: isDirect(body.channel_id) ? 'direct' : 'command',
    responseUrl: body.response_url,
  };
  return { kind: 'line', id: `command:${body.trigger_id}`, where, text: unescaped(body.text), saidAt: undefined };
}

function fromEvent({ event, ...body }: z.infer<typeof EventBody>, botUser: string | undefined): Inbound | undefined {
  const user = event.user ?? undefined;
  if (user === undefined || event.bot_id || (user === botUser && event.type !== 'member_joined_channel'))
    return undefined;
  const channel = event.channel ?? undefined;
  const where: Where = {
    team: body.team_id,
    user,
    channel,
    thread: event.thread_ts ?? undefined,
    responseUrl: undefined,
    via: event.type === 'app_home_opened' ? 'home' : event.channel_type === 'im' ? 'direct' : 'mention',
  };
  const head = { id: `event:${body.event_id}`, where };
  const said = { text: unescaped(withoutMention(event.text ?? '', botUser)), saidAt: msOf(event.ts) };
  switch (event.type) {
    case 'app_home_opened':
      return event.tab === 'home' ? { ...head, kind: 'home' } : undefined;
    case 'member_joined_channel':
      return user === botUser ? { ...head, kind: 'joined' } : undefined;
    case 'app_mention':
      // A picture with a bare mention comes as a message too.
      return event.files !== undefined && said.text === '' ? undefined : { ...head, kind: 'line', ...said };
    case 'message': {
      const pictures = (event.files ?? []).filter(({ mimetype }) => mimetype?.startsWith('image/') !== false);
      const plainMessage = !event.subtype || event.subtype === 'file_share' || event.subtype === 'thread_broadcast';
      if (!plainMessage) return undefined;
      if (pictures.length > 0 && where.thread !== undefined) {
        return {
          ...head,
          kind: 'picture',
          ...said,
          files: pictures.map((file) => ({ id: file.id, name: file.name ?? '' })),
        };
      }
      return where.via === 'direct' && said.text !== '' ? { ...head, kind: 'line', ...said } : undefined;
    }
    default:
      return undefined;
  }
}

function fromAction(body: z.infer<typeof ActionBody>): Inbound | undefined {
  const [action] = body.actions;
  if (action === undefined) return undefined;
  const line = action.selected_option?.value ?? action.value ?? '';
  const of = setUps.find((each) => action.action_id === `${setUpPrefix}${each}`);
  if (of === undefined && (line === '' || !(action.action_id.startsWith(tapPrefix) || action.action_id === menuAction)))
    return undefined;
  const channel = body.channel?.id;
  const thread = body.message?.thread_ts ?? body.container.thread_ts ?? undefined;
  const where: Where = {
    team: body.team.id,
    user: body.user.id,
    channel,
    thread,
    responseUrl: body.response_url ?? undefined,
    via: body.view ? 'home' : 'button',
  };
  if (of !== undefined) return { kind: 'set-up', id: `tap:${body.trigger_id}`, where, of, trigger: body.trigger_id };
  const on = body.message?.ts ?? body.container.message_ts ?? body.view?.id ?? '';
  const version = body.view?.hash ?? '';
  return {
    kind: 'tap',
    id: `tap:${body.trigger_id}`,
    where,
    line,
    label: action.selected_option?.text.text ?? action.text?.text ?? '',
    showing: `tap:${body.team.id}:${channel ?? ''}:${on}:${version}:${action.block_id}:${line}:${body.user.id}`,
    message: body.message?.ts,
    ephemeral: body.container.is_ephemeral === true,
    trigger: body.trigger_id,
    saidAt: msOf(action.action_ts),
  };
}

function fromSubmission({ view, user, team, trigger_id }: z.infer<typeof SubmissionBody>): Inbound {
  const values: Record<string, string> = {};
  for (const [block, actions] of Object.entries(view.state.values)) {
    const [typed] = Object.values(actions);
    values[block] = typed === undefined ? '' : filledIn(typed);
  }
  return {
    kind: 'form',
    id: `form:${trigger_id ?? `${view.id}:${view.hash ?? ''}`}`,
    where: { team: team.id, user: user.id, channel: undefined, thread: undefined, via: 'form', responseUrl: undefined },
    view: view.id,
    callback: view.callback_id,
    values,
    carried: view.private_metadata,
  };
}

/** Several people are apart by a space. */
const filledIn = (typed: z.infer<typeof Value>): string =>
  typed.selected_option?.value ?? typed.selected_conversation ?? typed.selected_users?.join(' ') ?? typed.value ?? '';

const isDirect = (channel: string): boolean => channel.startsWith('D');

/** Slack's three entities, and a link or channel as its own words. A person stays `<@U123>`: the roster knows the name. */
function unescaped(text: string): string {
  return text
    .replaceAll(/<@([UW][A-Z0-9]+)\|[^<>]*>/g, '<@$1>')
    .replaceAll(/<(?:mailto:|tel:)?[^<>|]*\|([^<>]*)>/g, '$1')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');
}

const withoutMention = (text: string, botUser: string | undefined): string =>
  text.replaceAll(/<@([UW][A-Z0-9]+)(?:\|[^<>]*)?>/g, (mention, user) => (user === botUser ? ' ' : mention)).trim();

/** A message's `ts` begins with the second at which it was posted. */
function msOf(ts: string | null | undefined): number | undefined {
  const seconds = Number(ts ?? Number.NaN);
  return Number.isFinite(seconds) ? Math.round(seconds * 1000) : undefined;
}
