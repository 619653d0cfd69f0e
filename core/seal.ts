// Events become the record's next envelopes: numbered in the crew's record and in their own stream, and sealed with the
// hash of the one before.

import { shapeOf } from './event-shapes.ts';
import type { Envelope, NewEvent } from './history.ts';
import type { CrewId, PersonName, StreamId } from './ids.ts';
import type { Head } from './ports.ts';
import { editionOfToday } from './rule-editions.ts';
import { hashOf, sealOfToday } from './seal-sums.ts';
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

export function seal(events: readonly NewEvent[], sealing: Sealing): readonly Envelope[] {
  const { crew, head, versionOf, by, request, now } = sealing;
  const versions = new Map<StreamId, number>();
  let previousHash = head.hash;
  return events.map((event, i) => {
    const [stream, ...alsoUnder] = event.streams;
    const version = (versions.get(stream) ?? versionOf(stream)) + 1;
    versions.set(stream, version);
    const { happenedAt, saidWith, body } = event;
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

export function streamsTouched(envelopes: readonly Envelope[]): ReadonlySet<StreamId> {
  return new Set(envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]));
}
