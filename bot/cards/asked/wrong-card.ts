// What went wrong on a day: what was done against a rule, holds, alarms, near misses, dead pots, and bells that were late or
// that nobody answered. What was allowed beforehand is told as that.

import type { Entry, Fact } from '../../../core/history.ts';
import { nameIn, nounOf } from '../../../core/ids.ts';
import type { DayRecord } from '../../../core/records/day.ts';
import { type Card, makeCard } from '../card.ts';
import { type Telling, tap } from '../card-context.ts';
import { deviationLines } from '../deviation-lines.ts';
import { ringLabel } from '../ring-label.ts';
import { doneLine } from './done-line.ts';

const wrong: readonly Fact['type'][] = ['PartHeld', 'MixThickened', 'CanDiscarded', 'AlarmRaised', 'NearMissTold'];
/** Later than this, a ring was late. */
const onTimeMinutes = 1;
const mostTold = 10;

export function wrongCard(telling: Telling, day: DayRecord): Card {
  const { asked } = telling.words;
  const happened = day.entries
    .filter(({ fact }) => wrong.includes(fact.type))
    .map((entry) => entryLine(telling, entry));
  const late = day.rings.flatMap(({ key, lateMinutes }) =>
    lateMinutes > onTimeMinutes ? [asked.lateRing(ringLabel(telling, key), lateMinutes, telling.figures)] : [],
  );
  const unanswered = day.rings
    .filter(({ answered }) => !answered)
    .map(({ key }) => telling.words.replies.dayUnanswered(key, 1, telling.figures));
  const lines = [...deviationLines(telling, day.deviations), ...happened, ...late, ...new Set(unanswered)];
  const actions = [tap(telling, 'whole-day', 'day')];
  if (lines.length === 0) return makeCard(asked.nothingWrong, 'plain', { actions });
  return makeCard(asked.wrong(lines.length, telling.figures), 'warn', { lines: lines.slice(0, mostTold), actions });
}

const entryLine = (telling: Telling, entry: Entry): string =>
  nounOf(entry.stream) === 'part'
    ? telling.words.asked.titled(nameIn(entry.stream), doneLine(telling, entry))
    : doneLine(telling, entry);
