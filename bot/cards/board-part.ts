// A part on the board: flash-off, recoat window, cure.

import { isAct } from '../../core/history.ts';
import { partStream } from '../../core/ids.ts';
import { type Part, phaseOfPart } from '../../core/part/part.ts';
import { cureClock, cureDue, flashTimes, recoatTimes } from '../../core/part/part-clocks.ts';
import { surfaceNotice } from '../../core/part/part-reminders.ts';
import { earliestSurfaceEnd, sheetsAtHand } from '../../core/part/surface-life.ts';
import type { Sheet } from '../../core/products/sheet.ts';
import { airLog, batchOf } from '../../core/shop.ts';
import { minutes, minutesAfter } from '../../core/units.ts';
import { atLeastClock, atMostClock, type BoardClock, type BoardItem, passed, toneOfClocks } from './board-item.ts';
import type { Tone } from './card.ts';
import type { Telling } from './card-context.ts';
import { heldLines, partTaps } from './part-cards.ts';
import { mostUrgent, type Urgency } from './urgency.ts';

export function partOnBoard(t: Telling, part: Part): BoardItem {
  const phase = phaseOfPart(part).is;
  const sheet = batchOf(t.shop, part)?.sheet;
  const coated = sheet === undefined ? [] : [...flashOnBoard(t, part, sheet), ...cureOnBoard(t, part, sheet)];
  const clocks = [...surfaceOnBoard(t, part), ...coated];
  const [held = ''] = heldLines(t, part);
  return {
    id: partStream(part.name),
    name: part.name,
    what: [part.details.metal, part.details.serial].filter(Boolean).join(', '),
    phase: held === '' ? t.words.phases[phase] : held,
    tone: held === '' ? toneOf(phase, clocks) : 'warn',
    urgency: mostUrgent([held === '' ? ofPhase(phase) : { is: 'waits' }, ...clocks.map(({ urgency }) => urgency)]),
    clocks,
    taps: partTaps(t, part),
    lastAct: part.entries.findLast(isAct)?.seq ?? 0,
  };
}

function toneOf(phase: ReturnType<typeof phaseOfPart>['is'], clocks: readonly BoardClock[]): Tone {
  switch (phase) {
    case 'cured':
      return 'good';
    case 'bare':
    case 'flashing':
    case 'dry':
    case 'curing':
    case 'released':
      return toneOfClocks(clocks);
  }
}

function ofPhase(phase: ReturnType<typeof phaseOfPart>['is']): Urgency {
  switch (phase) {
    case 'dry':
    case 'cured':
      return { is: 'waits' };
    case 'bare':
    case 'flashing':
    case 'curing':
    case 'released':
      return { is: 'runs' };
  }
}

/** A prepared surface dies like a pot does: what waits to be coated before then is seen to first. */
function surfaceOnBoard(t: Telling, part: Part): readonly BoardClock[] {
  if (phaseOfPart(part).is !== 'bare' || part.prepared === undefined) return [];
  const end = earliestSurfaceEnd(part, sheetsAtHand(t.shop), airLog(t.shop, undefined));
  if (end === undefined) return [];
  const { at } = part.prepared;
  const nearAt = minutesAfter(end.at, minutes(-surfaceNotice));
  return [atMostClock(t, { id: 'surface', progress: passed(at, end.at, t.now), nearAt, endAt: end.at })];
}

function flashOnBoard(t: Telling, part: Part, sheet: Sheet): readonly BoardClock[] {
  const phase = phaseOfPart(part);
  if (phase.is !== 'flashing' && phase.is !== 'dry') return [];
  const { coat } = phase;
  const { leastAt, mostAt } = flashTimes(sheet, coat.at);
  const done = leastAt <= t.now;
  const least = atLeastClock(t, {
    id: 'flash',
    progress: passed(coat.at, leastAt, t.now),
    dueAt: leastAt,
    done,
    runs: true,
    noCredit: false,
  });
  const waits = phase.is === 'flashing' && done;
  const most = atMostClock(t, {
    id: 'flash-most',
    progress: passed(coat.at, mostAt, t.now),
    nearAt: leastAt,
    endAt: mostAt,
  });
  return [...(phase.is === 'dry' && done ? [] : [least]), ...(waits ? [most] : []), ...recoatOnBoard(t, part, sheet)];
}

function recoatOnBoard(t: Telling, part: Part, sheet: Sheet): readonly BoardClock[] {
  const coat = part.coats.at(-1);
  const times = coat && recoatTimes(sheet, coat);
  if (coat === undefined || times === undefined) return [];
  const { opensAt, closesAt } = times;
  if (t.now < opensAt) {
    return [
      atLeastClock(t, {
        id: 'recoat-opens',
        progress: passed(coat.at, opensAt, t.now),
        dueAt: opensAt,
        done: false,
        runs: true,
        noCredit: false,
      }),
    ];
  }
  return [
    atMostClock(t, {
      id: 'recoat-closes',
      progress: passed(opensAt, closesAt, t.now),
      nearAt: closesAt,
      endAt: closesAt,
    }),
  ];
}

function cureOnBoard(t: Telling, part: Part, sheet: Sheet): readonly BoardClock[] {
  const phase = phaseOfPart(part);
  if (phase.is !== 'curing') return [];
  const air = airLog(t.shop, batchOf(t.shop, part)?.place);
  const clock = cureClock(part, sheet, air, t.now);
  if (clock === undefined) return [];
  const due = cureDue(part, sheet, air);
  const shown = atLeastClock(t, {
    id: 'cure',
    progress: clock.dose.progress,
    dueAt: due?.at,
    done: clock.doneAt !== undefined && clock.doneAt <= t.now,
    runs: clock.running,
    noCredit: clock.withoutFigure !== undefined,
  });
  return [due?.basis === 'readings' ? shown : { ...shown, label: t.words.parts.notMeasured(shown.label) }];
}
