// One client of Slack's Web API, and what became of each call: done, to be tried later, refused, never sent, or unknown.
// The SDK's own retries are off: they would post a message twice, and know no deadline. A token that is taken away ends
// every call alike, and nobody can be told of it in Slack.

import { WebClient } from '@slack/web-api';
import { z } from 'zod';
import type { Log } from '../../core/ports.ts';
import type { Sent } from '../messages/platform.ts';
import type { SdkLog } from './slack-log.ts';
import type { SlackMethod } from './slack-methods.ts';

export type Called = Sent<Readonly<Record<string, unknown>>>;

export type Call = (method: SlackMethod, body: Readonly<Record<string, unknown>>) => Promise<Called>;

export interface ClientDeps {
  readonly token: string;
  readonly apiUrl: string | undefined;
  readonly log: SdkLog;
  readonly timeoutMs?: number;
}

export const callTimeoutMs = 5_000;

/** Made anew for each client: the SDK writes into what it is given, and one client's token would go out with another. */
export const clientOptions = ({ apiUrl, log, timeoutMs = callTimeoutMs }: Omit<ClientDeps, 'token'>) => ({
  retryConfig: { retries: 0 },
  timeout: timeoutMs,
  rejectRateLimitedCalls: true,
  logger: log,
  ...(apiUrl === undefined ? {} : { slackApiUrl: apiUrl }),
});

export function createCall(deps: ClientDeps): Call {
  const client = new WebClient(deps.token, clientOptions(deps));
  return async (method, body) => {
    try {
      return { kind: 'done', result: { ...(await client.apiCall(method, { ...body })) } };
    } catch (error) {
      return becameOf(error);
    }
  };
}

const SdkError = z.object({
  code: z.string().optional().catch(undefined),
  message: z.string().catch(''),
  retryAfter: z.number().optional().catch(undefined),
  statusCode: z.number().optional().catch(undefined),
  data: z.object({ error: z.string() }).optional().catch(undefined),
});

/** Slack's words for "something broke half way". */
const halfDone: readonly string[] = ['internal_error', 'fatal_error', 'service_unavailable', 'request_timeout'];
/** The connection was never made. */
const neverSent: readonly string[] = ['ECONNREFUSED', 'ENOTFOUND', 'EAI_AGAIN', 'EHOSTUNREACH', 'ENETUNREACH'];
/** Where Slack says "too much" without saying for how long. */
const usualRetryMs = 5_000;

export function becameOf(error: unknown): Called {
  const read = SdkError.safeParse(error).data;
  if (read === undefined) return { kind: 'unknown', error: String(error) };
  switch (read.code) {
    case 'slack_webapi_rate_limited_error':
      return { kind: 'limited', retryAfterMs: (read.retryAfter ?? usualRetryMs / 1000) * 1000 };
    case 'slack_webapi_platform_error': {
      const said = read.data?.error ?? 'unknown_error';
      if (said === 'ratelimited') return { kind: 'limited', retryAfterMs: usualRetryMs };
      return halfDone.includes(said) ? { kind: 'unknown', error: said } : { kind: 'refused', error: said };
    }
    case 'slack_webapi_http_error': {
      const status = read.statusCode ?? 500;
      if (status === 429) return { kind: 'limited', retryAfterMs: usualRetryMs };
      return { kind: status >= 500 ? 'unknown' : 'refused', error: `http_${status}` };
    }
    default: {
      const code = causeCode(error);
      if (/retry/i.test(read.message) && code === undefined) return { kind: 'limited', retryAfterMs: usualRetryMs };
      return {
        kind: code !== undefined && neverSent.includes(code) ? 'unsent' : 'unknown',
        error: code ?? 'no_answer',
      };
    }
  }
}

/** The system's own code, however deep the SDK and fetch have wrapped it. */
function causeCode(error: unknown, depth = 0): string | undefined {
  if (!(error instanceof Error) || depth > 5) return undefined;
  if (error instanceof AggregateError) return causeCode(error.errors[0], depth + 1);
  const code = 'code' in error && typeof error.code === 'string' ? error.code : undefined;
  if (code !== undefined && !code.startsWith('slack_')) return code;
  return causeCode(error.cause, depth + 1);
}

export interface WatchedCall {
  readonly call: Call;
  /** Slack's word for why every call is refused; `undefined` once one succeeds. */
  readonly shutOut: () => string | undefined;
}

/** doc "Web API errors": what the token itself is refused for, whatever is called. */
const shuttingOut: readonly string[] = [
  'invalid_auth',
  'not_authed',
  'account_inactive',
  'token_revoked',
  'token_expired',
  'org_login_required',
  'team_access_not_granted',
  'access_denied',
];

export function watchedCall(call: Call, log: Log): WatchedCall {
  let shutOut: string | undefined;
  return {
    shutOut: () => shutOut,
    call: async (method, body) => {
      const called = await call(method, body);
      if (called.kind === 'done') {
        if (shutOut !== undefined) log.info('slack-lets-in-again');
        shutOut = undefined;
      } else if (called.kind === 'refused' && shuttingOut.includes(called.error)) {
        if (shutOut === undefined) log.error('slack-shuts-out', { error: called.error });
        shutOut = called.error;
      }
      return called;
    },
  };
}
