// What a part rings: the end of its surface's life; flash-off at its least and, still waiting, at its most; the recoat
// window; when the oven should have warmed it; the cure and its stages.

import { partStream } from '../ids.ts';
import type { AirLog } from '../place/place.ts';
import type { Sheet } from '../products/sheet.ts';
import type { ReminderKind, Wish } from '../reminders/wanted-reminder.ts';
import { type EpochMs, epochMs, minutes, minutesAfter } from '../units.ts';
import { heatUp } from './heat-up.ts';
import { type Coat, type Cure, type Part, phaseOfPart } from './part.ts';
import { cureDueAt, flashTimes, recoatTimes, stagesDue } from './part-clocks.ts';
import { earliestSurfaceEnd } from './surface-life.ts';

/** Time to mix and coat again before the window closes. */
const recoatNotice = minutes(120);

/** Time to mix and coat before the surface's life is over. */
export const surfaceNotice = minutes(30);

/** `atHand`: whose life of a prepared surface counts before a coat says which sheet does. */
export function partWishes(
  part: Part,
  sheet: Sheet | undefined,
  air: AirLog,
  atHand: readonly Sheet[],
): readonly Wish[] {
  const phase = phaseOfPart(part);
  if (phase.is === 'bare') return surfaceWishes(part, air, atHand);
  if (sheet === undefined) return [];
  switch (phase.is) {
    case 'cured':
    case 'released':
      return [];
    case 'flashing': {
      const { leastAt, mostAt } = flashTimes(sheet, phase.coat.at);
      const to = phase.coat.by;
      return [
        wish(part, 'flash-least', leastAt, to),
        wish(part, 'flash-most', mostAt, to),
        ...recoatWishes(part, sheet, phase.coat),
      ];
    }
    case 'dry': {
      const { leastAt } = flashTimes(sheet, phase.coat.at);
      const waits = phase.dryAt < leastAt ? [wish(part, 'flash-least', leastAt, phase.coat.by)] : [];
      return [...waits, ...recoatWishes(part, sheet, phase.coat)];
    }
    case 'curing': {
      return [...cureWishes(part, sheet, air, phase.cure), ...recoatWishes(part, sheet, phase.coat)];
    }
  }
}

function surfaceWishes(part: Part, air: AirLog, atHand: readonly Sheet[]): readonly Wish[] {
  const end = earliestSurfaceEnd(part, atHand, air);
  if (end === undefined || part.prepared === undefined) return [];
  const { at, by } = part.prepared;
  const dueAt = epochMs(Math.max(at, minutesAfter(end.at, minutes(-surfaceNotice))));
  return [wish(part, 'surface-ends', dueAt, by)];
}

function cureWishes(part: Part, sheet: Sheet, air: AirLog, cure: Cure): readonly Wish[] {
  const to = cure.entry.by;
  const dueAt = cureDueAt(part, sheet, air);
  const warmAt = heatUp(part, sheet, air)?.reachesAt;
  return [
    ...(warmAt === undefined ? [] : [wish(part, 'temp-due', warmAt, to)]),
    ...stagesDue(part, sheet, air, cure.run.from).map(({ stage, at }) => wish(part, `stage-${stage}`, at, to)),
    ...(dueAt === undefined ? [] : [wish(part, 'cure-done', dueAt, to)]),
  ];
}

function recoatWishes(part: Part, sheet: Sheet, coat: Coat): readonly Wish[] {
  const times = recoatTimes(sheet, coat);
  if (times === undefined) return [];
  return [
    wish(part, 'recoat-opens', times.opensAt, coat.by),
    wish(part, 'recoat-closes', minutesAfter(times.closesAt, minutes(-recoatNotice)), coat.by),
  ];
}

function wish(part: Part, kind: ReminderKind, dueAt: EpochMs, to: string): Wish {
  const stream = partStream(part.name);
  return { kind, stream, key: `${stream}/${kind}`, dueAt, to: [to], critical: false };
}
