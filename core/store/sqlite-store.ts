// The record in one SQLite file: statements, and immediate transactions in which everything lands or nothing. Nobody
// counts the rows for SQLite: left to guess, it would read through a whole crew's record, so `indexed by` and the order
// of a `cross join` say which way to go.

import type { Database } from 'better-sqlite3';
import { components } from '../components.ts';
import { typesFor } from '../event-readers.ts';
import { type EventType, notActs } from '../history.ts';
import type { CrewId, StreamId } from '../ids.ts';
import type { Change, Head, Store } from '../ports.ts';
import { firstHash } from '../seal-sums.ts';
import { epochMs } from '../units.ts';
import { numberedKey } from '../wanted-reminder.ts';
import { openDatabase } from './database.ts';
import { type EventRow, eventsIn, rowOf, wholeEventsIn } from './event-rows.ts';
import { reminderRows } from './reminder-rows.ts';
import { sqliteArchive } from './sqlite-archive.ts';

const listed = (types: readonly string[]) => `(${types.map((type) => `'${type}'`).join(', ')})`;
const typesOfNoAct = listed(notActs);
const typesOfPour = listed(['PartsWeighed', 'PartWeighed', 'PartAdded', 'CanNamed'] satisfies EventType[]);
const typesOfOpening = listed(typesFor('opening'));

/** `:memory:` for a record that ends with the process. */
export function openSqliteStore(file: string): Store {
  const database = openDatabase(file);
  // Leases of a process that is gone; that its posts may have arrived still stands in the rows.
  database.exec('update reminder set lease_until = 0 where lease_until > 0');
  const reminders = reminderRows(database);
  const read = readingStatements(database);
  const write = writingTransaction(database, read, reminders);
  return {
    head: async (crew, seenAt) => headOf(read, crew, seenAt),
    eventsAfter: async (crew, seq) => wholeEventsIn(read.rowsAfter.all(crew, seq)),
    eventsUnder: async (crew, stream) => wholeEventsIn(read.rowsUnder.all(crew, stream)),
    readAfter: async (crew, seq) => eventsIn(read.rowsAfter.all(crew, seq)),
    readUnder: async (crew, stream) => eventsIn(read.rowsUnder.all(crew, stream)),
    liveStreams: async (crew) => read.live.all(crew).map((stream) => stream as StreamId),
    streamsBetween: async (crew, from, to) => read.between.all(crew, from, to).map((stream) => stream as StreamId),
    streamsLastTouched: async (crew, by) =>
      [...new Set(read.touched.all(crew, by))].map((stream) => stream as StreamId),
    newest: async (crew) => {
      const actedAt = read.actedAt.get(crew);
      return {
        number: read.number.get(crew) ?? 0,
        actedAt: actedAt === null || actedAt === undefined ? undefined : epochMs(actedAt),
        pouredFromCans: components.filter((each) => read.pouredFrom.get(crew, `%"can":%,"component":"${each}"%`) === 1),
      };
    },
    answersTo: async (crew, requests) => new Map(read.answers.all(crew, JSON.stringify(requests))),
    lastAnswerTo: async (crew, person) => read.lastAnswer.get(crew, person),
    commit: async (change) => write.immediate(change),
    nextDueAt: async (crew) => reminders.nextDueAt(crew),
    claim: async (now, leaseUntil, crew) => reminders.claim(now, leaseUntil, crew),
    reject: async (claimed, retryAt) => reminders.reject(claimed, retryAt),
    archive: sqliteArchive(database),
    close: () => {
      database.close();
    },
  };
}

/** That it is still where it was seen takes SQLite a third of the time that seeking the crew's last row does. */
function headOf(read: ReturnType<typeof readingStatements>, crew: CrewId, seenAt = 0): Head {
  const hash = read.hashIfLast.get(crew, seenAt, crew, seenAt);
  return hash === undefined ? (read.head.get(crew) ?? { seq: 0, hash: firstHash }) : { seq: seenAt, hash };
}

