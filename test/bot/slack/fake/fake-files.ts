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
}

type Body = Readonly<Record<string, string>>;

export function fakeFiles(origin: () => string) {
  const files: FakeFile[] = [];
  const uploads = new Map<string, { name: string; alternative: string; length: number; bytes: number }>();
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
        if (alternative.length > 1_000) return refused('alt_txt_too_large');
        const id = `F${uploads.size + 1}`;
        uploads.set(id, { name, alternative, length: Number(length), bytes: 0 });
        return { ok: true, upload_url: `${origin()}/upload/${id}`, file_id: id };
      },
      'files.completeUploadExternal': ({ files: listed = '[]', channel_id: channel = '', thread_ts: thread }: Body) => {
        for (const { id, title } of JSON.parse(listed) as { id: string; title: string }[]) {
          const upload = uploads.get(id);
          if (upload === undefined || upload.bytes !== upload.length) return refused('file_not_found');
          const { name, alternative, bytes } = upload;
          files.push({ name, alternative, bytes, title, channel, thread });
        }
        return { ok: true };
      },
    },
    takeBytes: async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
      let bytes = 0;
      for await (const chunk of request) bytes += (chunk as Buffer).byteLength;
      const upload = uploads.get((request.url ?? '').replace('/upload/', ''));
      if (upload !== undefined && !down) upload.bytes = bytes;
      response.writeHead(upload === undefined || down ? 500 : 200).end();
    },
  };
}
