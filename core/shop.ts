// What decide may look at: the crew, its places, every live batch and part, and whatever else the command names. Plain
// data, complete before anything is decided.

import type { Batch } from './batch/batch.ts';
import { isBatchLive } from './batch/batch.ts';
import { type Can, isCanLive } from './can/can.ts';
import type { Component } from './components.ts';
import type { Crew } from './crew/crew.ts';
import type { Entry } from './history.ts';
import {
  type BatchNumber,
  batchStream,
  type CanNumber,
  canStream,
  crewStream,
  defaultPlace,
  type PartName,
  type PersonName,
  type PlaceName,
  partStream,
  placeStream,
  type SessionNumber,
  type SheetId,
  type StreamId,
  sessionStream,
} from './ids.ts';
import { inNaturalOrder } from './natural-order.ts';
import type { Part } from './part/part.ts';
import { isPartLive } from './part/part.ts';
import { type AirLog, airLogOf, airServing, type Place } from './place/place.ts';
import type { SheetShelf } from './products/sheet.ts';
import { sheetMeant } from './products/shelf.ts';
import { isSessionOpen, type Session } from './session/session.ts';
import { lastSaid, standing } from './settled.ts';
import type { EpochMs } from './units.ts';
import type { UnreadEvent } from './unread-event.ts';

export interface Shop {
  readonly crew: Crew;
  readonly places: ReadonlyMap<PlaceName, Place>;
  readonly batches: ReadonlyMap<BatchNumber, Batch>;
  readonly cans: ReadonlyMap<CanNumber, Can>;
  readonly parts: ReadonlyMap<PartName, Part>;
  readonly sessions: ReadonlyMap<SessionNumber, Session>;
  readonly shelf: SheetShelf;
  /** The next of the crew's series of short numbers. */
  readonly nextNumber: number;
  /** Of which parts the crew has ever said from which can they came. */
  readonly pouredFromCans: readonly Component[];
  /** Of what is loaded, the streams under which some event does not read any more. */
  readonly unread: ReadonlyMap<StreamId, readonly UnreadEvent[]>;
}

/** Who says it, and when it is said. */
export interface Speaker {
  readonly by: PersonName;
  readonly now: EpochMs;
}

/** Where nobody names one: the only one that `fits`, or the only one that there is. */
export function onlyOne<Of>(live: readonly Of[], fits: (one: Of) => boolean): Of | undefined {
  const fitting = live.filter(fits);
  return fitting.length === 1 ? fitting[0] : live.length === 1 ? live[0] : undefined;
}

export function liveBatches(shop: Shop): readonly Batch[] {
  return [...shop.batches.values()].filter(isBatchLive).sort((a, b) => a.number - b.number);
}

export function liveCans(shop: Shop): readonly Can[] {
  return [...shop.cans.values()].filter(isCanLive).sort((a, b) => a.number - b.number);
}

/** In no order: there may be thousands, and few who ask for them show them all. */
export function liveParts(shop: Shop): readonly Part[] {
  return [...shop.parts.values()].filter(isPartLive);
}

/** As people read them. */
export function byName(parts: readonly Part[]): readonly Part[] {
  return parts.toSorted((a, b) => inNaturalOrder(a.name, b.name));
}

export function livePartNames(shop: Shop): readonly PartName[] {
  return byName(liveParts(shop)).map(({ name }) => name);
}

/** The batch of the part's last coat; `undefined` too where that does not read any more. */
export function batchOf(shop: Shop, { coats }: Pick<Part, 'coats'>): Batch | undefined {
  const coat = coats.at(-1);
  return coat === undefined ? undefined : shop.batches.get(coat.batch);
}

/** Briefed and not closed. */
export function openSessions(shop: Shop): readonly Session[] {
  return [...shop.sessions.values()].filter(isSessionOpen).sort((a, b) => a.number - b.number);
}

export function airLog(shop: Shop, place: PlaceName = defaultPlace): AirLog {
  return airLogOf(shop.places.get(place), standing(shop.crew, 'air-limit').minutes);
}

/** Which sheet is meant: the one named, else the crew's usual one. */
export function sheetFor(shop: Shop, named?: SheetId) {
  return sheetMeant(shop.shelf, lastSaid(shop.crew, 'sheet')?.sheet, named);
}

/** What was read in a place, as far as it still serves at `at`. */
export function airServingIn(shop: Shop, place: PlaceName = defaultPlace, at: EpochMs) {
  return airServing(shop.places.get(place), at, standing(shop.crew, 'air-limit').minutes);
}

/** What every noun has, whatever it is. */
export type Noun = Pick<Crew, 'rings' | 'entries'>;

/** Everything loaded, under its stream; the crew last. */
export function nounsIn(shop: Shop): readonly { readonly stream: StreamId; readonly noun: Noun }[] {
  const under = <Key, Of extends Noun>(of: ReadonlyMap<Key, Of>, stream: (key: Key) => StreamId) =>
    [...of].map(([key, noun]) => ({ stream: stream(key), noun }));
  return [
    ...under(shop.batches, batchStream),
    ...under(shop.cans, canStream),
    ...under(shop.parts, partStream),
    ...under(shop.places, placeStream),
    ...under(shop.sessions, sessionStream),
    { stream: crewStream, noun: shop.crew },
  ];
}

/** Every entry that is loaded and wanted, once each, in the order in which it was recorded. */
export function entriesIn(shop: Shop, wanted: (entry: Entry) => boolean = () => true): readonly Entry[] {
  const bySeq = new Map<number, Entry>();
  for (const { noun } of nounsIn(shop)) {
    for (const entry of noun.entries) if (wanted(entry)) bySeq.set(entry.seq, entry);
  }
  return [...bySeq.values()].sort((a, b) => a.seq - b.seq);
}
