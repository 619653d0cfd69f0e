// A correction or a late reading can make wrong what was done long since. What may have harmed a film then holds its part
// as it would have at the time; so does a film reading that fails only as it is corrected, released or not.

import { type FactFor, isFor } from '../event-readers.ts';
import { type Entry, type Envelope, isLate, type NewEvent } from '../history.ts';
import { nameIn, nounOf, type PartName, partStream } from '../ids.ts';
import { readingKey } from '../part/failed-reading.ts';
import { type Failed, failedReadings } from '../part/failed-readings.ts';
import { isHolding } from '../part/holding.ts';
import type { HoldingCode } from '../part/holding-codes.ts';
import type { Part } from '../part/part.ts';
import type { Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';
import { newDeviations } from './deviations.ts';

/** Whether these events can change how earlier acts look. */
export function rewrites(envelopes: readonly Envelope[]): boolean {
  return envelopes.some((envelope) => {
    const { body } = envelope;
    return body.type === 'Amended' || isLate(envelope) || (isFor('rewrites', body) && makesOtherwise(body));
  });
}

function makesOtherwise(fact: FactFor<'rewrites'>): boolean {
  switch (fact.type) {
    // Some film rules count their readings by the part's area, and what it bears may be less than it was heated to.
    case 'PartReceived':
      return fact.areaSquareMetres !== undefined || fact.highestCelsius !== undefined;
    // What was read since its last good check.
    case 'InstrumentChecked':
      return fact.result === 'failed';
  }
}

export function holdsThatFollow(before: Shop, after: Shop, at: EpochMs): readonly NewEvent[] {
  const because = new Map<PartName, HoldingCode[]>();
  const failed = new Map<PartName, readonly Failed[]>();
  const add = (part: PartName, code: HoldingCode) => because.set(part, [...(because.get(part) ?? []), code]);
  for (const { entry, objection, permitted } of newDeviations(before, after)) {
    if (permitted !== undefined || !isHolding(objection.code)) continue;
    // Released and gone or not: whoever leads must know what they let go. What was read on one part of a load counts for the others.
    for (const stream of [entry.stream, ...entry.alsoUnder]) {
      const part = nounOf(stream) === 'part' ? after.parts.get(nameIn(stream)) : undefined;
      if (part !== undefined && isOfWhatIsThere(part, entry)) add(part.name, objection.code);
    }
  }
  for (const part of after.parts.values()) {
    const readings = newlyFailed(before, after, part).filter(({ entry }) => isOfWhatIsThere(part, entry));
    if (readings.length > 0) failed.set(part.name, readings);
    for (const { objection } of readings) add(part.name, objection.code);
  }
  return [...because].map(([part, codes]) => {
    const readings = (failed.get(part) ?? []).map(({ reading }) => reading);
    const because = [...new Set(codes)];
    const body = { type: 'PartHeld' as const, why: '', because, ...(readings.length > 0 && { failed: readings }) };
    return { streams: [partStream(part)], happenedAt: at, body };
  });
}

/** Not of a coat that was reworked since, nor of a part that is scrapped or given back: there is nothing left to hold. */
function isOfWhatIsThere({ verdict, reworked }: Part, { seq }: Entry): boolean {
  const isGone = verdict?.is === 'scrapped' || verdict?.is === 'returned';
  return !isGone && (reworked === undefined || seq > reworked.seq);
}

/** Readings that were there before and fail only now, or fail by other figures. A new one has held its part itself. */
function newlyFailed(before: Shop, after: Shop, part: Part): ReturnType<typeof failedReadings> {
  const was = before.parts.get(part.name);
  if (was === undefined || was === part) return [];
  const name = ({ entry, reading }: ReturnType<typeof failedReadings>[number]) => `${entry.seq} ${readingKey(reading)}`;
  const known = new Set(failedReadings(before, was).map(name));
  const stood = new Set(was.entries.map(({ seq }) => seq));
  return failedReadings(after, part).filter((failed) => stood.has(failed.entry.seq) && !known.has(name(failed)));
}
