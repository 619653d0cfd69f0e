// A file goes up in two calls, with its bytes between them.

import { z } from 'zod';
import type { Log } from '../../core/ports.ts';
import type { HangingFile, Missing, Upload } from '../messages/files.ts';
import type { Pace } from '../time/pace.ts';
import { limits, uploadTimeoutMs } from './limits.ts';
import type { Call, Called } from './slack-client.ts';
import type { SlackMethod } from './slack-methods.ts';
import { cut } from './slack-text.ts';

interface UploadDeps {
  readonly call: Call;
  readonly pace: Pace;
  readonly log: Log;
}

const Place = z.object({ upload_url: z.url(), file_id: z.string().min(1) });

/** How often a limit is waited out before the file is given up. */
const patience = 3;

export function createUpload(deps: UploadDeps): Upload {
  return async (file, bytes, to) => {
    const { title } = file;
    const place = await placeFor(deps, file, bytes.byteLength);
    if (place === undefined) return 'missing';
    if (!(await putFile(place.upload_url, new Uint8Array(bytes)))) return missing(deps, file, 'content', 'not-taken');
    const shared = await patiently(deps, 'files.completeUploadExternal', {
      files: [{ id: place.file_id, title: cut(title, limits.file.title) }],
      channel_id: to.channel,
      ...(to.thread === undefined ? {} : { thread_ts: to.thread }),
    });
    return shared.kind === 'done' ? undefined : missing(deps, file, 'share', shared.kind);
  };
}

async function placeFor(deps: UploadDeps, file: HangingFile, length: number) {
  const { filename, alternative } = file;
  // The name of the reference page; the types of @slack/web-api 8.2 and its filesUploadV2 write `alt_text`.
  const alt = alternative === undefined ? {} : { alt_txt: cut(alternative, limits.file.alternative) };
  const asked = await patiently(deps, 'files.getUploadURLExternal', { filename, length, ...alt });
  const place = asked.kind === 'done' ? Place.safeParse(asked.result).data : undefined;
  if (place === undefined) missing(deps, file, 'place', asked.kind === 'done' ? 'unreadable' : asked.kind);
  return place;
}

function missing({ log }: UploadDeps, { filename }: HangingFile, step: string, outcome: string): Missing {
  log.error('file-not-uploaded', { file: filename, step, outcome });
  return step === 'share' && outcome === 'unknown' ? 'unsure' : 'missing';
}

/** Outside the channel's queue: whoever waits here holds up no message. */
async function patiently(
  { call, pace }: UploadDeps,
  method: SlackMethod,
  body: Readonly<Record<string, unknown>>,
): Promise<Called> {
  for (let limited = 0; ; limited += 1) {
    const called = await call(method, body);
    if (called.kind !== 'limited' || limited === patience) return called;
    await pace.wait(called.retryAfterMs);
  }
}

/** The bytes of a file to the address that Slack named for them; `false` where they were not taken. */
async function putFile(url: string, content: Uint8Array<ArrayBuffer>): Promise<boolean> {
  try {
    const signal = AbortSignal.timeout(uploadTimeoutMs);
    return (await fetch(url, { method: 'POST', body: content, signal })).ok;
  } catch {
    return false;
  }
}
