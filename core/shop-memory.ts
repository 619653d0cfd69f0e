// What is loaded of the record, and the shop that it gives: a value that is never changed. What is added makes the next
// one, in which only the streams that it touches are folded again.

import { asItStands, asItStandsWith } from './as-it-stands.ts';
import { type Batch, foldBatch, isBatchLive } from './batch/batch.ts';
import { waitsForCleaning } from './batch/gear-to-clean.ts';
import { type Can, foldCan, isCanLive } from './can/can.ts';
import { components } from './components.ts';
import { type Crew, type CrewFile, foldCrew } from './crew/crew.ts';
import { isFor } from './event-readers.ts';
import { type Entry, type Envelope, type EventBody, isAct, isActType } from './history.ts';
import { batchStream, crewStream, nameIn, nounOf, type StreamId, sessionStream } from './ids.ts';
import { waitsForAfterCure } from './part/after-reminders.ts';
import { foldPart, isPartLive, type Part } from './part/part.ts';
import { foldPlace, type Place } from './place/place.ts';
import type { Head, Newest } from './ports.ts';
import type { SheetShelf } from './products/sheet.ts';
import { foldSession, isSessionLive, potsOf, type Session } from './session/session.ts';
import { airLog, batchOf, type Shop } from './shop.ts';
import { epochMs } from './units.ts';
import { isUnreadAct, readableOf, type UnreadEvent } from './unread-event.ts';

type Noun =
  | { readonly is: 'batch'; readonly batch: Batch }
  | { readonly is: 'can'; readonly can: Can }
  | { readonly is: 'part'; readonly part: Part }
  | { readonly is: 'place'; readonly place: Place }
  | { readonly is: 'session'; readonly session: Session }
  | { readonly is: 'crew'; readonly crew: Crew }
  | { readonly is: 'none' };

/** A stream as loaded: its events, how they stand now, and their fold. */
export interface Loaded {
  readonly envelopes: readonly Envelope[];
  /** What stands among them and does not read. */
  readonly unread: readonly UnreadEvent[];
  readonly entries: readonly Entry[];
  readonly noun: Noun;
  /** Streams that must be loaded with it. */
  readonly refersTo: readonly StreamId[];
}

/** What no event changes. */
export interface Fixed {
  readonly file: CrewFile;
  readonly shelf: SheetShelf;
}

export interface Memory {
  readonly head: Head;
  readonly streams: ReadonlyMap<StreamId, Loaded>;
  readonly newest: Newest;
  readonly shop: Shop;
}

export function memoryOf(fixed: Fixed, read: Omit<Memory, 'shop'>): Memory {
  return { ...read, shop: shopOf(fixed, read) };
}

function shopOf({ file, shelf }: Fixed, { streams, newest }: Omit<Memory, 'shop'>): Shop {
  const batches = new Map<number, Batch>();
  const cans = new Map<number, Can>();
  const parts = new Map<string, Part>();
  const places = new Map<string, Place>();
  const sessions = new Map<number, Session>();
  const unread = new Map<StreamId, readonly UnreadEvent[]>();
  let crew: Crew | undefined;
  for (const [stream, { noun, unread: broken }] of streams) {
    if (broken.length > 0) unread.set(stream, broken);
    if (noun.is === 'batch') batches.set(noun.batch.number, noun.batch);
    else if (noun.is === 'can') cans.set(noun.can.number, noun.can);
    else if (noun.is === 'part') parts.set(noun.part.name, noun.part);
    else if (noun.is === 'place') places.set(noun.place.name, noun.place);
    else if (noun.is === 'session') sessions.set(noun.session.number, noun.session);
    else if (noun.is === 'crew') crew = noun.crew;
  }
  const acted = { ...(crew ?? foldCrew(file, [])), lastActedAt: newest.actedAt };
  return {
    crew: acted,
    places,
    batches,
    cans,
    parts,
    sessions,
    shelf,
    nextNumber: newest.number + 1,
    pouredFromCans: newest.pouredFromCans,
    unread,
  };
}

