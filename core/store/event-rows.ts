// An envelope as a row, and back. Bodies are parsed at this edge: a row that does not fit says which and why, and the others
// are read all the same.

import { z } from 'zod';
import { inShapeOfToday } from '../event-shapes.ts';
import { type Envelope, EventBody } from '../history.ts';
import type { CrewId, StreamId } from '../ids.ts';
import { known } from '../known.ts';
import { liftNames } from '../lift-names.ts';
import type { EventsRead } from '../ports.ts';
import type { RecordRow } from '../records/archive.ts';
import { editions } from '../rule-editions.ts';
import { sealNames } from '../seal-names.ts';
import { epochMs } from '../units.ts';
import { RestsOnUnread, type UnreadEvent } from '../unread-event.ts';

/** As it lies in the table: the record's row with its crew. */
export type EventRow = RecordRow & { readonly crew: CrewId };

export function rowOf(envelope: Envelope): EventRow {
  return {
    crew: envelope.crew,
    seq: envelope.seq,
    stream: envelope.stream,
    version: envelope.version,
    also_under: JSON.stringify(envelope.alsoUnder),
    type: envelope.body.type,
    happened_at: envelope.happenedAt,
    recorded_at: envelope.recordedAt,
    by_person: envelope.by,
    request: envelope.request,
    said_with: JSON.stringify(envelope.saidWith),
    body: JSON.stringify(envelope.body),
    edition: envelope.edition,
    shape: envelope.shape,
    seal: envelope.seal,
    previous_hash: envelope.previousHash,
    hash: envelope.hash,
  };
}

const SaidWithRow = z.object({
  despite: z.array(z.string()),
  permitted: z.string().optional(),
  lifts: z.array(z.object({ of: z.enum(liftNames), why: z.string() })).optional(),
});
const EditionRow = z.literal(editions);
const SealRow = z.enum(sealNames);
const Streams = z.array(
  z.templateLiteral([z.enum(['batch', 'part', 'can', 'place', 'session', 'crew', 'instrument']), '/', z.string()]),
);

/** As far as they read. */
export function eventsIn(rows: readonly EventRow[]): EventsRead {
  const envelopes: Envelope[] = [];
  const unread: UnreadEvent[] = [];
  for (const row of rows) {
    try {
      envelopes.push(envelopeOf(row));
    } catch (error) {
      unread.push(unreadOf(row, error));
    }
  }
  return { envelopes, unread };
}

/** All of them. Throws `RestsOnUnread`. */
export function wholeEventsIn(rows: readonly EventRow[]): readonly Envelope[] {
  const { envelopes, unread } = eventsIn(rows);
  if (unread.length > 0) throw new RestsOnUnread(unread);
  return envelopes;
}

function unreadOf({ seq, stream, version, type, recorded_at }: EventRow, error: unknown): UnreadEvent {
  const why = error instanceof z.ZodError ? z.prettifyError(error) : String(error);
  return { seq, stream: stream as StreamId, version, type, recordedAt: epochMs(recorded_at), why };
}

function envelopeOf(row: EventRow): Envelope {
  const body = EventBody.parse(inShapeOfToday(JSON.parse(row.body), row.shape));
  const { despite, permitted, lifts } = SaidWithRow.parse(JSON.parse(row.said_with));
  return {
    crew: row.crew,
    seq: row.seq,
    stream: row.stream as StreamId,
    version: row.version,
    alsoUnder: Streams.parse(JSON.parse(row.also_under)),
    happenedAt: epochMs(row.happened_at),
    recordedAt: epochMs(row.recorded_at),
    by: row.by_person,
    request: row.request,
    saidWith: { despite, ...known({ permitted, lifts }) },
    body,
    edition: EditionRow.parse(row.edition),
    shape: row.shape,
    seal: SealRow.parse(row.seal),
    previousHash: row.previous_hash,
    hash: row.hash,
  };
}
