// What a correction changed, in words: what stood there and what stands now. Where only the time moved, the act is said
// once and the times tell.

import { undoWhy } from '../../core/corrections/undo.ts';
import type { Correction, Entry, Fact } from '../../core/history.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Telling } from './card-context.ts';

export interface Version {
  readonly fact: Fact;
  readonly happenedAt: EpochMs;
}

export interface WasAndIs {
  readonly was: string;
  readonly is: string;
}

export function wasAndIs(telling: Telling, before: Version, after: Version): WasAndIs {
  const was = telling.words.fact(before.fact, telling.figures);
  const is = telling.words.fact(after.fact, telling.figures);
  const wasAt = telling.figures.timeDown(before.happenedAt);
  const isAt = telling.figures.timeDown(after.happenedAt);
  if (wasAt === isAt) return { was, is };
  return was === is ? { was: `${was}, ${wasAt}`, is: isAt } : { was: `${was}, ${wasAt}`, is: `${is}, ${isAt}` };
}

/** Of one of an entry's corrections: up to the next one, or as the entry stands now. */
export function changedBy(telling: Telling, entry: Entry, correction: Correction): WasAndIs {
  const next = entry.corrections[entry.corrections.indexOf(correction) + 1];
  const after = next === undefined ? entry : { fact: next.wasFact, happenedAt: next.wasAt };
  return wasAndIs(telling, { fact: correction.wasFact, happenedAt: correction.wasAt }, after);
}

/** As it is told: the reason of what an undo corrected is the record's own word. */
export const asTold = <Told extends Pick<Correction, 'why'>>({ words }: Telling, correction: Told): Told => ({
  ...correction,
  why: correction.why === undoWhy ? words.undo.asReason : correction.why,
});
