// Holds what is live in memory, and brings it up to date from the store before every decision: the record is the truth,
// this is its reading. Folds are made again only for streams that changed.

import { type Batch, foldBatch, isBatchLive } from './batch/batch.ts';
import { type Can, foldCan, isCanLive } from './can/can.ts';
import { type Crew, type CrewFile, foldCrew } from './crew/crew.ts';
import { asItStands, type Entry, type Envelope, type EventBody, isAct, isActType } from './history.ts';
import { batchStream, type CrewId, crewStream, nameIn, nounOf, numberIn, type StreamId } from './ids.ts';
import { foldPart, isPartLive, type Part } from './part/part.ts';
import { foldPlace, type Place } from './place/place.ts';
import type { Head, Store } from './ports.ts';
import type { SheetShelf } from './products/sheet.ts';
import { foldSession, isSessionLive, type Session } from './session/session.ts';
import type { Shop } from './shop.ts';
import { type EpochMs, epochMs } from './units.ts';

type Noun =
  | { readonly is: 'batch'; readonly batch: Batch }
  | { readonly is: 'can'; readonly can: Can }
  | { readonly is: 'part'; readonly part: Part }
  | { readonly is: 'place'; readonly place: Place }
  | { readonly is: 'session'; readonly session: Session }
  | { readonly is: 'none' };

export interface ShopKeeper {
  /** Loads what is live and what is named, up to the record's end. */
  readonly open: (named: readonly StreamId[]) => Promise<Shop>;
  /** The shop as it would be with these events; nothing is kept. */
  readonly preview: (envelopes: readonly Envelope[]) => Shop;
  /** These events have landed. */
  readonly add: (envelopes: readonly Envelope[]) => void;
  readonly head: () => Head;
  readonly versionOf: (stream: StreamId) => number;
  readonly isLive: (shop: Shop, stream: StreamId) => boolean;
  /** The shop as last read. */
  readonly shop: () => Shop;
}

export function createShopKeeper(store: Store, crew: CrewId, file: CrewFile, shelf: SheetShelf): ShopKeeper {
  const histories = new Map<StreamId, readonly Envelope[]>();
  const nouns = new Map<StreamId, Noun>();
  let head: Head | undefined;
  let newest = { number: 0, actedAt: undefined as EpochMs | undefined };

  async function load(stream: StreamId): Promise<void> {
    if (histories.has(stream)) return;
    histories.set(stream, await store.eventsUnder(crew, stream));
  }

  function addTo(streams: Map<StreamId, readonly Envelope[]>, envelope: Envelope): void {
    for (const stream of new Set([envelope.stream, ...envelope.alsoUnder])) {
      const known = streams.get(stream);
      // A stream that is not loaded stays so, unless this event is its first.
      const begins = stream === envelope.stream && envelope.version === 1;
      // Loaded a moment after the record's end was read, a stream may know this event already.
      const isKnown = (known?.at(-1)?.seq ?? 0) >= envelope.seq;
      if ((known !== undefined || begins) && !isKnown) streams.set(stream, [...(known ?? []), envelope]);
    }
  }

  function seen(since: typeof newest, envelope: Envelope): typeof newest {
    const { body } = envelope;
    const number = Math.max(since.number, numberGiven(body));
    return { number, actedAt: isActType(body.type) ? epochMs(envelope.recordedAt) : since.actedAt };
  }

  async function catchUp(): Promise<void> {
    const end = await store.head(crew);
    if (head === undefined) {
      for (const stream of await store.liveStreams(crew)) await load(stream);
      await load(crewStream);
      newest = { ...(await store.newest(crew)) };
    } else if (end.hash !== head.hash) {
      for (const envelope of await store.eventsAfter(crew, head.seq)) remember(envelope);
    }
    head = end;
  }

  function remember(envelope: Envelope): void {
    addTo(histories, envelope);
    for (const stream of [envelope.stream, ...envelope.alsoUnder]) nouns.delete(stream);
    newest = seen(newest, envelope);
  }

  function nounIn(stream: StreamId, known: ReadonlyMap<StreamId, Noun>, envelopes: readonly Envelope[]): Noun {
    return known.get(stream) ?? foldNoun(stream, asItStands(envelopes));
  }

  function shopOf(
    streams: ReadonlyMap<StreamId, readonly Envelope[]>,
    known: Map<StreamId, Noun>,
    latest: typeof newest,
  ): Shop {
    const batches = new Map<number, Batch>();
    const cans = new Map<number, Can>();
    const parts = new Map<string, Part>();
    const places = new Map<string, Place>();
    const sessions = new Map<number, Session>();
    for (const [stream, envelopes] of streams) {
      const noun = nounIn(stream, known, envelopes);
      known.set(stream, noun);
      if (noun.is === 'batch') batches.set(noun.batch.number, noun.batch);
      else if (noun.is === 'can') cans.set(noun.can.number, noun.can);
      else if (noun.is === 'part') parts.set(noun.part.name, noun.part);
      else if (noun.is === 'place') places.set(noun.place.name, noun.place);
      else if (noun.is === 'session') sessions.set(noun.session.number, noun.session);
    }
    const settled: Crew = foldCrew(file, asItStands(streams.get(crewStream) ?? []), latest.actedAt);
    return { crew: settled, places, batches, cans, parts, sessions, shelf, nextNumber: latest.number + 1 };
  }

  /** Ended streams that nothing refers to any more leave the memory; a line that names them loads them again. */
  function forget(keep: ReadonlySet<StreamId>): void {
    const shop = shopOf(histories, nouns, newest);
    const referred = new Set([...sessionsOfParts(shop), ...batchesOfParts(shop), ...cansOfBatches(shop)]);
    for (const stream of [...histories.keys()]) {
      if (!isLive(shop, stream) && !keep.has(stream) && !referred.has(stream)) {
        histories.delete(stream);
        nouns.delete(stream);
      }
    }
  }

  async function open(named: readonly StreamId[]): Promise<Shop> {
    await catchUp();
    for (const stream of named) await load(stream);
    for (const session of sessionsOfParts(shopOf(histories, nouns, newest))) await load(session);
    for (const batch of batchesOfParts(shopOf(histories, nouns, newest))) await load(batch);
    for (const can of cansOfBatches(shopOf(histories, nouns, newest))) await load(can);
    forget(new Set([...named, crewStream]));
    return shopOf(histories, nouns, newest);
  }

  return {
    open,
    preview: (envelopes) => {
      const streams = new Map(histories);
      const known = new Map(nouns);
      let latest = newest;
      for (const envelope of envelopes) {
        addTo(streams, envelope);
        for (const stream of [envelope.stream, ...envelope.alsoUnder]) known.delete(stream);
        latest = seen(latest, envelope);
      }
      return shopOf(streams, known, latest);
    },
    add: (envelopes) => {
      for (const envelope of envelopes) remember(envelope);
      const last = envelopes.at(-1);
      if (last !== undefined) head = { seq: last.seq, hash: last.hash };
    },
    head: () => {
      if (head === undefined) throw new Error('the record has not been read yet');
      return head;
    },
    versionOf: (stream) => histories.get(stream)?.findLast((envelope) => envelope.stream === stream)?.version ?? 0,
    isLive,
    shop: () => shopOf(histories, nouns, newest),
  };
}

