// What questions about the past ask of the store beyond streams: the rows as they lie there, an index of names, a copy.

import type { CrewId, PartName, StreamId } from '../ids.ts';

/** A row of the record, unparsed: what is proved must be what lies there. */
export interface RecordRow {
  readonly seq: number;
  readonly stream: string;
  readonly version: number;
  readonly also_under: string;
  readonly type: string;
  readonly happened_at: number;
  readonly recorded_at: number;
  readonly by_person: string;
  readonly request: string;
  readonly said_with: string;
  readonly body: string;
  readonly edition: number;
  readonly shape: number;
  readonly seal: string;
  readonly previous_hash: string;
  readonly hash: string;
}

/** What a part or can was booked in under. */
export type BookedUnder = 'serial' | 'job' | 'customer' | 'lot';

export interface Archive {
  /** After `seq`, in order, `most` at a time: a long record is never in memory whole, and bells ring between. */
  readonly rowsAfter: (crew: CrewId, seq: number, most: number) => readonly RecordRow[];
  readonly hashAt: (crew: CrewId, seq: number) => string | undefined;
  /** The highest number ever filed under a stream: rows beyond the record's end show that its tail was cut. */
  readonly filedEnd: (crew: CrewId) => number;
  /** Streams of parts and cans booked in under a name, whatever its capitals, newest first. A beginning serves too. */
  readonly bookedUnder: (crew: CrewId, key: BookedUnder, value: string) => readonly StreamId[];
  /** Of every part that something is filed under. */
  readonly partsEver: (crew: CrewId) => readonly PartName[];
  /** Streams with something that happened from `from` on and before `to`, as their home or as one that it concerns. */
  readonly filedBetween: (crew: CrewId, from: number, to: number) => readonly StreamId[];
  /** Copies the record to a new file while it is in use. Throws where that cannot be written. */
  readonly backup: (file: string) => Promise<void>;
}
