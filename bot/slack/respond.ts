// Answers through the one-time address that came with a command or an ephemeral message. Bolt's own way has no time-out.

import { callTimeoutMs } from './slack-client.ts';

export type Respond = (url: string, body: Readonly<Record<string, unknown>>) => Promise<boolean>;

export const respond: Respond = async (url, body) => {
  try {
    const answer = await fetch(url, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(callTimeoutMs),
    });
    return answer.ok;
  } catch {
    return false;
  }
};