/** Of the crew's one series, where this event gives one. */
function numberGiven(body: EventBody): number {
  switch (body.type) {
    case 'BatchOpened':
      return body.batch;
    case 'CanOpened':
      return body.can;
    case 'SessionBriefed':
      return body.session;
    default:
      return 0;
  }
}

/** Of coats, and of sessions: what was sprayed is part of a session's sums. */
function batchesOfParts(shop: Shop): readonly StreamId[] {
  const ofSessions = [...shop.sessions.values()].flatMap(({ batch }) =>
    batch === undefined ? [] : [batchStream(batch)],
  );
  return [
    ...[...shop.parts.values()].flatMap((part) => part.coats.map((coat) => batchStream(coat.batch))),
    ...new Set(ofSessions),
  ];
}

/** A coat is held against the brief that it was sprayed under. */
function sessionsOfParts(shop: Shop): readonly StreamId[] {
  const under = [...shop.parts.values()].flatMap(({ entries }) => entries.flatMap(({ alsoUnder }) => alsoUnder));
  return [...new Set(under.filter((stream) => nounOf(stream) === 'session'))];
}

/** What went into a batch may have come from a can that is empty by now. */
function cansOfBatches(shop: Shop): readonly StreamId[] {
  const under = [...shop.batches.values()].flatMap(({ entries }) => entries.flatMap(({ alsoUnder }) => alsoUnder));
  return [...new Set(under.filter((stream) => nounOf(stream) === 'can'))];
}

function foldNoun(stream: StreamId, entries: readonly Entry[]): Noun {
  switch (nounOf(stream)) {
    case 'batch': {
      const batch = foldBatch(entries);
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
      return { is: 'none' };
  }
}

/** Whether somebody still waits for something of this stream. Places and the crew never end. */
function isLive(shop: Shop, stream: StreamId): boolean {
  switch (nounOf(stream)) {
    case 'batch': {
      const batch = shop.batches.get(numberIn(stream));
      return batch !== undefined && isBatchLive(batch);
    }
    case 'can': {
      const can = shop.cans.get(numberIn(stream));
      return can !== undefined && isCanLive(can);
    }
    case 'part': {
      const part = shop.parts.get(nameIn(stream));
      return part !== undefined && isPartLive(part);
    }
    case 'place':
    case 'crew':
      return true;
    case 'session': {
      const session = shop.sessions.get(numberIn(stream));
      return session !== undefined && isSessionLive(session);
    }
  }
}
