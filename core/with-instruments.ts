// The readings that an act leaves, each with the instrument it was made with, filed under that too: so that what rests on it is
// found years later. The first of a place says that the instrument is used there from then on.

import type { Command } from './commands.ts';
import type { Said } from './decision.ts';
import { type Failed, failed } from './failed.ts';
import type { Entry, Fact, NewEvent } from './history.ts';
import {
  crewStream,
  defaultPlace,
  instrumentStream,
  nameIn,
  nounOf,
  numberIn,
  type PlaceName,
  type StreamId,
} from './ids.ts';
import { readingCase, readingRules } from './instrument/rests-on-readings.ts';
import { lastUsed, takenFor } from './instrument/taken-for.ts';
import type { InstrumentKind } from './instrument-kinds.ts';
import { type Instrument, instrumentName, instrumentNamed } from './instruments.ts';
import { isReading, kindsOf } from './made-with.ts';
import type { Unclear } from './objections.ts';
import { holdAfter } from './part/holding.ts';
import { editionOfToday } from './rule-editions.ts';
import { objectionsTo } from './rules.ts';
import { batchOf, type Shop } from './shop.ts';

/** Of a shop that keeps no instruments they are as they were. */
export function withInstruments(
  shop: Shop,
  { command }: Said,
  events: readonly NewEvent[],
): readonly NewEvent[] | Failed<Unclear> {
  const named = namedIn(command);
  if (shop.crew.instruments.length === 0 && named === undefined) return events;
  const all: NewEvent[] = [];
  let knows = shop.crew.instruments;
  for (const event of events) {
    const fact = event.body.type === 'Amended' ? undefined : event.body;
    const kinds = fact && kindsOf(fact);
    if (fact === undefined || kinds === undefined) {
      all.push(event);
      continue;
    }
    const place = placeOf(shop, event.streams[0], fact);
    const chosen = named === undefined ? undefined : instrumentMeant(shop, named, kinds);
    if (chosen !== undefined && 'failed' in chosen) return chosen;
    const instrument = chosen ?? takenFor(knows, kinds, place, event.happenedAt);
    if (instrument === undefined) {
      all.push(event);
      continue;
    }
    const taken = takenUp(knows, instrument, place, event.happenedAt);
    if (taken !== undefined)
      knows = knows.map((each) =>
        each === instrument
          ? { ...each, taken: [...each.taken, { at: event.happenedAt, seq: Number.MAX_SAFE_INTEGER, place }] }
          : each,
      );
    all.push(...readingWith(shop, event, fact, instrument), ...(taken ?? []));
  }
  return all;
}

const namedIn = (command: Command): string | undefined =>
  'instrument' in command && typeof command.instrument === 'string' ? instrumentName(command.instrument) : undefined;

/** Kept under that name, and of a kind that such a reading is made with. */
export function instrumentMeant(
  { crew: { instruments } }: Pick<Shop, 'crew'>,
  name: string,
  of: readonly InstrumentKind[],
): Instrument | Failed<Unclear> {
  const found = instrumentNamed(instruments, name);
  if (found !== undefined && of.includes(found.kind)) return found;
  const kept = instruments.filter(({ kind, isRetired }) => of.includes(kind) && !isRetired).map((each) => each.name);
  return failed({ code: 'no-such-instrument', instrument: name, kept, of });
}

/** An oven has its own; else where the part's pot is. */
export function placeOf(shop: Shop, stream: StreamId, fact: Fact): PlaceName {
  switch (nounOf(stream)) {
    case 'place':
      return nameIn(stream);
    case 'batch':
      return shop.batches.get(numberIn(stream))?.place ?? defaultPlace;
    case 'part': {
      const part = shop.parts.get(nameIn(stream));
      const isInOven = fact.type === 'PartTemperatureRead' && part?.cure?.way === 'oven';
      return isInOven ? ovenPlace : ((part && batchOf(shop, part)?.place) ?? defaultPlace);
    }
    case 'can':
    case 'session':
    case 'crew':
    case 'instrument':
      return defaultPlace;
  }
}
const ovenPlace: PlaceName = 'oven';

/** Where another of its kind, or none, was used there before. */
export function takenUp(
  instruments: readonly Instrument[],
  { name, kind }: Instrument,
  place: PlaceName,
  at: Entry['happenedAt'],
): readonly NewEvent[] | undefined {
  const ofKind = instruments.filter((each) => each.kind === kind);
  const isLater = ofKind.some(({ taken }) => taken.some((each) => each.place === place && each.at > at));
  if (isLater || lastUsed(ofKind, place, at)?.name === name) return undefined;
  const body = { type: 'InstrumentTaken' as const, instrument: name, place };
  return [{ streams: [crewStream, instrumentStream(name)], happenedAt: at, body }];
}

/** What its instrument makes of it goes with it: a part that was read with one that failed is held. */
function readingWith(shop: Shop, event: NewEvent, fact: Fact, { name }: Instrument): readonly NewEvent[] {
  if (!isReading(fact)) return [event];
  const body = { ...fact, instrument: name };
  const against = objectionsTo(
    readingRules,
    readingCase(shop, { fact: body, happenedAt: event.happenedAt }),
    editionOfToday,
  );
  const codes = against.map(({ code }) => code);
  const { saidWith } = event;
  const despite = [...new Set([...(saidWith?.despite ?? []), ...codes])];
  const [home, ...others] = event.streams;
  const read: NewEvent = {
    ...event,
    streams: [home, ...others, instrumentStream(name)],
    body,
    ...(codes.length > 0 && { saidWith: { ...saidWith, despite } }),
  };
  const parts = event.streams.filter((stream) => nounOf(stream) === 'part').map(nameIn);
  return [read, ...parts.flatMap((part) => holdAfter(part, event.happenedAt, { despite: codes }))];
}
