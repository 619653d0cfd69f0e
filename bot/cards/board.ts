// The board: everything that runs, with its clocks, the air and what rings next, as plain figures and words. Like a card
// it is neutral; whoever shows it loses nothing.

import { isFailed } from '../../core/failed.ts';
import { offeredSheets } from '../../core/products/shelf.ts';
import { plannedRings } from '../../core/reminders/plan.ts';
import { alarms } from '../../core/session/session-commands.ts';
import { liveBatches, liveCans, liveParts, openSessions, sheetFor } from '../../core/shop.ts';
import { statusOf } from '../../core/status.ts';
import { type EpochMs, epochMs, minutes, minutesBetween } from '../../core/units.ts';
import { unreadUnder } from '../../core/unread.ts';
import { type BoardAir, boardAir } from './board-air.ts';
import { batchOnBoard } from './board-batch.ts';
import { canOnBoard } from './board-can.ts';
import type { BoardItem } from './board-item.ts';
import { partOnBoard } from './board-part.ts';
import { sessionOnBoard } from './board-session.ts';
import type { CardAction } from './card.ts';
import type { Telling } from './card-context.ts';
import { ringTime } from './clock-text.ts';
import { alarmsOnBoard } from './open-alarm-lines.ts';
import { ringLabel } from './ring-label.ts';
import { byUrgency } from './urgency.ts';

export interface BoardRing {
  readonly key: string;
  readonly label: string;
  readonly at: string;
  readonly left: string;
  readonly late: boolean;
  readonly to: readonly string[];
}

export interface Board {
  readonly crew: string;
  /** That it is of practice and not of the shop. */
  readonly practice?: string;
  /** ISO 8601 with its offset: the moment that all of it shows. */
  readonly at: string;
  /** The wall clock of that moment. */
  readonly clock: string;
  /** Batches, parts, sessions, and cans with the lid off or in doubt: the most urgent first, whatever it is. */
  readonly items: readonly BoardItem[];
  readonly air: readonly BoardAir[];
  readonly rings: readonly BoardRing[];
  /** What can be started from nothing. */
  readonly quick: readonly CardAction[];
  /** One word each, for when somebody is in need. */
  readonly alarms: readonly CardAction[];
}

/** A digest rings by itself every day and tells nobody at the wall anything. */
const isForTheWall = (key: string): boolean => !key.startsWith('crew/');

export function makeBoard(telling: Telling): Board {
  const rings = plannedRings(telling.shop).filter(({ numberedKey }) => isForTheWall(numberedKey));
  return {
    crew: telling.shop.crew.name,
    at: telling.figures.iso(telling.now),
    clock: telling.figures.timeDown(telling.now),
    items: [
      ...alarmsOnBoard(telling),
      ...[
        ...liveBatches(telling.shop).map((batch) => batchOnBoard(telling, batch)),
        ...liveCans(telling.shop).flatMap((can) => canOnBoard(telling, can)),
        ...openSessions(telling.shop).map((session) => sessionOnBoard(telling, session)),
        ...statusOf.parts(telling, liveParts(telling.shop)).map((status) => partOnBoard(telling, status)),
      ]
        .map((item) => ifItReads(telling, item))
        .sort(byUrgency),
    ],
    air: boardAir(telling),
    rings: rings.map(({ numberedKey, dueAt, to }) => ({
      key: numberedKey,
      label: ringLabel(telling, numberedKey),
      at: ringTime(telling, numberedKey, dueAt),
      ...dueIn(telling, dueAt),
      to,
    })),
    quick: quickTaps(telling),
    alarms: alarms.map((verb) => ({
      id: `alarm-${verb}`,
      label: telling.words.session.troubles[verb].title,
      line: verb === 'hot' ? 'hot-pot' : verb,
    })),
  };
}

/** What is left of it would show as if it were whole. */
function ifItReads(telling: Telling, item: BoardItem): BoardItem {
  const [event] = unreadUnder(telling.shop, item.id);
  if (event === undefined) return item;
  const { seq, type, stream } = event;
  return { ...item, phase: telling.words.replies.unread(seq, type, stream), tone: 'stop', clocks: [], taps: [] };
}

function dueIn(telling: Telling, dueAt: EpochMs): Pick<BoardRing, 'left' | 'late'> {
  const { page } = telling.words;
  const late = minutesBetween(dueAt, telling.now);
  if (late >= 1) return { left: page.lateFor(late, telling.figures), late: true };
  const wait = minutes(Math.max(0, minutesBetween(telling.now, epochMs(dueAt))));
  return { left: wait < 1 ? page.dueNow : page.inTime(wait, telling.figures), late: false };
}

function quickTaps(telling: Telling): readonly CardAction[] {
  const { quick } = telling.words.page;
  return [
    { id: 'air', label: quick.air, line: 'air {air-temperature}C {humidity}%' },
    ...mixTaps(telling),
    { id: 'plan', label: quick.plan, line: 'plan {part-count} x {area-each}m2 {method}' },
    { id: 'now', label: quick.now, line: 'now' },
    { id: 'day', label: quick.day, line: 'day' },
    { id: 'help', label: quick.help, line: 'help' },
  ];
}

/** Beyond so many it is asked after the amount. */
const mostSheetTaps = 4;

/** One; where no product is the usual one, one for each. */
export function mixTaps(telling: Telling): readonly CardAction[] {
  const { mix } = telling.words.page.quick;
  const meant = sheetFor(telling.shop);
  const ids = isFailed(meant) ? offeredSheets(telling.shop.shelf) : [];
  if (ids.length === 0 || ids.length > mostSheetTaps) return [{ id: 'mix', label: mix, line: 'mix {amount}kg' }];
  return ids.map((id) => ({ id: `mix-${id}`, label: `${mix} ${id}`, line: `mix {amount}kg ${id}` }));
}
