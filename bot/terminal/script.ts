// A script on standard input: one line, one act, one answer, then what rings. Time stands still but for `wait`, and runs
// to its end.

import type { Ringer } from '../../core/reminders/run.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Answer } from '../talk/answer.ts';
import type { VirtualClock } from '../time/clocks.ts';
import { listsJoined } from './lists-joined.ts';
import type { Terminal } from './terminal.ts';

export interface ScriptDeps {
  readonly terminal: Terminal;
  readonly ringer: Ringer;
  readonly clock: VirtualClock;
  readonly print: (answer: Answer) => void | Promise<void>;
}

export async function runScript(lines: AsyncIterable<string>, deps: ScriptDeps): Promise<void> {
  const { terminal, ringer, clock, print } = deps;
  for await (const { text, number } of listsJoined(lines, terminal.hearing)) {
    const { answer, waitUntil } = await terminal.say(text, number);
    if (answer !== undefined) await print(answer);
    await ringUntil(waitUntil ?? clock.now(), ringer, clock);
  }
}

/** Moves from due time to due time, so that each bell rings at its own. */
export async function ringUntil(until: EpochMs, ringer: Ringer, clock: VirtualClock): Promise<void> {
  for (;;) {
    await ringer.ringDue();
    const due = await ringer.nextDueAt();
    if (due === undefined || due > until || due <= clock.now()) break;
    clock.moveTo(due);
  }
  clock.moveTo(until);
}
