// A batch or part on the board, and one of its clocks: how far it is, when it ends, how urgent it is.

import type { StreamId } from '../../core/ids.ts';
import { type EpochMs, minutes, minutesBetween } from '../../core/units.ts';
import type { CardAction, Tone } from './card.ts';
import type { Telling } from './card-context.ts';
import type { Urgency } from './urgency.ts';

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

type ClockId = keyof Telling['words']['page']['clocks'];

interface AtLeast {
  readonly id: ClockId;
  readonly progress: number;
  readonly dueAt: EpochMs | undefined;
  /** Proved by the record, not only projected. */
  readonly done: boolean;
  readonly runs: boolean;
  /** The sheet has no figure for what is known now: it earns nothing. */
  readonly noCredit: boolean;
}

/** A clock that must last at least so long: shown late rather than early. */
export function atLeastClock(t: Telling, { id, progress, dueAt, done, runs, noCredit }: AtLeast): BoardClock {
  const { page } = t.words;
  const over = dueAt !== undefined && dueAt <= t.now;
  const waits = !runs || noCredit || over;
  const left = (): string => {
    if (done) return page.given;
    if (!runs) return page.stands;
    if (noCredit || over) return page.noFigureNow;
    return dueAt === undefined ? page.stands : page.left(t.f.minutesUp(minutesBetween(t.now, dueAt)));
  };
  return {
    id,
    label: page.clocks[id],
    // Full means done, and nothing else does.
    progress: done ? 1 : Math.min(0.99, Math.max(0, progress)),
    at: dueAt === undefined ? undefined : t.f.timeUp(dueAt),
    left: left(),
    tone: done ? 'good' : waits ? 'warn' : 'plain',
    urgency: done || waits ? { is: 'waits' } : { is: 'runs', ...(dueAt === undefined ? {} : { dueAt }) },
  };
}

interface AtMost {
  readonly id: ClockId;
  readonly progress: number;
  /** From here on it is urgent. */
  readonly nearAt: EpochMs;
  readonly endAt: EpochMs;
}

/** A clock that may last at most so long: shown early rather than late. */
export function atMostClock(t: Telling, { id, progress, nearAt, endAt }: AtMost): BoardClock {
  const { page } = t.words;
  const over = minutesBetween(endAt, t.now);
  const near = nearAt <= t.now;
  return {
    id,
    label: page.clocks[id],
    progress: over >= 0 ? 1 : Math.min(1, Math.max(0, progress)),
    at: t.f.timeDown(endAt),
    left: over >= 0 ? page.overFor(t.f.minutesDown(over)) : page.left(t.f.minutesDown(minutes(-over))),
    tone: over >= 0 ? 'stop' : near ? 'warn' : 'plain',
    urgency: { is: over >= 0 ? 'over' : near ? 'soon' : 'runs', endsAt: endAt },
  };
}

const tones: readonly Tone[] = ['stop', 'warn', 'good', 'plain'];

/** The most urgent of an item's clocks is its own tone. */
export function toneOfClocks(clocks: readonly BoardClock[]): Tone {
  return tones.find((tone) => clocks.some((clock) => clock.tone === tone)) ?? 'plain';
}

/** The share of a plain span that has passed. */
export function passed(from: EpochMs, to: EpochMs, now: EpochMs): number {
  return to <= from ? 1 : (now - from) / (to - from);
}
