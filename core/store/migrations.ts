// The tables, in numbered steps that are only ever added to. Events are insert-only by trigger; the reminder, live and
// answer rows can all be made again or done without.

import type { Database } from 'better-sqlite3';
import { upcasts } from '../event-shapes.ts';
import { editions } from '../rule-editions.ts';
import { sealNames } from '../seal-names.ts';

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
  // What a chat platform delivered and what was posted there: kept by the front end, no part of the record.
  `
  create table inbox (
    id text primary key,
    at integer not null,
    content text not null,
    finished integer not null default 0
  ) strict, without rowid;
  create index inbox_age on inbox (finished, at);

  create table post (
    team text not null,
    channel text not null,
    ts text not null,
    crew text not null,
    subject text not null,
    role text not null,
    thread text,
    version integer not null,
    shown text not null,
    open integer not null,
    primary key (team, channel, ts)
  ) strict, without rowid;
  create index post_subject on post (crew, subject, role);

  create table note (key text primary key, value text not null) strict, without rowid;
  `,
  // Names that parts and cans were booked in under, for finding them a year later. `reindex` makes them anew.
  `
  create index part_serial on event (crew, lower(json_extract(body, '$.serial')), seq) where type = 'PartReceived';
  create index part_job on event (crew, lower(json_extract(body, '$.job')), seq) where type = 'PartReceived';
  create index part_customer on event (crew, lower(json_extract(body, '$.customer')), seq) where type = 'PartReceived';
  create index can_lot on event (crew, lower(json_extract(body, '$.lot')), seq) where type = 'CanOpened';
  `,
  // `insert or replace` deletes without asking the delete's trigger; and the record has no gaps.
  `
  create trigger event_follows before insert on event
  when new.seq <> 1 + coalesce((select max(seq) from event where crew = new.crew), 0)
    or exists (select 1 from event where crew = new.crew and stream = new.stream and version = new.version)
  begin select raise(abort, 'an event follows the last one'); end;
  `,
  // Messages pile up and few of them may still change: those are found by themselves, and the others lose their words.
  `
  update post set shown = '' where open = 0;
  create index post_open on post (crew) where open = 1;
  `,
  // By which rules an event was judged, in which shape its body was written, by which sum its hash was made. What is older
  // than these columns has the first of each.
  `
  alter table event add column edition integer not null default 1;
  alter table event add column shape integer not null default 1;
  alter table event add column seal text not null default 'sha256/1';
  `,
  // How many ways of writing the newest program knew that has opened this.
  `
  create table known (ways integer not null) strict;
  insert into known values (0);
  `,
  // Which answer each person was given last: a bare answer answers it, and `why` asks about it.
  `
  create table last_answer (
    crew text not null,
    person text not null,
    request text not null,
    primary key (crew, person)
  ) strict, without rowid;
  `,
  // A lot that was corrected since is found under the right one too.
  `
  create index can_lot_corrected on event (crew, lower(json_extract(body, '$.to.fact.lot')), seq) where type = 'Amended';
  `,
];

export function migrate(database: Database): void {
  const done = Number(database.pragma('user_version', { simple: true }));
  if (done > steps.length) throw newer(`tables of version ${done}; this one knows up to ${steps.length}`);
  const apply = database.transaction((sql: string, version: number) => {
    database.exec(sql);
    database.pragma(`user_version = ${version}`);
  });
  steps.forEach((sql, i) => {
    if (i >= done) apply.immediate(sql, i + 1);
  });
  const ways = database.prepare<[], number>('select ways from known').pluck().get() ?? 0;
  if (ways > waysOfToday) throw newer(`${ways} ways of writing; this one knows ${waysOfToday}`);
  if (ways < waysOfToday) database.prepare('update known set ways = ?').run(waysOfToday);
}

/** What may be written otherwise in the same tables: by which rules it is judged, how it is sealed, in which shape. It only grows. */
const waysOfToday = editions.length + sealNames.length + Object.values(upcasts).flat().length;

function newer(what: string): Error {
  const todo = 'start that one, or this one on a copy from before. Nothing was changed.';
  return new Error(`a newer Batchbell has written here (${what}): ${todo}`);
}
