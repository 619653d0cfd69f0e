// The hold that follows from what deviated (core/part/holding-codes.ts says what holds).

import type { NewEvent, SaidWith } from '../history.ts';
import { type PartName, partStream } from '../ids.ts';
import type { ObjectionCode } from '../objections.ts';
import type { EpochMs } from '../units.ts';
import { type HoldingCode, holdingCodes } from './holding-codes.ts';

export function isHolding(code: string): code is HoldingCode {
  const codes: readonly ObjectionCode[] = holdingCodes;
  return codes.some((holding) => holding === code);
}

/** The hold that follows from what happened despite objections. Leave given beforehand holds nothing. */
export function holdAfter(part: PartName, happenedAt: EpochMs, saidWith: SaidWith): readonly NewEvent[] {
  const because = saidWith.despite.filter(isHolding);
  if (because.length === 0 || saidWith.permitted !== undefined) return [];
  const body = { type: 'PartHeld' as const, why: '', because };
  return [{ streams: [partStream(part)], happenedAt, body }];
}
