// Events become the record's next envelopes: each is held against its schema, numbered in the crew's record and in its own
// stream, and sealed with the hash of the one before. What would not read again is never written: nothing is ever deleted
// from a record, and one event that does not read stands in the way of all that rests on it.

import { shapeOf } from './event-shapes.ts';
import { type Envelope, EventBody, type NewEvent } from './history.ts';
import type { CrewId, PersonName, StreamId } from './ids.ts';
import type { Head } from './ports.ts';
import { editionOfToday } from './rule-editions.ts';
import { sealOfToday } from './seal-names.ts';
import { hashOf } from './seal-sums.ts';
import { oursAlone, Unforeseen } from './unforeseen.ts';
import type { EpochMs } from './units.ts';

export interface Sealing {
  readonly crew: CrewId;
  /** They come after it. */
  readonly head: Head;
  /** Of the last event of a stream; 0 before its first. */
  readonly versionOf: (stream: StreamId) => number;
  readonly by: PersonName;
  readonly request: string;
  readonly now: EpochMs;
}

/** Throws `Unforeseen` for an event that would not read again. */
export function seal(events: readonly NewEvent[], sealing: Sealing): readonly Envelope[] {
  const { crew, head, versionOf, by, request, now } = sealing;
  const versions = new Map<StreamId, number>();
  let previousHash = head.hash;
  return events.map((event, i) => {
    const [stream, ...alsoUnder] = event.streams;
    const version = (versions.get(stream) ?? versionOf(stream)) + 1;
    versions.set(stream, version);
    const { happenedAt, saidWith = { despite: [] } } = event;
    const body = thatReads(event);
    const unsealed = {
      crew,
      seq: head.seq + 1 + i,
      stream,
      version,
      alsoUnder,
      happenedAt,
      recordedAt: now,
      by: event.by ?? by,
      request,
      saidWith,
      body,
      edition: editionOfToday,
      shape: shapeOf(body),
      seal: sealOfToday,
      previousHash,
    };
    const envelope = { ...unsealed, hash: hashOf(unsealed) };
    previousHash = envelope.hash;
    return envelope;
  });
}

/** As it will be read: a figure that is none, a setting that does not exist or a time between two milliseconds is refused. */
function thatReads({ body, happenedAt, streams }: NewEvent): EventBody {
  const read = oursAlone(`${body.type} of ${streams[0]} would not read again`, () => EventBody.parse(body));
  if (!Number.isSafeInteger(happenedAt))
    throw new Unforeseen(`${body.type} of ${streams[0]} has no time: ${happenedAt}`);
  return read;
}

export function streamsTouched(by: readonly Pick<Envelope, 'stream' | 'alsoUnder'>[]): ReadonlySet<StreamId> {
  return new Set(by.flatMap(({ stream, alsoUnder }) => [stream, ...alsoUnder]));
}
