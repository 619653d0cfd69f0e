// A batch or part on the board, and one of its clocks: how far it is, when it ends, how urgent it is.

import type { StreamId } from '../../core/ids.ts';
import type { NounClock } from '../../core/noun-clock.ts';
import { minutes, minutesBetween } from '../../core/units.ts';
import type { CardAction, Tone } from './card.ts';
import type { Telling } from './card-context.ts';
import { timeShown } from './clock-text.ts';
import { toneOf, type Urgency, urgencyOf } from './urgency.ts';

export interface BoardClock {
  readonly id: string;
  readonly label: string;
  /** 0 at its start, 1 at its end; never past either. */
  readonly progress: number;
  /** When it ends, as people read it; `undefined` while nobody knows. */
  readonly at: string | undefined;
  /** What is left of it, or for how long it has been over. */
  readonly left: string;
  readonly tone: Tone;
  readonly urgency: Urgency;
}

export interface BoardItem {
  /** As its stream: `batch/1`. */
  readonly id: StreamId;
  readonly name: string;
  readonly what: string;
  readonly phase: string;
  readonly tone: Tone;
  readonly urgency: Urgency;
  readonly clocks: readonly BoardClock[];
  readonly taps: readonly CardAction[];
  /** Of the last act on a part: what is decided on an older one is asked about. */
  readonly lastAct?: number;
}

/** Those that have a label on the board. */
export type BoardClockId = keyof Telling['words']['page']['clocks'];

export function clockOnBoard(telling: Telling, clock: NounClock<BoardClockId>): BoardClock {
  const { id, progress, dueAt } = clock;
  const label = telling.words.page.clocks[id];
  const urgency = urgencyOf(clock, telling.now);
  return {
    id,
    label: clock.errs === 'at-least' && clock.assumed ? telling.words.parts.notMeasured(label) : label,
    progress,
    at: dueAt === undefined ? undefined : timeShown(telling, { errs: clock.errs, dueAt }),
    left: leftOf(telling, clock),
    tone: toneOf(urgency),
    urgency,
  };
}

function leftOf(telling: Telling, clock: NounClock): string {
  const { page } = telling.words;
  if (clock.errs === 'at-most') {
    const over = minutesBetween(clock.dueAt, telling.now);
    return over >= 0 ? page.overFor(over, telling.figures) : page.left(minutes(-over), 'down', telling.figures);
  }
  switch (clock.goes) {
    case 'given':
      return page.given;
    case 'stands':
      return page.stands;
    case 'unproved':
      return page.noFigureNow;
    case 'runs':
      return page.left(minutesBetween(telling.now, clock.dueAt), 'up', telling.figures);
  }
}
