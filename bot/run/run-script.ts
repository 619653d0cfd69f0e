// A script on standard input, run to its end.

import { createInterface } from 'node:readline';
import type { CrewFile } from '../../core/crew/crew.ts';
import { epochMs } from '../../core/units.ts';
import type { Flags } from '../config/config.ts';
import { ringUntil, runScript } from '../terminal/script.ts';
import { virtualClock } from '../time/clocks.ts';
import { exitCodes } from './exit-codes.ts';
import type { OpenedRecord } from './open-record.ts';
import { startCrew } from './start-crew.ts';

export async function runAsScript(
  flags: Flags,
  crewFile: CrewFile,
  opened: OpenedRecord,
  start?: number,
): Promise<number> {
  const clock = virtualClock(epochMs(start ?? Date.now()));
  const { terminal, wired, print, couldRecord } = await startCrew({ flags, crewFile, opened, clock, withPage: false });
  const { ringer } = wired;
  // What came due while nothing ran rings before the first line.
  await ringUntil(clock.now(), ringer, clock);
  const lines = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  await runScript(lines, { terminal, ringer, clock, print });
  opened.store.close();
  if (!couldRecord()) return exitCodes.cannotWrite;
  return opened.hasSheetFaults ? exitCodes.badFlagOrSheet : exitCodes.done;
}
