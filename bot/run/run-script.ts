// A script on standard input, run to its end.

import { createInterface } from 'node:readline';
import type { CrewFile } from '../../core/crew/crew.ts';
import { epochMs } from '../../core/units.ts';
import type { Flags } from '../config/config.ts';
import { ringUntil, runScript } from '../terminal/script.ts';
import { virtualClock } from '../time/clocks.ts';
import { goToWork } from './at-work.ts';
import { exitCodes } from './exit-codes.ts';
import type { Ground } from './ground.ts';

export async function runAsScript(flags: Flags, crewFile: CrewFile, ground: Ground, start?: number): Promise<number> {
  const clock = virtualClock(epochMs(start ?? Date.now()));
  const { terminal, wired, print, couldRecord } = await goToWork({ flags, crewFile, ground, clock, withPage: false });
  const { ringer } = wired;
  // What came due while nothing ran rings before the first line.
  await ringUntil(clock.now(), ringer, clock);
  const lines = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  await runScript(lines, { terminal, ringer, clock, print });
  ground.store.close();
  if (!couldRecord()) return exitCodes.cannotWrite;
  return ground.hasSheetFaults ? exitCodes.badFlagOrSheet : exitCodes.done;
}
