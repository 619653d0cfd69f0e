// Structured logs on standard error, by pino: names of events, ids and figures. No token and none of what people typed
// gets in: the SDK's chatter below a warning is dropped, and what is left is stripped of whatever looks like a token.

import type { LogLevel } from '@slack/bolt';
import pino, { type DestinationStream } from 'pino';
import type { Log } from '../../core/ports.ts';

/** As the Slack packages want a logger. */
export interface SdkLog {
  readonly debug: (...said: unknown[]) => void;
  readonly info: (...said: unknown[]) => void;
  readonly warn: (...said: unknown[]) => void;
  readonly error: (...said: unknown[]) => void;
  readonly setLevel: (level: LogLevel) => void;
  readonly getLevel: () => LogLevel;
  readonly setName: (name: string) => void;
}

export interface SlackLog extends Log {
  readonly forSdk: SdkLog;
}

export function createSlackLog(destination: DestinationStream = pino.destination({ dest: 2, sync: true })): SlackLog {
  const logger = pino(
    {
      base: null,
      messageKey: 'event',
      timestamp: pino.stdTimeFunctions.isoTime,
      formatters: { level: (level) => ({ level }) },
    },
    destination,
  );
  const write =
    (level: 'info' | 'warn' | 'error') =>
    (event: string, details: Readonly<Record<string, unknown>> = {}) =>
      logger[level](cleaned(details), event);
  const fromSdk =
    (level: 'warn' | 'error') =>
    (...said: unknown[]) =>
      write(level)('slack-sdk', { said: said.map(String).join(' ') });
  return {
    info: write('info'),
    error: write('error'),
    forSdk: {
      debug: () => undefined,
      info: () => undefined,
      warn: fromSdk('warn'),
      error: fromSdk('error'),
      setLevel: () => undefined,
      getLevel: () => 'warn' as LogLevel,
      setName: () => undefined,
    },
  };
}

const secrets = /xox[a-z]-[\w-]+|xapp-[\w-]+|v0=[0-9a-f]{32,}|https:\/\/hooks\.slack\.com\S+/gi;

/** Tokens, signatures and one-time addresses out of whatever was logged. */
export function cleaned(details: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const json: unknown = JSON.parse(JSON.stringify(details).replaceAll(secrets, '[secret]'));
  return json as Readonly<Record<string, unknown>>;
}
