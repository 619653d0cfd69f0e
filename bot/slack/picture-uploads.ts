// The picture of a card, after its message: into the same thread, with the figures as its text for who cannot see it. No
// message ever waits for it, and one that fails is only logged: the card says it all.

import { z } from 'zod';
import type { Log } from '../../core/ports.ts';
import type { Card } from '../cards/card.ts';
import type { Desk } from './desk.ts';
import { limits } from './limits.ts';
import type { Address } from './outbox.ts';
import { type Call, callTimeoutMs } from './slack-client.ts';
import { cut } from './slack-text.ts';

export interface PictureUploads {
  /** Begins, and comes back at once. */
  readonly send: (desk: Pick<Desk, 'picture'>, card: Card, to: Address) => void;
  /** Everything begun has ended. */
  readonly idle: () => Promise<void>;
}

export interface PictureUploadsNeeds {
  readonly call: Call;
  readonly log: Log;
}

const Place = z.object({ upload_url: z.url(), file_id: z.string().min(1) });

export function createPictureUploads({ call, log }: PictureUploadsNeeds): PictureUploads {
  const under = new Set<Promise<void>>();

  async function upload(desk: Pick<Desk, 'picture'>, card: Card, ref: string, to: Address): Promise<void> {
    const drawn = await desk.picture(ref);
    if (drawn === undefined) return;
    const content = new Uint8Array(drawn);
    const filename = ref.slice(ref.lastIndexOf('/') + 1);
    const alternative = cut(figuresOf(card), limits.file.alternative);
    // The name of the reference page; the types of @slack/web-api 8.2 and its filesUploadV2 write `alt_text`.
    const wanted = { filename, length: content.byteLength, alt_txt: alternative };
    const asked = await call('files.getUploadURLExternal', wanted);
    if (asked.kind !== 'done') return failed(ref, 'place', asked.kind);
    const place = Place.safeParse(asked.result).data;
    if (place === undefined) return failed(ref, 'place', 'unreadable');
    if (!(await putFile(place.upload_url, content))) return failed(ref, 'content', 'not-taken');
    const shared = await call('files.completeUploadExternal', {
      files: [{ id: place.file_id, title: cut(card.title, limits.file.title) }],
      channel_id: to.channel,
      ...(to.thread === undefined ? {} : { thread_ts: to.thread }),
    });
    if (shared.kind !== 'done') failed(ref, 'share', shared.kind);
  }

  function failed(ref: string, step: string, outcome: string): void {
    log.error('picture-not-uploaded', { ref, step, outcome });
  }

  return {
    send: (desk, card, to) => {
      const { image } = card;
      if (image === null) return;
      const done = upload(desk, card, image, to).catch((error: unknown) => failed(image, 'drawing', String(error)));
      under.add(done);
      void done.finally(() => under.delete(done));
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

/** The bytes of a file to the address that Slack named for them. */
async function putFile(url: string, content: Uint8Array<ArrayBuffer>): Promise<boolean> {
  const signal = AbortSignal.timeout(callTimeoutMs);
  return (await fetch(url, { method: 'POST', body: content, signal })).ok;
}
