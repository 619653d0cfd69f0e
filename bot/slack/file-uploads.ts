// The files that hang on a card, after its message: its picture, with the figures as text for who cannot see it, and the
// paper that somebody asked for. No message ever waits for one.

import { z } from 'zod';
import type { Log } from '../../core/ports.ts';
import { type Card, fileNameOf } from '../cards/card.ts';
import type { Desk } from './crew-desk.ts';
import { limits, uploadTimeoutMs } from './limits.ts';
import type { Address } from './outbox.ts';
import type { Pace } from './sender.ts';
import type { Call, Called } from './slack-client.ts';
import type { SlackMethod } from './slack-methods.ts';
import { cut } from './slack-text.ts';

/** A paper that did not get into its place, or of which nobody knows since Slack gave no answer to its sharing. */
export type Missing = 'missing' | 'unsure';

type Told = (missing: Missing) => Promise<void>;
type FileDesk = Pick<Desk, 'picture' | 'papers'>;

export interface FileUploads {
  /**
   * Begins, and comes back at once. `told`: hears of a paper that is missing. A picture's failure is only logged, since the
   * card says it all.
   */
  readonly send: (desk: FileDesk, card: Card, to: Address, told?: Told) => void;
  /** Everything begun has ended. */
  readonly idle: () => Promise<void>;
}

export interface FileUploadsNeeds {
  readonly call: Call;
  readonly pace: Pace;
  readonly log: Log;
}

interface Hanging {
  readonly filename: string;
  readonly title: string;
  /** For who cannot see it; a document is read by itself. */
  readonly alternative?: string;
}

const Place = z.object({ upload_url: z.url(), file_id: z.string().min(1) });

/** How often a limit is waited out before the file is given up. */
const patience = 3;

export function createFileUploads({ call, pace, log }: FileUploadsNeeds): FileUploads {
  const under = new Set<Promise<void>>();

  /** `undefined`: it is in its place. */
  async function upload(hanging: Hanging, bytes: Uint8Array, to: Address): Promise<Missing | undefined> {
    const { filename, title, alternative } = hanging;
    const failed = (step: string, outcome: string): Missing => {
      log.error('file-not-uploaded', { file: filename, step, outcome });
      return step === 'share' && outcome === 'unknown' ? 'unsure' : 'missing';
    };
    // The name of the reference page; the types of @slack/web-api 8.2 and its filesUploadV2 write `alt_text`.
    const alt = alternative === undefined ? {} : { alt_txt: cut(alternative, limits.file.alternative) };
    const asked = await patiently('files.getUploadURLExternal', { filename, length: bytes.byteLength, ...alt });
    if (asked.kind !== 'done') return failed('place', asked.kind);
    const place = Place.safeParse(asked.result).data;
    if (place === undefined) return failed('place', 'unreadable');
    if (!(await putFile(place.upload_url, new Uint8Array(bytes)))) return failed('content', 'not-taken');
    const shared = await patiently('files.completeUploadExternal', {
      files: [{ id: place.file_id, title: cut(title, limits.file.title) }],
      channel_id: to.channel,
      ...(to.thread === undefined ? {} : { thread_ts: to.thread }),
    });
    return shared.kind === 'done' ? undefined : failed('share', shared.kind);
  }

  /** Outside the channel's queue: whoever waits here holds up no message. */
  async function patiently(method: SlackMethod, body: Readonly<Record<string, unknown>>): Promise<Called> {
    for (let limited = 0; ; limited += 1) {
      const called = await call(method, body);
      if (called.kind !== 'limited' || limited === patience) return called;
      await pace.wait(called.retryAfterMs);
    }
  }

  async function sendPicture(desk: FileDesk, card: Card, image: string, to: Address): Promise<void> {
    const bytes = await desk.picture(image);
    if (bytes === undefined) return;
    const filename = image.slice(image.lastIndexOf('/') + 1);
    await upload({ filename, title: card.title, alternative: figuresOf(card) }, bytes, to);
  }

  async function sendPaper(desk: FileDesk, card: Card, paper: string, to: Address, told: Told): Promise<void> {
    const bytes = desk.papers.read(paper);
    const missing =
      bytes === undefined ? 'missing' : await upload({ filename: fileNameOf(paper), title: card.title }, bytes, to);
    if (missing !== undefined) await told(missing);
  }

  function begin(work: Promise<void>, file: string): void {
    const done = work.catch((error: unknown) => log.error('file-not-uploaded', { file, error: String(error) }));
    under.add(done);
    void done.finally(() => under.delete(done));
  }

  return {
    send: (desk, card, to, told = async () => undefined) => {
      const { image, paper } = card;
      if (image !== null) begin(sendPicture(desk, card, image, to), image);
      if (paper !== undefined) begin(sendPaper(desk, card, paper, to, told), paper);
    },
    idle: async () => {
      while (under.size > 0) await Promise.all(under);
    },
  };
}

/** What the picture shows, in words: the title and every figure. */
function figuresOf({ title, facts }: Card): string {
  return [title, ...facts.map(({ label, shown }) => `${label}: ${shown}`)].join('. ');
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
