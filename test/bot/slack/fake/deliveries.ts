// Deliveries as Slack makes them, from recorded shapes with invented ids: over HTTP signed with the secret, or as frames of
// a socket.

import { createHmac } from 'node:crypto';
import { request } from 'node:http';
import command from '../../../payloads/slack-command.json' with { type: 'json' };
import direct from '../../../payloads/slack-direct.json' with { type: 'json' };
import home from '../../../payloads/slack-home.json' with { type: 'json' };
import joined from '../../../payloads/slack-joined.json' with { type: 'json' };
import mention from '../../../payloads/slack-mention.json' with { type: 'json' };
import picture from '../../../payloads/slack-picture.json' with { type: 'json' };
import submission from '../../../payloads/slack-submission.json' with { type: 'json' };
import tap from '../../../payloads/slack-tap.json' with { type: 'json' };

import { counter } from './fake-slack.ts';

export const signingSecret = 'invented-signing-secret';

export interface Payload {
  readonly is: 'slash_commands' | 'events_api' | 'interactive';
  readonly body: Readonly<Record<string, unknown>>;
}

const next = counter();
const fresh = (): string => `${Date.now()}.${next()}`;

export function slashCommand(text: string, change: Partial<typeof command> = {}): Payload {
  return { is: 'slash_commands', body: { ...command, text, trigger_id: fresh(), ...change } };
}

type EventOf = Readonly<Record<string, unknown>>;
const event = (payload: { event: EventOf }, change: EventOf): Payload => ({
  is: 'events_api',
  body: { ...payload, event_id: `Ev${fresh()}`, event: { ...payload.event, ...change } },
});

export const mentions = (text: string, change: EventOf = {}): Payload =>
  event(mention, { text: `<@UBOT> ${text}`, ...change });
export const writesDirectly = (text: string, change: EventOf = {}): Payload => event(direct, { text, ...change });
/** `before`: how it was written first. */
export const edits = (text: string, before: string, change: EventOf = {}): Payload => {
  const { user = 'UKARI', ts = '1772438400.000200', thread_ts, ...more } = change;
  const message = { type: 'message', user, text, ts, thread_ts, edited: { user, ts: '1772438460.000000' } };
  const changed = {
    subtype: 'message_changed',
    hidden: true,
    user: undefined,
    text: undefined,
    ts: '1772438460.000900',
  };
  return event(direct, { ...changed, message, previous_message: { ...message, text: before }, ...more });
};
export const dropsPicture = (change: EventOf = {}): Payload => event(picture, change);
export const opensHome = (change: EventOf = {}): Payload => event(home, change);
export const joins = (change: EventOf = {}): Payload => event(joined, change);

export interface TapOn {
  readonly user: string;
  readonly trigger: string;
  readonly responseUrl: string;
  readonly action: Readonly<Record<string, unknown>>;
  readonly actionTs: string;
  readonly on:
    | { readonly is: 'message'; readonly channel: string; readonly ts: string; readonly thread: string | undefined }
    | { readonly is: 'ephemeral'; readonly channel: string }
    | { readonly is: 'view'; readonly id: string; readonly hash: string };
}

export function taps({ user, trigger, responseUrl, action, actionTs, on }: TapOn): Payload {
  const base = { ...tap, user: { ...tap.user, id: user }, trigger_id: trigger, response_url: responseUrl };
  const actions = [{ ...action, action_ts: actionTs }];
  switch (on.is) {
    case 'message': {
      const thread = on.thread === undefined ? {} : { thread_ts: on.thread };
      const container = { type: 'message', message_ts: on.ts, channel_id: on.channel, is_ephemeral: false, ...thread };
      const message = { ...tap.message, ts: on.ts, ...thread };
      return { is: 'interactive', body: { ...base, container, message, channel: { id: on.channel }, actions } };
    }
    case 'ephemeral': {
      const container = { type: 'message', message_ts: '1.1', channel_id: on.channel, is_ephemeral: true };
      const { message: _, ...rest } = base;
      return { is: 'interactive', body: { ...rest, container, channel: { id: on.channel }, actions } };
    }
    case 'view': {
      const { message: _, channel: __, response_url: ___, ...rest } = base;
      const container = { type: 'view', view_id: on.id };
      return { is: 'interactive', body: { ...rest, container, view: { id: on.id, hash: on.hash }, actions } };
    }
  }
}

export interface Opened {
  readonly id: string;
  readonly callback: string;
  readonly carried: string;
}

export function submits(user: string, { id, callback, carried }: Opened, values: EventOf): Payload {
  const kept = { id, callback_id: callback, private_metadata: carried, hash: fresh() };
  const filled = { ...submission.view, ...kept, state: { values } };
  return {
    is: 'interactive',
    body: { ...submission, user: { ...submission.user, id: user }, trigger_id: fresh(), view: filled },
  };
}

export interface HttpAnswer {
  readonly status: number;
  readonly body: string;
}

/** The signature that Slack's own page describes: HMAC-SHA256 over `v0:timestamp:body`. */
export function signed(
  body: string,
  at = Math.floor(Date.now() / 1000),
  secret = signingSecret,
): Record<string, string> {
  const hash = createHmac('sha256', secret).update(`v0:${at}:${body}`).digest('hex');
  return { 'x-slack-request-timestamp': String(at), 'x-slack-signature': `v0=${hash}` };
}

export function encoded({ is, body }: Payload): { readonly text: string; readonly type: string } {
  switch (is) {
    case 'events_api':
      return { text: JSON.stringify(body), type: 'application/json' };
    case 'interactive':
      return {
        text: new URLSearchParams({ payload: JSON.stringify(body) }).toString(),
        type: 'application/x-www-form-urlencoded',
      };
    case 'slash_commands': {
      const fields = Object.fromEntries(Object.entries(body).map(([name, value]) => [name, String(value)]));
      return { text: new URLSearchParams(fields).toString(), type: 'application/x-www-form-urlencoded' };
    }
  }
}

/** By node:http, so that nothing that watches fetch stands in between. */
export function post(port: number, payload: Payload, headers?: Record<string, string>): Promise<HttpAnswer> {
  const { text, type } = encoded(payload);
  return postText(port, text, { 'content-type': type, ...(headers ?? signed(text)) });
}

export function postText(port: number, text: string, headers: Record<string, string>): Promise<HttpAnswer> {
  return new Promise((resolve, reject) => {
    const sending = request({ host: '127.0.0.1', port, path: '/slack/events', method: 'POST', headers }, (response) => {
      let body = '';
      response.on('data', (chunk) => {
        body += String(chunk);
      });
      response.on('end', () => resolve({ status: response.statusCode ?? 0, body }));
    });
    sending.on('error', reject);
    sending.end(text);
  });
}
