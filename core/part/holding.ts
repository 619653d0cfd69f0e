// Which deviations of a coat or a cure hold the part by themselves, until a lead releases it: what they do to the film
// shows late or never.

import type { NewEvent, SaidWith } from '../history.ts';
import { type PartName, partStream } from '../ids.ts';
import type { ObjectionCode } from '../objections.ts';
import type { EpochMs } from '../units.ts';
import type { FailedReading } from './part-events.ts';

export const holdingCodes = [
  'past-pot-life',
  'pot-dead',
  'pot-empty',
  'not-weighed',
  'ratio-out',
  'blend-not-done',
  'not-filtered',
  'caught-not-filtered',
  'recoat-forbidden',
  'recoat-too-early',
  'recoat-too-late',
  'film-drying',
  'dip-once',
  'surface-life-over',
  'air-outside',
  'flash-off-not-over',
  'not-dry',
  'hotter-than-part-bears',
  'oven-outside-sheet',
  'no-such-cure',
  'film-outside',
  'adhesion-failed',
  'rubbed-through',
] as const satisfies readonly ObjectionCode[];

export type HoldingCode = (typeof holdingCodes)[number];

/** What a hold says of itself. */
export interface HoldTold {
  readonly why: string;
  readonly because: readonly HoldingCode[];
  readonly failed?: readonly FailedReading[] | undefined;
}

export function isHolding(code: string): code is HoldingCode {
  return holdingCodes.some((holding) => holding === code);
}

/** The hold that follows from what happened despite objections. Leave given beforehand holds nothing. */
export function holdAfter(part: PartName, happenedAt: EpochMs, saidWith: SaidWith): readonly NewEvent[] {
  const because = saidWith.despite.filter(isHolding);
  if (because.length === 0 || saidWith.permitted !== undefined) return [];
  const body = { type: 'PartHeld' as const, why: '', because };
  return [{ streams: [partStream(part)], happenedAt, body, saidWith: { despite: [] } }];
}
