// A correction or a late reading can make wrong what was done long since. What may have harmed a film then holds its part
// as it would have at the time.

import { type Envelope, isLate, type NewEvent } from '../history.ts';
import { nameIn, nounOf, type StreamId } from '../ids.ts';
import { type HoldingCode, isHolding } from '../part/holding.ts';
import { isPartLive } from '../part/part.ts';
import type { Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';
import { newDeviations } from './deviations.ts';

/** Whether these events can change how earlier acts look. */
export function rewrites(envelopes: readonly Envelope[]): boolean {
  return envelopes.some((envelope) => envelope.body.type === 'Amended' || isLate(envelope));
}

export function holdsThatFollow(before: Shop, after: Shop, at: EpochMs): readonly NewEvent[] {
  const because = new Map<StreamId, HoldingCode[]>();
  for (const { entry, objection, permitted } of newDeviations(before, after)) {
    if (permitted !== undefined || !isHolding(objection.code) || nounOf(entry.stream) !== 'part') continue;
    const part = after.parts.get(nameIn(entry.stream));
    if (part === undefined || !isPartLive(part)) continue;
    because.set(entry.stream, [...(because.get(entry.stream) ?? []), objection.code]);
  }
  return [...because].map(([stream, codes]) => ({
    streams: [stream],
    happenedAt: at,
    body: { type: 'PartHeld', why: '', because: codes },
    saidWith: { despite: [] },
  }));
}