/** These events are the record's next. A stream that is not loaded stays so, unless one of them is its first. */
export function withEvents(fixed: Fixed, memory: Memory, added: readonly Envelope[]): Memory {
  const last = added.at(-1);
  if (last === undefined) return memory;
  const streams = new Map(memory.streams);
  for (const [stream, envelopes] of byStream(added)) {
    const known = streams.get(stream);
    const begins = envelopes.some((envelope) => envelope.stream === stream && envelope.version === 1);
    if (known !== undefined || begins) streams.set(stream, grown(fixed, stream, known, envelopes));
  }
  return memoryOf(fixed, {
    head: { seq: last.seq, hash: last.hash },
    streams,
    newest: added.reduce(seen, memory.newest),
  });
}

/** The same record over the crew's file as it is now. */
export function withCrewAnew(fixed: Fixed, memory: Memory): Memory {
  const known = memory.streams.get(crewStream);
  const streams = new Map(memory.streams);
  if (known !== undefined)
    streams.set(crewStream, { ...known, noun: foldNoun(fixed, crewStream, known.entries, undefined) });
  return memoryOf(fixed, { ...memory, streams });
}

function byStream(envelopes: readonly Envelope[]): ReadonlyMap<StreamId, readonly Envelope[]> {
  const found = new Map<StreamId, Envelope[]>();
  for (const envelope of envelopes) {
    for (const stream of new Set([envelope.stream, ...envelope.alsoUnder])) {
      const under = found.get(stream);
      if (under === undefined) found.set(stream, [envelope]);
      else under.push(envelope);
    }
  }
  return found;
}

/** A stream with these events at its end. Loaded a moment after the record's end was read, it may know them already. */
export function grown(
  fixed: Pick<Fixed, 'file'>,
  stream: StreamId,
  known: Loaded | undefined,
  added: readonly Envelope[],
  unread: readonly UnreadEvent[] = known?.unread ?? [],
): Loaded {
  const before = known?.envelopes ?? [];
  const lastSeq = before.at(-1)?.seq ?? 0;
  const unknown = added.filter(({ seq }) => seq > lastSeq);
  if (known !== undefined && unknown.length === 0) return known;
  const envelopes = [...before, ...unknown];
  const continued = known && asItStandsWith(known.entries, unknown);
  const entries = continued ?? asItStands(readableOf(stream, envelopes, unread));
  const noun = foldNoun(fixed, stream, entries, continued && known.noun);
  return { envelopes, unread, entries, noun, refersTo: referencesOf(noun) };
}

function seen(since: Newest, { body, recordedAt }: Envelope): Newest {
  const number = Math.max(since.number, numberGiven(body));
  const poured = 'fromCans' in body ? (body.fromCans ?? []).map(({ component }) => component) : [];
  return {
    number,
    actedAt: isActType(body.type) ? epochMs(recordedAt) : since.actedAt,
    pouredFromCans: components.filter((each) => since.pouredFromCans.includes(each) || poured.includes(each)),
  };
}

/** Of the crew's one series, where this event gives one. */
function numberGiven(body: EventBody): number {
  if (body.type === 'Amended' || !isFor('opening', body)) return 0;
  switch (body.type) {
    case 'BatchOpened':
      return body.batch;
    case 'CanOpened':
      return body.can;
    case 'SessionBriefed':
      return body.session;
  }
}

/** Ended streams that nothing refers to any more leave the memory; a line that names them loads them again. */
export function forgetting(fixed: Fixed, memory: Memory, keep: ReadonlySet<StreamId>): Memory {
  const ended = [...memory.streams.keys()].filter((stream) => !isLive(memory, stream) && !keep.has(stream));
  if (ended.length === 0) return memory;
  const referred = new Set([...memory.streams.values()].flatMap(({ refersTo }) => refersTo));
  const forgotten = ended.filter((stream) => !referred.has(stream));
  if (forgotten.length === 0) return memory;
  const streams = new Map(memory.streams);
  for (const stream of forgotten) streams.delete(stream);
  return memoryOf(fixed, { ...memory, streams });
}

