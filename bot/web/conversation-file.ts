// The conversation on disk: one line of JSON a post, behind a first line that names it. A torn last line, from a power
// cut, is left out. A disk that cannot be written silences nothing: the posts stay in memory.

import { randomBytes } from 'node:crypto';
import { closeSync, fsyncSync, openSync, readFileSync, renameSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import type { Log } from '../../core/ports.ts';
import type { Answer } from '../talk/answer.ts';
import { answerFrom } from '../talk/answer.ts';

export interface Post {
  readonly n: number;
  /** The line that it answers; null for what rang by itself. */
  readonly said: string | null;
  readonly delivery: string | null;
  readonly answer: Answer;
}

export interface ConversationFile {
  readonly id: string;
  readonly posts: readonly Post[];
  /** `durably`: on the disk when it returns. */
  readonly add: (post: Post, durably: boolean) => void;
  readonly close: () => void;
}

const Head = z.object({ conversation: z.string().min(1) });
const Stored = z.object({
  n: z.number().int().positive(),
  said: z.string().nullable(),
  delivery: z.string().nullable(),
  answer: z.unknown(),
});

export function openConversationFile(folder: string, kept: number, log: Log): ConversationFile {
  const path = join(folder, 'page.jsonl');
  const { id, posts } = read(path);
  const recent = posts.slice(-kept);
  // Written anew, shortened to what is kept, and only then put in the old one's place.
  writeFileSync(`${path}.new`, [{ conversation: id }, ...recent].map((line) => `${JSON.stringify(line)}\n`).join(''));
  renameSync(`${path}.new`, path);
  const handle = openSync(path, 'a');
  return {
    id,
    posts: recent,
    add: (post, durably) => {
      try {
        writeSync(handle, `${JSON.stringify(post)}\n`);
        if (durably) fsyncSync(handle);
      } catch (error) {
        log.error('page-file-not-written', { n: post.n, error: String(error) });
      }
    },
    close: () => closeSync(handle),
  };
}

function read(path: string): { readonly id: string; readonly posts: readonly Post[] } {
  const [head, ...lines] = contentOf(path).split('\n').map(parsed);
  const id = Head.safeParse(head).data?.conversation ?? randomBytes(4).toString('hex');
  return { id, posts: lines.flatMap(postFrom) };
}

function contentOf(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}

function postFrom(line: unknown): readonly Post[] {
  const { data } = Stored.safeParse(line);
  if (data === undefined) return [];
  try {
    return [{ ...data, answer: answerFrom(JSON.stringify(data.answer)) }];
  } catch {
    return [];
  }
}
