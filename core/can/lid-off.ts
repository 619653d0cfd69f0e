// The lid of a can comes off: said so, or by what is then done with the can.

import type { NewEvent, SaidWith } from '../history.ts';
import { canStream } from '../ids.ts';
import { known } from '../known.ts';
import type { EpochMs } from '../units.ts';
import type { Handling } from '../verbs/said.ts';
import { type Can, isGasSensitive } from './can.ts';
import { wasOpenedFirst } from './can-rules.ts';

export function lidOff(can: Can, handling: Handling | undefined, happenedAt: EpochMs, saidWith: SaidWith): NewEvent {
  const body = { type: 'LidOff' as const, ...known({ handling }) };
  return { streams: [canStream(can.number)], happenedAt, body, saidWith };
}

/** What is done with a shut can says that its lid came off first; of an open one, only what is at hand may be news. */
export function lidOffBefore(
  can: Can,
  handling: Handling | undefined,
  happenedAt: EpochMs,
  saidWith: SaidWith,
): readonly NewEvent[] {
  const isNews = isGasSensitive(can) && handling !== undefined && handling !== can.handling;
  return wasOpenedFirst(can) || isNews ? [lidOff(can, handling, happenedAt, saidWith)] : [];
}
