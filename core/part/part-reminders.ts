// What a part rings: flash-off at its least and, still waiting, at its most; the recoat window; the cure.

import type { TemperatureLog } from '../calc/clock.ts';
import { partStream } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import type { ReminderKind, Wish } from '../reminders/wish.ts';
import { type EpochMs, minutes, minutesAfter } from '../units.ts';
import { type Part, phaseOfPart } from './part.ts';
import { cureDueAt, flashTimes } from './part-clocks.ts';

/** Time to mix and coat again before the window closes. */
const recoatNotice = minutes(120);

export function partWishes(part: Part, sheet: Sheet | undefined, air: TemperatureLog): readonly Wish[] {
  if (sheet === undefined) return [];
  const phase = phaseOfPart(part);
  switch (phase.is) {
    case 'bare':
    case 'cured':
    case 'released':
      return [];
    case 'flashing': {
      const { leastAt, mostAt } = flashTimes(sheet, phase.coat.at);
      const to = phase.coat.by;
      return [
        wish(part, 'flash-least', leastAt, to),
        wish(part, 'flash-most', mostAt, to),
        ...recoatWishes(part, sheet, phase.coat.at, to),
      ];
    }
    case 'dry': {
      const { leastAt } = flashTimes(sheet, phase.coat.at);
      const waits = phase.dryAt < leastAt ? [wish(part, 'flash-least', leastAt, phase.coat.by)] : [];
      return [...waits, ...recoatWishes(part, sheet, phase.coat.at, phase.coat.by)];
    }
    case 'curing': {
      const dueAt = cureDueAt(part, sheet, air);
      const done = dueAt === undefined ? [] : [wish(part, 'cure-done', dueAt, phase.cure.entry.by)];
      return [...done, ...recoatWishes(part, sheet, phase.coat.at, phase.coat.by)];
    }
  }
}

function recoatWishes(part: Part, sheet: Sheet, coatedAt: EpochMs, to: string): readonly Wish[] {
  if (sheet.recoat.rule !== 'window') return [];
  const closesAt = minutesAfter(coatedAt, sheet.recoat.closesMinutes);
  return [
    wish(part, 'recoat-opens', minutesAfter(coatedAt, sheet.recoat.opensMinutes), to),
    wish(part, 'recoat-closes', minutesAfter(closesAt, minutes(-recoatNotice)), to),
  ];
}

function wish(part: Part, kind: ReminderKind, dueAt: EpochMs, to: string): Wish {
  const stream = partStream(part.name);
  return { kind, stream, key: `${stream}/${kind}`, dueAt, to: [to], critical: false };
}
