// All that the core asks of the world.

import type { Component } from './components.ts';
import type { Envelope } from './history.ts';
import type { CrewId, PersonName, StreamId } from './ids.ts';
import type { Archive } from './records/archive.ts';
import type { Shop } from './shop.ts';
import type { EpochMs } from './units.ts';
import type { UnreadEvent } from './unread-event.ts';
import type { PlannedReminder, ReminderKind } from './wanted-reminder.ts';

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

export interface Newest {
  /** Given last of the crew's one series. */
  readonly number: number;
  /** When somebody last did something. */
  readonly actedAt: EpochMs | undefined;
  /** Of which parts it was ever said from which can they came. */
  readonly pouredFromCans: readonly Component[];
}

/** What is given again to the same delivery. */
export interface Answered {
  readonly request: string;
  /** Who asked, where that may be kept. */
  readonly by?: PersonName;
  readonly text: string;
}

/** What lands together or not at all: what one act writes, or several that were decided one after another. */
export interface Change {
  readonly crew: CrewId;
  /** Where the writer believed the record to end; if it has moved, nothing is written. */
  readonly after: Head;
  readonly envelopes: readonly Envelope[];
  /** The plan of every stream whose rows may have changed. */
  readonly plan: ReadonlyMap<StreamId, readonly PlannedReminder[]>;
  /** Streams that somebody still waits for, and those that nobody does any more. */
  readonly live: ReadonlyMap<StreamId, boolean>;
  readonly answers: readonly Answered[];
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

export interface EventsRead {
  readonly envelopes: readonly Envelope[];
  readonly unread: readonly UnreadEvent[];
}

export interface Store {
  /** `seenAt`: where it was seen last, from where it is found sooner. */
  readonly head: (crew: CrewId, seenAt?: number) => Promise<Head>;
  /** Events after `seq`, in order: what another writer, or an earlier life, has added. */
  readonly eventsAfter: (crew: CrewId, seq: number) => Promise<readonly Envelope[]>;
  /**
   * Events filed under a stream, as its home or as one that it concerns, in order. As `eventsAfter` it throws
   * `RestsOnUnread` where one does not read: for papers, which are whole or not at all.
   */
  readonly eventsUnder: (crew: CrewId, stream: StreamId) => Promise<readonly Envelope[]>;
  /** The two above, as far as they read, and what of them does not. */
  readonly readAfter: (crew: CrewId, seq: number) => Promise<EventsRead>;
  readonly readUnder: (crew: CrewId, stream: StreamId) => Promise<EventsRead>;
  readonly liveStreams: (crew: CrewId) => Promise<readonly StreamId[]>;
  /** Streams with something that happened from `from` on and before `to`. */
  readonly streamsBetween: (crew: CrewId, from: EpochMs, to: EpochMs) => Promise<readonly StreamId[]>;
  /** The streams of a person's last acts, newest first, for undo. */
  readonly streamsLastTouched: (crew: CrewId, by: PersonName) => Promise<readonly StreamId[]>;
  /** The newest number given to a batch or can, when somebody last did something, and of which parts cans are kept track. */
  readonly newest: (crew: CrewId) => Promise<Newest>;
  /** By request, as far as they were answered: of many asked at once each takes a tenth of the time of one asked alone. */
  readonly answersTo: (crew: CrewId, requests: readonly string[]) => Promise<ReadonlyMap<string, string>>;
  /** What this person's last request was answered with. */
  readonly lastAnswerTo: (crew: CrewId, person: PersonName) => Promise<string | undefined>;
  readonly commit: (change: Change) => Promise<'committed' | 'conflict'>;
  /** Of one crew where it is named, else of all. */
  readonly nextDueAt: (crew?: CrewId) => Promise<EpochMs | undefined>;
  /**
   * Takes the earliest due reminder (of one crew where it is named) for as long as the lease, in one statement. A lease
   * that reaches further than `leaseUntil` is from before the clock was set back, and holds nothing.
   */
  readonly claim: (now: EpochMs, leaseUntil: EpochMs, crew?: CrewId) => Promise<ClaimedReminder | undefined>;
  /** Turned away for sure: it may be tried again at `retryAt`. */
  readonly reject: (claimed: ClaimedReminder, retryAt: EpochMs) => Promise<void>;
  readonly archive: Archive;
  readonly close: () => void;
}

/** Why a reminder rings after its time. `was-asleep`: the machine slept, or its clock was moved. */
export type LateWhy = 'was-not-running' | 'was-asleep' | 'was-told-late' | 'post-failed' | 'store-failed' | 'unknown';

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

/** `unknown`: no answer in time; it may have arrived. */
export type Told = 'posted' | 'rejected' | 'unknown';

export interface Messenger {
  readonly post: (ringing: RingingReminder) => Promise<Told>;
  /** Whether a message with this key has arrived before; `unknown` where the platform cannot be asked. */
  readonly wasPosted: (crew: CrewId, numberedKey: string) => Promise<'yes' | 'no' | 'unknown'>;
  /**
   * Said once to the leads: the record cannot be written, and bells ring from memory until it is over; or, with `unread`,
   * some of it does not read any more.
   */
  readonly tellLeads: (trouble: {
    readonly now: EpochMs;
    readonly shop: Shop;
    readonly unread?: readonly UnreadEvent[];
  }) => Promise<Told>;
}

/** A message that a front end has posted and may change or answer later. */
export interface KeptPost {
  readonly team: string;
  readonly channel: string;
  /** The platform's own name of the message: a string, unique in its channel only. */
  readonly ts: string;
  readonly crew: CrewId;
  /** What it tells of: a batch or a session where it can, else the stream itself. */
  readonly subject: StreamId;
  /** `standing`: the one message that a batch or session has, changed in place. `said`: what was said beside it. */
  readonly role: 'standing' | 'said';
  readonly thread: string | undefined;
  readonly version: number;
  /** As it was last shown, so that only a difference is sent; empty once it is closed. */
  readonly shown: string;
  /** May still change. */
  readonly open: boolean;
}

/** What a chat front end must remember beyond the record: deliveries seen, messages posted, who and where. */
export interface Postbox {
  /** False where it came before: a platform delivers more than once. Throws where nothing can be written. */
  readonly takeIn: (delivery: { readonly id: string; readonly at: EpochMs; readonly content: string }) => boolean;
  /** Done with: only its id is kept. */
  readonly finish: (id: string) => void;
  /** Taken in by an earlier life and never finished, oldest first. */
  readonly unfinished: () => readonly { readonly id: string; readonly content: string }[];
  readonly keep: (post: KeptPost) => void;
  readonly standingOf: (crew: CrewId, subject: StreamId) => KeptPost | undefined;
  readonly postAt: (team: string, channel: string, ts: string) => KeptPost | undefined;
  readonly openPosts: (crew: CrewId) => readonly KeptPost[];
  readonly note: (key: string) => string | undefined;
  /** `undefined` takes the note away. */
  readonly setNote: (key: string, value: string | undefined) => void;
  readonly close: () => void;
}
