// The record's rows as they lie, the index of names, and a copy while it is in use.

import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { nameIn, nounOf, partStream, type StreamId } from '../ids.ts';
import type { Archive, BookedUnder, RecordRow } from '../records/archive.ts';

/** Which event carries the name, and where; each has a partial index on it (see the migrations): `reindex` makes them again. */
const booking = {
  serial: ['PartReceived', '$.serial'],
  job: ['PartReceived', '$.job'],
  customer: ['PartReceived', '$.customer'],
  lot: ['CanOpened', '$.lot'],
} as const satisfies Record<BookedUnder, readonly [string, string]>;
/** As it was put right since. */
const lotCorrected = ['Amended', '$.to.fact.lot'] as const;

export function sqliteArchive(database: Database): Archive {
  const rowsAfter = database.prepare<[string, number, number], RecordRow>(
    'select * from event where crew = ? and seq > ? order by seq limit ?',
  );
  const hashAt = database
    .prepare<[string, number], string>('select hash from event where crew = ? and seq = ?')
    .pluck();
  const filedEnd = database.prepare<[string], number | null>('select max(seq) from filed where crew = ?').pluck();
  const filings = database.prepare<[string, number, number], { stream: string; also_under: string }>(
    'select distinct stream, also_under from event where crew = ? and happened_at >= ? and happened_at < ?',
  );
  const booked = ([type, path]: readonly [string, string]) => {
    const name = `lower(json_extract(body, '${path}'))`;
    const found = database
      .prepare<[string, string, string], string>(
        `select stream from event where type = '${type}' and crew = ? and ${name} >= ? and ${name} < ?
         order by seq desc`,
      )
      .pluck();
    return (crew: string, from: string): readonly string[] => found.all(crew, from, `${from}\u{10ffff}`);
  };
  const partsEver = database
    .prepare<[string, string, string], string>(
      'select distinct stream from filed where crew = ? and stream >= ? and stream < ? order by stream',
    )
    .pluck();
  const [asTold, corrected] = [booked(booking.lot), booked(lotCorrected)];
  const bookedBy = {
    ...{ serial: booked(booking.serial), job: booked(booking.job), customer: booked(booking.customer) },
    // A delivery that was put right lies under the crew: its cans are put right with it.
    lot: (crew: string, from: string) =>
      [...asTold(crew, from), ...corrected(crew, from)].filter((stream) => nounOf(streamNamed(stream)) === 'can'),
  };

  return {
    rowsAfter: (crew, seq, most) => rowsAfter.all(crew, seq, most),
    hashAt: (crew, seq) => hashAt.get(crew, seq),
    filedEnd: (crew) => filedEnd.get(crew) ?? 0,
    filedBetween: (crew, from, to) => {
      const streams = filings.all(crew, from, to).flatMap(({ stream, also_under }) => [stream, ...listed(also_under)]);
      return [...new Set(streams)].sort().map(streamNamed);
    },
    bookedUnder: (crew, key, value) => {
      return [...new Set(bookedBy[key](crew, asciiLower(value)))].map(streamNamed);
    },
    partsEver: (crew) => {
      const from = partStream('');
      return partsEver.all(crew, from, `${from}\u{10ffff}`).map((stream) => nameIn(streamNamed(stream)));
    },
    backup: async (file) => {
      await database.backup(file);
    },
  };
}

const streamNamed = (stream: string): StreamId => stream as StreamId;

/** A list that does not read any more names nothing: its event is missing from its home stream as well, and is told there. */
function listed(streams: string): readonly string[] {
  if (streams === '[]') return [];
  try {
    return z.array(z.string()).parse(JSON.parse(streams));
  } catch {
    return [];
  }
}

/** As SQLite's own `lower` does it: letters beyond ASCII stay as they are. */
function asciiLower(text: string): string {
  return text.replace(/[A-Z]/g, (letter) => letter.toLowerCase());
}
