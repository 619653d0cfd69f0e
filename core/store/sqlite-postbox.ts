// What a chat front end remembers, in tables beside the record and in the same file. It can be lost without losing the
// record: deliveries would then be answered by their stored answers, and batches would get new messages.

import { z } from 'zod';
import type { CrewId, StreamId } from '../ids.ts';
import type { KeptPost, Postbox } from '../ports.ts';
import { openDatabase } from './database.ts';

const Row = z.object({
  team: z.string(),
  channel: z.string(),
  ts: z.string(),
  crew: z.string(),
  subject: z.string(),
  role: z.enum(['standing', 'said']),
  thread: z.string().nullable(),
  version: z.number(),
  shown: z.string(),
  open: z.number(),
});

/** Platforms deliver again for a day at most; twice that is kept. */
const keptMs = 2 * 24 * 3_600_000;

/** `:memory:` for what ends with the process. */
export function openSqlitePostbox(file: string): Postbox {
  const database = openDatabase(file);
  const takeIn = database.prepare<[{ id: string; at: number; content: string }]>(
    'insert into inbox (id, at, content) values (:id, :at, :content) on conflict do nothing',
  );
  const forget = database.prepare<[number]>('delete from inbox where finished = 1 and at < ?');
  const finish = database.prepare<[string]>("update inbox set finished = 1, content = '' where id = ?");
  const unfinished = database.prepare<[], { id: string; content: string }>(
    'select id, content from inbox where finished = 0 order by at, id',
  );
  const put = database.prepare(`
    insert into post values (:team, :channel, :ts, :crew, :subject, :role, :thread, :version, :shown, :open)
    on conflict (team, channel, ts) do update set version = excluded.version, shown = excluded.shown,
      open = excluded.open`);
  const standing = database.prepare<[string, string]>(
    "select * from post where crew = ? and subject = ? and role = 'standing' order by ts desc limit 1",
  );
  const at = database.prepare<[string, string, string]>('select * from post where team = ? and channel = ? and ts = ?');
  const open = database.prepare<[string]>(
    'select * from post indexed by post_open where crew = ? and open = 1 order by ts',
  );
  const read = database.prepare<[string], string>('select value from note where key = ?').pluck();
  const erase = database.prepare<[string]>('delete from note where key = ?');
  const write = database.prepare<[string, string]>(
    'insert into note values (?, ?) on conflict (key) do update set value = excluded.value',
  );

  return {
    takeIn: (delivery) => {
      forget.run(delivery.at - keptMs);
      return takeIn.run(delivery).changes === 1;
    },
    finish: (id) => {
      finish.run(id);
    },
    unfinished: () => unfinished.all(),
    keep: (post) => {
      // What a closed one showed is never looked at again: it is by far the most of the row.
      const shown = post.open ? post.shown : '';
      put.run({ ...post, shown, thread: post.thread ?? null, open: post.open ? 1 : 0 });
    },
    standingOf: (crew: CrewId, subject: StreamId) => postOf(standing.get(crew, subject)),
    postAt: (team, channel, ts) => postOf(at.get(team, channel, ts)),
    openPosts: (crew) => open.all(crew).flatMap((row) => postOf(row) ?? []),
    note: (key) => read.get(key),
    setNote: (key, value) => {
      if (value === undefined) erase.run(key);
      else write.run(key, value);
    },
    close: () => {
      database.close();
    },
  };
}

function postOf(found: unknown): KeptPost | undefined {
  if (found === undefined) return undefined;
  const { thread, subject, open, ...row } = Row.parse(found);
  return { ...row, subject: subject as StreamId, thread: thread ?? undefined, open: open === 1 };
}
