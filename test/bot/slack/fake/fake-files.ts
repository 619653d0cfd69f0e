// The stand-in's part for files: a place for the bytes, the bytes, and the sharing, as the real one asks for them.

import type { IncomingMessage, ServerResponse } from 'node:http';

/** What was shared, in that order. */
export interface FakeFile {
  readonly name: string;
  readonly alternative: string;
  readonly title: string;
  readonly channel: string;
  readonly thread: string | undefined;
  readonly bytes: number;
  readonly content: Buffer;
}

type Body = Readonly<Record<string, string>>;

export function fakeFiles(origin: () => string) {
  const files: FakeFile[] = [];
  const uploads = new Map<string, { name: string; alternative: string; length: number; content: Buffer }>();
  let down = false;
  const refused = (error: string) => ({ ok: false, error });

  return {
    files,
    /** Refuses the bytes of every file until it is turned off again. */
    setFilesDown: (is: boolean) => {
      down = is;
    },
    methods: {
      'files.getUploadURLExternal': ({ filename: name = '', length = '0', alt_txt: alternative = '' }: Body) => {
        // Slack takes no empty file: from memory, no source.
        if (!(Number(length) > 0)) return refused('invalid_arguments');
        if (alternative.length > 1_000) return refused('alt_txt_too_large');
        const id = `F${uploads.size + 1}`;
        uploads.set(id, { name, alternative, length: Number(length), content: Buffer.alloc(0) });
        return { ok: true, upload_url: `${origin()}/upload/${id}`, file_id: id };
      },
      'files.completeUploadExternal': ({ files: listed = '[]', channel_id: channel = '', thread_ts: thread }: Body) => {
        for (const { id, title } of JSON.parse(listed) as { id: string; title: string }[]) {
          const upload = uploads.get(id);
          if (upload === undefined || upload.content.byteLength !== upload.length) return refused('file_not_found');
          const { name, alternative, content } = upload;
          files.push({ name, alternative, content, bytes: content.byteLength, title, channel, thread });
        }
        return { ok: true };
      },
    },
    takeBytes: async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
      const chunks: Buffer[] = [];
      for await (const chunk of request) chunks.push(chunk as Buffer);
      const upload = uploads.get((request.url ?? '').replace('/upload/', ''));
      if (upload !== undefined && !down) upload.content = Buffer.concat(chunks);
      response.writeHead(upload === undefined || down ? 500 : 200).end();
    },
  };
}
