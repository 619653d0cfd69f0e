// Events that lie in the record and do not read any more: a bit that flipped, a hand that wrote in the file. Nothing is
// guessed of what stood in them.

import { type Envelope, type EventType, isActType } from './history.ts';
import { nounOf, type StreamId } from './ids.ts';
import type { EpochMs } from './units.ts';

/** Of a row that does not read, what stands beside its body. */
export interface UnreadEvent {
  readonly seq: number;
  /** Its home. */
  readonly stream: StreamId;
  readonly version: number;
  readonly type: string;
  readonly recordedAt: EpochMs;
  readonly why: string;
}

/** An answer would rest on events that do not read. Nothing was recorded. */
export class RestsOnUnread extends Error {
  readonly events: readonly UnreadEvent[];

  constructor(events: readonly UnreadEvent[]) {
    super(events.map(unreadSaid).join('; '));
    this.events = events;
  }
}

export function unreadSaid({ seq, stream, version, type, why }: UnreadEvent): string {
  return `event ${seq} (${stream}, version ${version}) of type ${type} does not parse: ${why}`;
}

/** What the bot records of its own is left out alone: without it a bell rings once more rather than not. */
export function isUnreadAct({ type }: UnreadEvent): boolean {
  return isActType(type as EventType);
}

/** Of a stream's events, those that its fold may rest on. What was read of a place before the last break is not known. */
export function readableOf(
  stream: StreamId,
  envelopes: readonly Envelope[],
  unread: readonly UnreadEvent[],
): readonly Envelope[] {
  const broken = unread.findLast(isUnreadAct);
  return broken === undefined || nounOf(stream) !== 'place'
    ? envelopes
    : envelopes.filter(({ seq }) => seq > broken.seq);
}
