// The tables, in numbered steps that are only ever added to. Events are insert-only by trigger; the reminder, live and
// answer rows can all be made again or done without.

import type { Database } from 'better-sqlite3';

const steps: readonly string[] = [
  `
  create table event (
    crew text not null,
    seq integer not null,
    stream text not null,
    version integer not null,
    also_under text not null,
    type text not null,
    happened_at integer not null,
    recorded_at integer not null,
    by_person text not null,
    request text not null,
    said_with text not null,
    body text not null,
    previous_hash text not null,
    hash text not null,
    primary key (crew, seq)
  ) strict, without rowid;
  create unique index event_version on event (crew, stream, version);
  create index event_time on event (crew, happened_at);
  create index event_type on event (crew, type, seq);
  create index event_person on event (crew, by_person, seq);

  create table filed (
    crew text not null,
    stream text not null,
    seq integer not null,
    primary key (crew, stream, seq)
  ) strict, without rowid;

  create trigger event_stays before update on event begin select raise(abort, 'an event is never changed'); end;
  create trigger event_kept before delete on event begin select raise(abort, 'an event is never deleted'); end;
  create trigger filed_stays before update on filed begin select raise(abort, 'an event is never refiled'); end;
  create trigger filed_kept before delete on filed begin select raise(abort, 'an event is never unfiled'); end;

  create table live (
    crew text not null,
    stream text not null,
    primary key (crew, stream)
  ) strict, without rowid;

  create table reminder (
    crew text not null,
    numbered_key text not null,
    key text not null,
    ring integer not null,
    kind text not null,
    stream text not null,
    due_at integer not null,
    people text not null,
    planned_at integer not null,
    lease_until integer not null default 0,
    unsure integer not null default 0,
    rejections integer not null default 0,
    primary key (crew, numbered_key)
  ) strict, without rowid;
  create index reminder_due on reminder (due_at, numbered_key);
  create index reminder_stream on reminder (crew, stream);

  create table answer (
    crew text not null,
    request text not null,
    text text not null,
    primary key (crew, request)
  ) strict, without rowid;
  `,
];

export function migrate(database: Database): void {
  const done = Number(database.pragma('user_version', { simple: true }));
  if (done > steps.length) {
    throw new Error(`the data is of version ${done}, this program knows up to ${steps.length}: use a newer one`);
  }
  const apply = database.transaction((sql: string, version: number) => {
    database.exec(sql);
    database.pragma(`user_version = ${version}`);
  });
  steps.forEach((sql, i) => {
    if (i >= done) apply.immediate(sql, i + 1);
  });
}
