// Events sealed by hand and the changes that carry them, so that a store is tested without the code that decides.

import { shapeOf } from '../../../core/event-shapes.ts';
import type { Envelope, EventBody, notActs } from '../../../core/history.ts';
import type { StreamId } from '../../../core/ids.ts';
import type { Change, Head } from '../../../core/ports.ts';
import { editionOfToday } from '../../../core/rule-editions.ts';
import { sealOfToday } from '../../../core/seal-names.ts';
import { hashOf } from '../../../core/seal-sums.ts';
import { celsius, type EpochMs, epochMs } from '../../../core/units.ts';
import { numberedKey, type PlannedReminder } from '../../../core/wanted-reminder.ts';

/** 2 March 2026 in UTC, `at('09:40')` or `at('09:40:30')`. */
export function at(time: string): EpochMs {
  return epochMs(Date.parse(`2026-03-02T${time.length === 5 ? `${time}:00` : time}Z`));
}

export interface Sealing {
  readonly streams: readonly [StreamId, ...StreamId[]];
  readonly version?: number;
  readonly body?: EventBody;
  readonly happenedAt?: EpochMs;
  readonly recordedAt?: EpochMs;
  readonly by?: string;
  readonly request?: string;
  readonly crew?: string;
}

export const airRead: EventBody = { type: 'AirRead', celsius: celsius(24) };

/** One of each that the bot records of its own. */
export const ofTheBot: Readonly<Record<(typeof notActs)[number], EventBody>> = {
  Rang: {
    type: 'Rang',
    key: 'batch/1/stir-done',
    ring: 1,
    dueAt: at('09:42'),
    to: ['kari'],
    possibleRepeat: false,
  },
  RingAnswered: { type: 'RingAnswered', key: 'batch/1/stir-done' },
  RingSnoozed: { type: 'RingSnoozed', key: 'batch/1/stir-done', until: at('09:52') },
  HashGiven: { type: 'HashGiven', seq: 1, hash: '0'.repeat(64), on: 'digest' },
};

/** One after another behind `head`. */
export function sealed(head: Head, events: readonly Sealing[]): readonly Envelope[] {
  let previousHash = head.hash;
  return events.map((event, i) => {
    const [stream, ...alsoUnder] = event.streams;
    const recordedAt = event.recordedAt ?? at('08:00');
    const unsealed = {
      ...{ crew: event.crew ?? 'crew', seq: head.seq + 1 + i, stream, version: event.version ?? i + 1, alsoUnder },
      ...{ happenedAt: event.happenedAt ?? recordedAt, recordedAt, by: event.by ?? 'kari' },
      ...{ request: event.request ?? `r${head.seq + 1 + i}`, saidWith: { despite: [] }, body: event.body ?? airRead },
      edition: editionOfToday,
      shape: shapeOf(event.body ?? airRead),
      seal: sealOfToday,
      previousHash,
    };
    const envelope = { ...unsealed, hash: hashOf(unsealed) };
    previousHash = envelope.hash;
    return envelope;
  });
}

export function changeOf(after: Head, content: Partial<Omit<Change, 'after'>> = {}): Change {
  return {
    ...{ crew: 'crew', after, envelopes: [], plan: new Map(), live: new Map(), answers: [], now: at('08:00') },
    ...content,
  };
}

export function bell(key: string, dueAt: EpochMs, to = 'kari', ring = 1): PlannedReminder {
  const stream: StreamId = 'batch/1';
  return {
    ...{ kind: 'stir-done', stream, key, dueAt, to: [to], critical: false, ring },
    numberedKey: numberedKey(key, ring),
  };
}

export function planOf(...reminders: readonly PlannedReminder[]): Change['plan'] {
  return new Map([['batch/1', reminders]]);
}
