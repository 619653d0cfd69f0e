// What a part rings: the end of its surface's life; flash-off at its least and, still waiting, at its most; the recoat
// window; when the oven should have warmed it; the cure and its stages.

import { partStream } from '../ids.ts';
import type { AirLog } from '../place/place.ts';
import type { Sheet } from '../products/sheet.ts';
import { type EpochMs, epochMs, minutes, minutesAfter } from '../units.ts';
import { type Reminder, type ReminderKind, remind } from '../wanted-reminder.ts';
import { heatUp } from './heat-up.ts';
import { awaitsFirstCoat, type Coat, type Cure, type Part, phaseOfPart } from './part.ts';
import { cureDueAt, flashTimes, recoatTimes, stagesDue } from './part-clocks.ts';
import { earliestSurfaceEnd } from './surface-life.ts';

/** Time to mix and coat again before the window closes. */
const recoatNotice = minutes(120);

/** Time to mix and coat before the surface's life is over. */
export const surfaceNotice = minutes(30);

/** `atHand`: whose life of a prepared surface counts before a coat says which sheet does. */
export function partReminders(
  part: Part,
  sheet: Sheet | undefined,
  air: AirLog,
  atHand: readonly Sheet[],
): readonly Reminder[] {
  const phase = phaseOfPart(part);
  if (awaitsFirstCoat(phase)) return surfaceReminders(part, air, atHand);
  if (sheet === undefined) return [];
  switch (phase.is) {
    case 'cured':
    case 'released':
    case 'left':
    case 'scrapped':
    case 'returned':
    case 'bare':
    case 'rework':
      return [];
    case 'flashing': {
      const { leastAt, mostAt } = flashTimes(sheet, phase.coat.at);
      const to = phase.coat.by;
      return [
        reminder(part, 'flash-least', leastAt, to),
        reminder(part, 'flash-most', mostAt, to),
        ...recoatReminders(part, sheet, phase.coat),
      ];
    }
    case 'dry': {
      const { leastAt } = flashTimes(sheet, phase.coat.at);
      const waits = phase.dryAt < leastAt ? [reminder(part, 'flash-least', leastAt, phase.coat.by)] : [];
      return [...waits, ...recoatReminders(part, sheet, phase.coat)];
    }
    case 'curing': {
      return [...cureReminders(part, sheet, air, phase.cure), ...recoatReminders(part, sheet, phase.coat)];
    }
  }
}

function surfaceReminders(part: Part, air: AirLog, atHand: readonly Sheet[]): readonly Reminder[] {
  const end = earliestSurfaceEnd(part, atHand, air);
  if (end === undefined || part.prepared === undefined) return [];
  const { at, by } = part.prepared;
  const dueAt = epochMs(Math.max(at, minutesAfter(end.at, minutes(-surfaceNotice))));
  return [reminder(part, 'surface-ends', dueAt, by)];
}

function cureReminders(part: Part, sheet: Sheet, air: AirLog, cure: Cure): readonly Reminder[] {
  const to = cure.entry.by;
  const dueAt = cureDueAt(part, sheet, air);
  const warmAt = heatUp(part, sheet, air)?.reachesAt;
  return [
    ...(warmAt === undefined ? [] : [reminder(part, 'temp-due', warmAt, to)]),
    ...stagesDue(part, sheet, air, cure.run.from).map(({ stage, at }) => reminder(part, `stage-${stage}`, at, to)),
    ...(dueAt === undefined ? [] : [reminder(part, 'cure-done', dueAt, to)]),
  ];
}

function recoatReminders(part: Part, sheet: Sheet, coat: Coat): readonly Reminder[] {
  const times = recoatTimes(sheet, coat);
  if (times === undefined) return [];
  return [
    reminder(part, 'recoat-opens', times.opensAt, coat.by),
    reminder(part, 'recoat-closes', minutesAfter(times.closesAt, minutes(-recoatNotice)), coat.by),
  ];
}

function reminder({ name }: Part, kind: ReminderKind, dueAt: EpochMs, to: string): Reminder {
  return remind(partStream(name), kind, dueAt, [to]);
}
