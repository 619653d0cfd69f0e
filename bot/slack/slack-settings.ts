// Whether Slack is on, and how it is reached, from the environment. Knows nothing of the Slack packages, so that asking
// costs nothing where it is off.

import { z } from 'zod';
import type { Failed } from '../../core/failed.ts';
import { ownValue } from '../../core/own-key.ts';

export type SlackSettings = {
  readonly botToken: string;
  /** Of a stand-in for Slack; `undefined`: Slack itself. */
  readonly apiUrl: string | undefined;
} & (
  | {
      readonly mode: 'socket';
      readonly appToken: string;
      /** Health and readiness are answered here, where a port is named. */
      readonly port: number | undefined;
    }
  | { readonly mode: 'http'; readonly signingSecret: string; readonly port: number }
);

const usualPort = 3000;
const text = z.string().trim().min(1).optional().catch(undefined);

const Environment = z.object({
  SLACK_BOT_TOKEN: text,
  SLACK_APP_TOKEN: text,
  SLACK_SIGNING_SECRET: text,
  SLACK_API_URL: z
    .url('not an address')
    .refine((url) => url.endsWith('/api/'), 'ends in /api/')
    .optional(),
  PORT: z.coerce.number('a port is a number').int().min(0).max(65_535).optional(),
});

/** `undefined` where no Slack token is set. A fault names the variables. */
export function readSlackSettings(
  environment: Readonly<Record<string, string | undefined>>,
): SlackSettings | Failed<string> | undefined {
  const named = Object.keys(Environment.shape).map((name) => [name, ownValue(environment, name) || undefined] as const);
  const read = Environment.safeParse(Object.fromEntries(named));
  const slackNamed = named.some(([name, value]) => name.startsWith('SLACK_') && value !== undefined);
  if (!slackNamed) return undefined;
  if (!read.success) {
    return { failed: read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`).join('; ') };
  }
  const { SLACK_BOT_TOKEN: botToken, SLACK_APP_TOKEN: appToken, SLACK_SIGNING_SECRET: signingSecret } = read.data;
  const { SLACK_API_URL: apiUrl, PORT: port } = read.data;
  if (botToken === undefined) {
    return appToken === undefined && signingSecret === undefined
      ? undefined
      : { failed: 'SLACK_BOT_TOKEN is missing: it is the token that starts with xoxb-' };
  }
  if (appToken !== undefined) return { mode: 'socket', botToken, appToken, apiUrl, port };
  if (signingSecret !== undefined) return { mode: 'http', botToken, signingSecret, apiUrl, port: port ?? usualPort };
  return { failed: 'SLACK_BOT_TOKEN needs SLACK_APP_TOKEN (Socket Mode) or SLACK_SIGNING_SECRET (HTTP) beside it' };
}
