// Says a shift's lines at their times, by a clock that runs fast while it is told and at its own pace afterwards, so that
// whoever watches can go on by hand.

import { setTimeout } from 'node:timers/promises';
import type { Clock } from '../../core/ports.ts';
import { type EpochMs, epochMs, minutes, minutesAfter } from '../../core/units.ts';
import type { Answer } from '../talk/answer.ts';
import type { Host } from '../talk/host.ts';
import type { DemoLine } from './demo-shift.ts';

export interface DemoClock extends Clock {
  readonly start: EpochMs;
  readonly speed: number;
  /** From now on as fast as the wall's. */
  readonly slowDown: () => void;
}

/** `wall`: milliseconds that never go back. */
export function demoClock(start: EpochMs, speed: number, wall: () => number = () => performance.now()): DemoClock {
  let from = { at: start, wall: wall(), speed };
  const now = () => epochMs(from.at + Math.round((wall() - from.wall) * from.speed));
  return {
    now,
    start,
    speed,
    slowDown: () => {
      from = { at: now(), wall: wall(), speed: 1 };
    },
  };
}

interface Play {
  readonly host: Pick<Host, 'handle'>;
  readonly clock: DemoClock;
  readonly shift: readonly DemoLine[];
  readonly onLine: (line: DemoLine, answer: Answer | undefined) => unknown;
  readonly signal: AbortSignal;
}

/** Until the last line is said, or the signal ends it. */
export async function playShift({ host, clock, shift, onLine, signal }: Play): Promise<void> {
  for (const [i, line] of shift.entries()) {
    const at = minutesAfter(clock.start, minutes(line.afterMinutes));
    const wait = Math.max(0, (at - clock.now()) / clock.speed);
    await setTimeout(wait, undefined, { signal }).catch(() => undefined);
    if (signal.aborted) return;
    const id = `demo:${i}`;
    await onLine(line, await host.handle({ text: line.line, as: line.as, in: id, id }));
  }
  clock.slowDown();
}
