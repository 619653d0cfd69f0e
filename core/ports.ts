// All that the core asks of the world.

import type { Envelope } from './history.ts';
import type { CrewId, PersonName, StreamId } from './ids.ts';
import type { PlannedReminder, ReminderKind } from './reminders/wish.ts';
import type { Shop } from './shop.ts';
import type { EpochMs } from './units.ts';

export interface Clock {
  readonly now: () => EpochMs;
}

export interface Log {
  readonly info: (event: string, details?: Readonly<Record<string, unknown>>) => void;
  readonly error: (event: string, details?: Readonly<Record<string, unknown>>) => void;
}

/** The end of a crew's record. */
export interface Head {
  readonly seq: number;
  readonly hash: string;
}

/** What lands together or not at all. */
export interface Change {
  readonly crew: CrewId;
  /** Where the writer believed the record to end; if it has moved, nothing is written. */
  readonly after: Head;
  readonly envelopes: readonly Envelope[];
  /** The plan of every stream whose rows may have changed. */
  readonly plan: ReadonlyMap<StreamId, readonly PlannedReminder[]>;
  /** Streams that somebody still waits for, and those that nobody does any more. */
  readonly live: ReadonlyMap<StreamId, boolean>;
  readonly answer: { readonly request: string; readonly text: string } | undefined;
  readonly now: EpochMs;
}

export interface ClaimedReminder {
  readonly crew: CrewId;
  readonly numberedKey: string;
  readonly key: string;
  readonly ring: number;
  readonly kind: ReminderKind;
  readonly stream: StreamId;
  readonly dueAt: EpochMs;
  readonly to: readonly PersonName[];
  /** When the record first asked for this ring at this time. */
  readonly plannedAt: EpochMs;
  /** An earlier try ended without an answer: somebody may have heard it. */
  readonly unsure: boolean;
  /** Tries that were turned away. */
  readonly rejections: number;
}

export interface Store {
  readonly head: (crew: CrewId) => Promise<Head>;
  /** Events after `seq`, in order: what another writer, or an earlier life, has added. */
  readonly eventsAfter: (crew: CrewId, seq: number) => Promise<readonly Envelope[]>;
  /** Events filed under a stream, as its home or as one that it concerns, in order. */
  readonly eventsUnder: (crew: CrewId, stream: StreamId) => Promise<readonly Envelope[]>;
  readonly liveStreams: (crew: CrewId) => Promise<readonly StreamId[]>;
  /** Streams with something that happened from `from` on and before `to`. */
  readonly streamsBetween: (crew: CrewId, from: EpochMs, to: EpochMs) => Promise<readonly StreamId[]>;
  /** The streams of a person's last acts, newest first, for undo. */
  readonly streamsLastTouched: (crew: CrewId, by: PersonName) => Promise<readonly StreamId[]>;
  /** The newest number given to a batch or can, and when somebody last did something. */
  readonly newest: (crew: CrewId) => Promise<{ readonly number: number; readonly actedAt: EpochMs | undefined }>;
  readonly answerTo: (crew: CrewId, request: string) => Promise<string | undefined>;
  readonly commit: (change: Change) => Promise<'committed' | 'conflict'>;
  readonly nextDueAt: () => Promise<EpochMs | undefined>;
  /** Takes the earliest due reminder for as long as the lease, in one statement. */
  readonly claim: (now: EpochMs, leaseUntil: EpochMs) => Promise<ClaimedReminder | undefined>;
  /** Turned away for sure: it may be tried again at `retryAt`. */
  readonly reject: (claimed: ClaimedReminder, retryAt: EpochMs) => Promise<void>;
  readonly close: () => void;
}

/** Why a reminder rings after its time. */
export type LateWhy = 'was-not-running' | 'was-told-late' | 'post-failed' | 'store-failed' | 'unknown';

export interface RingingReminder {
  readonly reminder: Pick<
    ClaimedReminder,
    'crew' | 'numberedKey' | 'key' | 'ring' | 'kind' | 'stream' | 'dueAt' | 'to'
  >;
  readonly now: EpochMs;
  readonly late: LateWhy | undefined;
  readonly possibleRepeat: boolean;
  /** The store cannot write: it rings from memory. */
  readonly unrecorded: boolean;
  readonly shop: Shop;
}

export interface Messenger {
  /** `unknown`: no answer in time; it may have arrived. */
  readonly post: (ringing: RingingReminder) => Promise<'posted' | 'rejected' | 'unknown'>;
  /** Whether a message with this key has arrived before; `unknown` where the platform cannot be asked. */
  readonly wasPosted: (crew: CrewId, numberedKey: string) => Promise<'yes' | 'no' | 'unknown'>;
}
