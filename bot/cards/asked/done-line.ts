// One act of the record in a line: when, who, what; and what an act is called.

import type { Verb } from '../../../core/commands.ts';
import { type Entry, isLate } from '../../../core/history.ts';
import { minutesBetween } from '../../../core/units.ts';
import { firstUpper } from '../../language/first-upper.ts';
import type { Telling } from '../card-context.ts';

export function doneLine({ words, figures }: Telling, entry: Entry): string {
  const { happenedAt, recordedAt, by, fact } = entry;
  const late = isLate(entry) ? minutesBetween(happenedAt, recordedAt) : undefined;
  return words.records.step(happenedAt, by, words.fact(fact, figures), late, figures);
}

export const actCalled = (telling: Telling, act: Verb): string =>
  firstUpper(telling.words.lineShown(act, telling.figures));