/** Whether somebody still waits for something of this stream. Places and the crew never end. */
export function isLive({ streams, shop }: Pick<Memory, 'streams' | 'shop'>, stream: StreamId): boolean {
  const loaded = streams.get(stream);
  const noun = loaded?.noun ?? { is: 'none' };
  // Whether it has ended may stand in what does not read.
  if (loaded?.unread.some(isUnreadAct) === true) return true;
  switch (noun.is) {
    case 'batch':
      return isBatchLive(noun.batch) || waitsForCleaning(noun.batch);
    case 'can':
      return isCanLive(noun.can);
    case 'part':
      return isPartLive(noun.part) || waitsAfterCure(shop, noun.part);
    case 'session':
      return isSessionLive(noun.session);
    case 'place':
    case 'crew':
      return true;
    case 'none':
      return nounOf(stream) === 'place' || nounOf(stream) === 'crew';
  }
}

function waitsAfterCure(shop: Shop, part: Part): boolean {
  const batch = batchOf(shop, part);
  return waitsForAfterCure(part, batch?.sheet, airLog(shop, batch?.place));
}

/**
 * A coat is held against the brief that it was sprayed under, and its clocks run by its batch; what was sprayed is part
 * of a session's sums; what went into a batch may have come from a can that is empty by now.
 */
function referencesOf(noun: Noun): readonly StreamId[] {
  switch (noun.is) {
    case 'part':
      return [
        ...alsoUnder(noun.part.entries, 'session'),
        ...new Set([...noun.part.earlier, ...noun.part.coats].map(({ batch }) => batchStream(batch))),
      ];
    case 'session':
      return [...potsOf(noun.session).map(batchStream), ...sessionBefore(noun.session)];
    case 'batch':
      return alsoUnder(noun.batch.entries, 'can');
    case 'can':
    case 'place':
    case 'crew':
    case 'none':
      return [];
  }
}

/** What was answered in it may still stand. */
const sessionBefore = ({ after }: Session): readonly StreamId[] => (after === undefined ? [] : [sessionStream(after)]);

export function missingReferences({ streams }: Pick<Memory, 'streams'>): readonly StreamId[] {
  const missing: StreamId[] = [];
  for (const { refersTo } of streams.values()) {
    for (const stream of refersTo) if (!streams.has(stream)) missing.push(stream);
  }
  return missing;
}

function alsoUnder(entries: readonly Entry[], noun: 'session' | 'can'): readonly StreamId[] {
  const streams = new Set<StreamId>();
  for (const { alsoUnder } of entries) {
    for (const stream of alsoUnder) if (nounOf(stream) === noun) streams.add(stream);
  }
  return [...streams];
}

/** `before` is the fold of the first of these entries, where known: a batch has many, and goes on from there. */
function foldNoun(
  { file }: Pick<Fixed, 'file'>,
  stream: StreamId,
  entries: readonly Entry[],
  before: Noun | undefined,
): Noun {
  switch (nounOf(stream)) {
    case 'batch': {
      const batch = foldBatch(entries, before?.is === 'batch' ? before.batch : undefined);
      return batch === undefined ? { is: 'none' } : { is: 'batch', batch };
    }
    case 'can': {
      const can = foldCan(entries);
      return can === undefined ? { is: 'none' } : { is: 'can', can };
    }
    case 'part':
      return entries.some(isAct) ? { is: 'part', part: foldPart(nameIn(stream), entries) } : { is: 'none' };
    case 'place':
      return { is: 'place', place: foldPlace(nameIn(stream), entries) };
    case 'session': {
      const session = foldSession(entries);
      return session === undefined ? { is: 'none' } : { is: 'session', session };
    }
    case 'crew':
      return { is: 'crew', crew: foldCrew(file, entries) };
    // The crew folds them; under their own stream they only find what was read with them.
    case 'instrument':
      return { is: 'none' };
  }
}
