// What a batch was applied and mixed with, and what of it is still to be cleaned. What was sprayed in a session is cleaned
// in that session; of a sheet that does not ask for it nothing waits.

import type { Entry } from '../history.ts';
import { batchStream, nounOf, type PersonName } from '../ids.ts';
import { methodRows } from '../methods.ts';
import { type FirstCleaning, type FlushState, flushedBy } from '../session/flush-state.ts';
import { type Gear, isSessionGear } from '../session/session-commands.ts';
import type { EpochMs } from '../units.ts';
import type { Batch } from './batch.ts';

export interface GearUsed extends FlushState {
  readonly gear: Gear;
  readonly usedAt: EpochMs;
  readonly by: PersonName;
  /** Flushed with something since, if not with all of it. */
  readonly isBegun: boolean;
}

const isOfSession = ({ stream, alsoUnder }: Entry): boolean =>
  [stream, ...alsoUnder].some((each) => nounOf(each) === 'session');

/** Each gear once, as it was left by the last use of it. */
function gearUsed({ entries, sheet }: Pick<Batch, 'entries' | 'sheet'>): readonly GearUsed[] {
  const isSprayed = entries.some((entry) => entry.fact.type === 'CoatApplied' && isOfSession(entry));
  const used = new Map<Gear, Pick<GearUsed, 'usedAt' | 'by'>>();
  for (const entry of entries) {
    const gear = gearOf(entry, sheet.steps?.cleaning?.vessels === true);
    if (gear === undefined || (isSprayed && isSessionGear(gear))) continue;
    used.set(gear, { usedAt: entry.happenedAt, by: entry.by });
  }
  return [...used].map(([gear, last]) => {
    const since = entries.flatMap(({ fact, happenedAt }) =>
      fact.type === 'GearFlushed' && fact.gear === gear && happenedAt >= last.usedAt ? [fact] : [],
    );
    return { gear, ...last, ...flushedBy(sheet, since), isBegun: since.length > 0 };
  });
}

/** What an entry used, and left to be cleaned. */
function gearOf({ fact }: Entry, vesselsToo: boolean): Gear | undefined {
  if (fact.type === 'CoatApplied') return methodRows[fact.method].gear;
  return fact.type === 'PotEmptied' && vesselsToo ? 'vessels' : undefined;
}

/** The one that waits longest first. */
export const gearToClean = (batch: Batch): readonly GearUsed[] =>
  batch.sheet.steps?.cleaning === undefined
    ? []
    : gearUsed(batch)
        .filter(({ done }) => !done)
        .toSorted((a, b) => a.usedAt - b.usedAt);

export const gearKey = ({ number }: Batch, gear: Gear): string => `${batchStream(number)}/gear/${gear}`;

/** What rings: nobody is sent to a pot that may heat. */
export const gearThatRings = (batch: Batch): readonly GearUsed[] =>
  batch.thickened === undefined || batch.thickened.seen === 'thick' ? gearToClean(batch) : [];

/** Until each has rung: after that nobody waits for an empty pot. */
export const waitsForCleaning = (batch: Batch): boolean =>
  gearThatRings(batch).some(({ gear }) => !batch.rings.has(gearKey(batch, gear)));

/** Whether a cleaning at `at` is the first one since this gear was used, of a batch as it was before. */
export function firstCleaning(batch: Batch, gear: Gear, at: EpochMs): FirstCleaning | undefined {
  const used = gearToClean(batch).find((each) => each.gear === gear && !each.isBegun);
  return used && { sheet: batch.sheet, gear, restsFrom: used.usedAt, at };
}
