// Why a bell rings again, as a line of its card.

import { isFor } from '../../core/event-readers.ts';
import { type Fact, isAct, lastSeqOf } from '../../core/history.ts';
import { nounOf } from '../../core/ids.ts';
import type { RingingReminder } from '../../core/ports.ts';
import { nounsIn } from '../../core/shop.ts';
import { minutesAfter } from '../../core/units.ts';
import type { ReminderKind } from '../../core/wanted-reminder.ts';
import type { Telling } from './card-context.ts';

/** Again, since somebody put it off, nobody answered, or its time has moved. */
export function againLines(telling: Telling, { reminder, shop }: RingingReminder): readonly string[] {
  const noun = nounsIn(shop).find(({ stream }) => stream === reminder.stream)?.noun;
  const before = noun?.rings.get(reminder.key)?.at(-1);
  const { parts, replies } = telling.words;
  if (noun === undefined || before === undefined) return [];
  const { snoozed } = before;
  if (snoozed !== undefined && Math.round(snoozed.until) === reminder.dueAt) return [parts.ringPutOff(reminder.ring)];
  const acts = noun.entries.filter((entry) => isAct(entry) && !isFor('aside', entry.fact));
  const acted = acts.some((entry) => lastSeqOf(entry) > before.seq);
  // The time at which the plan goes on to others; a time that moved falls elsewhere.
  const goesOnAt = Math.round(minutesAfter(before.rangAt, shop.crew.escalationMinutes));
  const unheard = before.answered === undefined && !acted;
  if (unheard && reminder.dueAt === goesOnAt) return [replies.ringAgain(reminder.ring)];
  // The next reading of the air, the next spell of a session and the next coat ring for something new.
  const runsOneClock = nounOf(reminder.stream) === 'batch' || nounOf(reminder.stream) === 'part';
  const anew =
    beginsByItself.has(reminder.kind) || acts.some(({ seq, fact }) => seq > before.seq && beginsAnew.has(fact.type));
  return runsOneClock && !anew ? [replies.ringMoved] : [];
}

/** Each of these stands for something new: another stop, a lid off again. */
const beginsByItself: ReadonlySet<ReminderKind> = new Set(['stir-paused', 'uncovered']);

const beginsAnew: ReadonlySet<Fact['type']> = new Set([
  'PartsWeighed',
  'SurfacePrepared',
  'CoatApplied',
  'CureStarted',
]);
