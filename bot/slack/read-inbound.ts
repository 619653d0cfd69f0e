// Payloads of commands, taps and forms, parsed here and nowhere else; what is none of our business is `undefined`.

import { z } from 'zod';
import { known } from '../../core/known.ts';
import type { Where } from '../messages/platform.ts';
import { buttonAt, menuAction, tapPrefix } from './action-blocks.ts';
import { crewMarked } from './crew-mark.ts';
import { type Inbound, setUps, type TapPlace } from './inbound.ts';
import { type Ourselves, readEvent } from './read-event.ts';
import { setUpPrefix } from './set-up-view.ts';
import { msOf, unescaped } from './slack-text.ts';

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

const User = z.object({ id, team_id: nullable });

const ActionBody = z.object({
  type: z.literal('block_actions'),
  user: User,
  team: ids.nullish(),
  trigger_id: id,
  response_url: nullable,
  channel: ids.nullish(),
  container: z.object({ message_ts: nullable, is_ephemeral: z.boolean().nullish(), thread_ts: nullable }),
  message: z.object({ ts: id, thread_ts: nullable }).nullish(),
  view: z.object({ id, hash: nullable, app_installed_team_id: nullable }).nullish(),
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
  user: User,
  team: ids.nullish(),
  trigger_id: z.string().optional(),
  view: z.object({
    id,
    hash: nullable,
    app_installed_team_id: nullable,
    callback_id: z.string().default(''),
    private_metadata: z.string(),
    state: z.object({ values: z.record(z.string(), z.record(z.string(), Value)) }),
  }),
});

export function readInbound(body: unknown, ourselves: Ourselves): Inbound | undefined {
  const event = readEvent(body, ourselves);
  if (event !== undefined) return event;
  const action = ActionBody.safeParse(body).data;
  if (action !== undefined) return fromAction(action, ourselves);
  const submission = SubmissionBody.safeParse(body).data;
  if (submission !== undefined) return fromSubmission(submission, ourselves);
  const command = CommandBody.safeParse(body).data;
  return command === undefined ? undefined : fromCommand(command, ourselves);
}

function fromCommand(body: z.infer<typeof CommandBody>, { team }: Ourselves): Inbound {
  const where: Where = {
    team: team ?? body.team_id,
    user: body.user_id,
    channel: body.channel_id,
    thread: undefined,
    via: isDirect(body.channel_id) ? 'direct' : 'command',
    responseUrl: body.response_url,
  };
  const head = { id: `command:${body.trigger_id}`, where, saidAt: undefined };
  return { ...head, kind: 'line', text: unescaped(body.text), message: undefined };
}

type Installed = Pick<z.infer<typeof ActionBody>, 'user' | 'team' | 'view'>;

/** Of an app that is installed for a whole organisation, `team` is null. */
const teamOf = ({ user, team, view }: Installed): string =>
  view?.app_installed_team_id ?? team?.id ?? user.team_id ?? '';

function fromAction(body: z.infer<typeof ActionBody>, { team }: Ourselves): Inbound | undefined {
  const [action] = body.actions;
  if (action === undefined) return undefined;
  const line = action.selected_option?.value ?? action.value ?? '';
  const of = setUps.find((each) => action.action_id === `${setUpPrefix}${each}`);
  if (of === undefined && (line === '' || !(action.action_id.startsWith(tapPrefix) || action.action_id === menuAction)))
    return undefined;
  const channel = body.channel?.id;
  const where: Where = {
    team: team ?? teamOf(body),
    user: body.user.id,
    channel,
    thread: body.message?.thread_ts ?? body.container.thread_ts ?? undefined,
    responseUrl: body.response_url ?? undefined,
    via: body.view ? 'home' : 'button',
  };
  const trigger = body.trigger_id;
  const head = {
    id: `tap:${trigger}`,
    where,
    saidAt: msOf(action.action_ts),
    crew: crewMarked(action.block_id),
    trigger,
  };
  if (of !== undefined) return { ...head, kind: 'set-up', of };
  const on = body.message?.ts ?? body.container.message_ts ?? body.view?.id ?? '';
  const version = body.view?.hash ?? '';
  return {
    ...head,
    kind: 'tap',
    line,
    label: action.selected_option?.text.text ?? action.text?.text ?? '',
    showing: `tap:${where.team}:${channel ?? ''}:${on}:${version}:${action.block_id}:${line}:${where.user}`,
    message: body.message?.ts,
    place: placeOf(action, body.view?.hash ?? undefined),
    ephemeral: body.container.is_ephemeral === true,
  };
}

function placeOf({ action_id, block_id }: z.infer<typeof ActionBody>['actions'][number], hash?: string): TapPlace {
  return { block: block_id, ...known({ button: buttonAt(action_id), hash }) };
}

function fromSubmission(body: z.infer<typeof SubmissionBody>, { team }: Ourselves): Inbound {
  const { view, user, trigger_id } = body;
  const values = Object.fromEntries(
    Object.entries(view.state.values).map(([block, actions]) => {
      const [typed] = Object.values(actions);
      return [block, typed === undefined ? '' : filledIn(typed)];
    }),
  );
  const where: Where = {
    team: team ?? teamOf(body),
    user: user.id,
    channel: undefined,
    thread: undefined,
    via: 'form',
    responseUrl: undefined,
  };
  return {
    kind: 'form',
    id: `form:${trigger_id ?? `${view.id}:${view.hash ?? ''}`}`,
    where,
    saidAt: undefined,
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
