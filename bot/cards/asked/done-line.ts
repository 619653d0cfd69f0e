// One act of the record in a line: when, who, what.

import { type Entry, isLate } from '../../../core/history.ts';
import { minutesBetween } from '../../../core/units.ts';
import type { Telling } from '../card-context.ts';

export function doneLine({ words, figures }: Telling, entry: Entry): string {
  const { happenedAt, recordedAt, by, fact } = entry;
  const late = isLate(entry) ? minutesBetween(happenedAt, recordedAt) : undefined;
  return words.records.step(happenedAt, by, words.fact(fact, figures), late, figures);
}