function readingStatements(database: Database) {
  const head = database.prepare<[string], Head>('select seq, hash from event where crew = ? order by seq desc limit 1');
  const hashIfLast = database
    .prepare<[string, number, string, number], string>(
      `select hash from event where crew = ? and seq = ?
        and not exists (select 1 from event where crew = ? and seq > ?)`,
    )
    .pluck();
  const rowsAfter = database.prepare<[string, number], EventRow>(
    'select * from event where crew = ? and seq > ? order by seq',
  );
  const rowsUnder = database.prepare<[string, string], EventRow>(
    'select event.* from filed cross join event using (crew, seq) where filed.crew = ? and filed.stream = ? order by filed.seq',
  );
  const live = database.prepare<[string], string>('select stream from live where crew = ? order by stream').pluck();
  const between = database
    .prepare<[string, number, number], string>(
      'select distinct stream from event where crew = ? and happened_at >= ? and happened_at < ? order by stream',
    )
    .pluck();
  const touched = database
    .prepare<[string, string], string>(
      `select stream from event indexed by event_person
        where crew = ? and by_person = ? and type not in ${typesOfNoAct} order by seq desc limit 40`,
    )
    .pluck();
  const number = database
    .prepare<[string], number | null>(
      `select max(cast(substr(stream, instr(stream, '/') + 1) as integer)) from event indexed by event_type
        where crew = ? and type in ${typesOfOpening}`,
    )
    .pluck();
  const actedAt = database
    .prepare<[string], number | null>(
      `select recorded_at from event where crew = ? and type not in ${typesOfNoAct} order by seq desc limit 1`,
    )
    .pluck();
  // Of a crew that keeps track of its cans one of the first rows says so.
  const pouredFrom = database
    .prepare<[string, string], number>(
      `select 1 from event indexed by event_type where crew = ? and type in ${typesOfPour} and body like ? limit 1`,
    )
    .pluck();
  const answers = database
    .prepare<[string, string], [string, string]>(
      'select request, text from answer where crew = ? and request in (select value from json_each(?))',
    )
    .raw();
  const lastAnswer = database
    .prepare<[string, string], string>(
      'select text from last_answer cross join answer using (crew, request) where last_answer.crew = ? and person = ?',
    )
    .pluck();
  const asked = { answers, lastAnswer };
  return { head, hashIfLast, rowsAfter, rowsUnder, live, between, touched, number, actedAt, pouredFrom, ...asked };
}

/** Everything of a change lands, or nothing. */
function writingTransaction(
  database: Database,
  read: ReturnType<typeof readingStatements>,
  reminders: ReturnType<typeof reminderRows>,
) {
  const addEvent = database.prepare<[EventRow]>(`
    insert into event (crew, seq, stream, version, also_under, type, happened_at, recorded_at, by_person, request, said_with,
      body, previous_hash, hash, edition, shape, seal)
    values (:crew, :seq, :stream, :version, :also_under, :type, :happened_at, :recorded_at, :by_person, :request, :said_with,
      :body, :previous_hash, :hash, :edition, :shape, :seal)`);
  const fileEvent = database.prepare<[string, string, number]>('insert into filed values (?, ?, ?)');
  const addLive = database.prepare<[string, string]>('insert or ignore into live values (?, ?)');
  const removeLive = database.prepare<[string, string]>('delete from live where crew = ? and stream = ?');
  const addAnswer = database.prepare<[string, string, string]>('insert into answer values (?, ?, ?)');
  const isLast = database.prepare<[string, string, string]>('insert or replace into last_answer values (?, ?, ?)');

  return database.transaction((change: Change): 'committed' | 'conflict' => {
    const { crew, answers } = change;
    if (headOf(read, crew, change.after.seq).hash !== change.after.hash) return 'conflict';
    for (const envelope of change.envelopes) {
      addEvent.run(rowOf(envelope));
      for (const stream of new Set([envelope.stream, ...envelope.alsoUnder])) fileEvent.run(crew, stream, envelope.seq);
      // What rang does not ring again, be there a new plan for its stream or none.
      if (envelope.body.type === 'Rang') reminders.rang(crew, numberedKey(envelope.body.key, envelope.body.ring));
    }
    for (const [stream, isLive] of change.live) (isLive ? addLive : removeLive).run(crew, stream);
    for (const [stream, planned] of change.plan) reminders.reconcile(crew, stream, planned, change.now);
    for (const { request, by, text } of answers) {
      addAnswer.run(crew, request, text);
      if (by !== undefined) isLast.run(crew, by, request);
    }
    return 'committed';
  });
}
