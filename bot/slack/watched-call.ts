// Whether Slack still lets us in: a token that is taken away ends every call alike, and nobody can be told of it in Slack.

import type { Log } from '../../core/ports.ts';
import type { Call } from './slack-client.ts';

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
