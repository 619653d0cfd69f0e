// What a coat, a cure and a release rest on that was read with an instrument: the air and the steel that served, what was weighed
// into the pot, the cure's temperatures, the film. The first of them whose instrument failed its check speaks against it.

import type { Batch } from '../batch/batch.ts';
import type { Entry } from '../history.ts';
import { defaultPlace, type PlaceName } from '../ids.ts';
import {
  failedCheckOf,
  type InstrumentFailed,
  type InstrumentObjection,
  instrumentNamed,
  overdueAt,
} from '../instruments.ts';
import { readWith } from '../made-with.ts';
import type { Part } from '../part/part.ts';
import type { Rule } from '../rules.ts';
import { standing } from '../settled.ts';
import { batchOf, type Shop } from '../shop.ts';
import { type EpochMs, minutesAfter } from '../units.ts';
import type { RestsOnReadings } from './read-soundly.ts';

type Knows = Pick<Shop, 'crew'>;

const failedOf = (shop: Knows, entry: Entry): InstrumentFailed | undefined => readingCase(shop, entry).failed;

const firstFailed = (shop: Knows, entries: readonly Entry[]): InstrumentFailed | undefined =>
  entries.map((entry) => failedOf(shop, entry)).find((failed) => failed !== undefined);

/** How the instrument of a reading stood. */
export interface ReadingCase {
  readonly failed: InstrumentFailed | undefined;
  readonly overdue: InstrumentObjection | undefined;
}

export function readingCase(shop: Knows, entry: Pick<Entry, 'fact' | 'happenedAt'>): ReadingCase {
  const { instruments, zone } = shop.crew;
  const name = readWith(entry.fact);
  const instrument = name === undefined ? undefined : instrumentNamed(instruments, name);
  if (instrument === undefined) return { failed: undefined, overdue: undefined };
  const { happenedAt: at } = entry;
  return { failed: failedCheckOf(instrument, at), overdue: overdueAt(instrument, at, zone) };
}

/** Of a reading itself: it is recorded whatever its instrument, and marked. An overdue check is paper, a failed one holds. */
export const readingRules: readonly Rule<ReadingCase>[] = [
  {
    code: 'instrument-failed',
    source: 'common practice, no source',
    liftedBy: 'lead',
    since: 11,
    check: ({ failed }) => failed,
  },
  {
    code: 'instrument-overdue',
    source: 'common practice, no source',
    liftedBy: 'lead',
    since: 11,
    check: ({ failed, overdue }) => (failed === undefined ? overdue : undefined),
  },
];

/** `pot`: as the coat finds it. */
export function coatRestsOn(shop: Shop, pot: Batch, part: Part | undefined, at: EpochMs): RestsOnReadings {
  if (shop.crew.instruments.length === 0) return { readWithFailed: undefined };
  const own = lastRead(shop, part?.entries ?? [], at, ({ fact }) => fact.type === 'SurfaceRead');
  const weighed = pot.entries.filter(({ happenedAt }) => happenedAt <= at);
  return { readWithFailed: firstFailed(shop, [...own, ...servingIn(shop, pot.place, at), ...weighed]) };
}

/** The room's air where it begins; what is read meanwhile its release rests on. */
export function cureRestsOn(shop: Shop, part: Part, way: 'oven' | 'room', at: EpochMs): RestsOnReadings {
  if (shop.crew.instruments.length === 0 || way === 'oven') return { readWithFailed: undefined };
  return { readWithFailed: firstFailed(shop, servingIn(shop, batchOf(shop, part)?.place, at)) };
}

/** Readings of the coat that is on it. A film that was read again with another counts by that. */
export function releaseRestsOn(shop: Shop, part: Part, at: EpochMs): RestsOnReadings {
  const { cure, coats, verdict } = part;
  const [coat] = coats.slice(-1);
  // What holds it for that says so already.
  const isHeldForIt = verdict?.is === 'held' && verdict.because.includes('instrument-failed');
  if (shop.crew.instruments.length === 0 || coat === undefined || isHeldForIt) return { readWithFailed: undefined };
  const read = part.entries.filter(({ happenedAt }) => happenedAt >= coat.at && happenedAt <= at);
  const films = read.filter(({ fact }) => fact.type === 'FilmRead' && fact.state === 'dry');
  const lastDoubted = films.findLast((entry) => failedOf(shop, entry) !== undefined);
  const isReadAgain = lastDoubted !== undefined && films.some((film) => isAgain(film, lastDoubted));
  const inRoom = cure?.way === 'room' ? during(shop, batchOf(shop, part)?.place, cure.run.from, cure.run.to ?? at) : [];
  const others = read.filter(({ fact }) => fact.type === 'PartTemperatureRead');
  return { readWithFailed: firstFailed(shop, [...(isReadAgain ? [] : films), ...others, ...inRoom]) };
}

/** After it, and of no set of spots that it is of. */
function isAgain({ fact, seq, happenedAt }: Entry, doubted: Entry): boolean {
  const set = doubted.fact.type === 'FilmRead' ? doubted.fact.set : undefined;
  const isLater = happenedAt > doubted.happenedAt || (happenedAt === doubted.happenedAt && seq > doubted.seq);
  return isLater && fact.type === 'FilmRead' && (set === undefined || fact.set !== set);
}

/** What was read of the air and the steel of a place, as far as it serves. */
function servingIn(shop: Shop, place: PlaceName = defaultPlace, at: EpochMs): readonly Entry[] {
  const entries = shop.places.get(place)?.entries ?? [];
  return [
    ...lastRead(shop, entries, at, ({ fact }) => fact.type === 'AirRead' && fact.celsius !== undefined),
    ...lastRead(shop, entries, at, ({ fact }) => fact.type === 'AirRead' && fact.relativeHumidityPercent !== undefined),
    ...lastRead(shop, entries, at, ({ fact }) => fact.type === 'SurfaceRead'),
  ];
}

function lastRead(
  shop: Shop,
  entries: readonly Entry[],
  at: EpochMs,
  isOne: (entry: Entry) => boolean,
): readonly Entry[] {
  const last = entries.findLast((entry) => entry.happenedAt <= at && isOne(entry));
  const serves = last !== undefined && at <= minutesAfter(last.happenedAt, standing(shop.crew, 'air-limit').minutes);
  return serves ? [last] : [];
}

const during = (shop: Shop, place: PlaceName = defaultPlace, from: EpochMs, to: EpochMs): readonly Entry[] =>
  (shop.places.get(place)?.entries ?? []).filter(
    ({ fact, happenedAt }) =>
      (fact.type === 'AirRead' || fact.type === 'LowestRead') && happenedAt >= from && happenedAt <= to,
  );
