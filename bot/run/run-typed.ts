// Somebody at a terminal, with or without the page beside it; or the page alone, as a service.

import type { CrewFile } from '../../core/crew/crew.ts';
import { isFailed } from '../../core/failed.ts';
import type { Flags } from '../config/config.ts';
import { startBellsAndPage } from './bells-and-page.ts';
import { complain, exitCodes, untilStopped } from './exit-codes.ts';
import type { OpenedRecord } from './open-record.ts';
import { clockFrom } from './run-clock.ts';
import { startCrew } from './start-crew.ts';

/** Until the terminal's input ends. */
export async function runTyped(
  flags: Flags,
  crewFile: CrewFile,
  opened: OpenedRecord,
  start?: number,
): Promise<number> {
  return run(flags, crewFile, opened, start, false);
}

/** A service goes on until it is told to stop; a page beside a terminal ends with it. */
export async function runServed(
  flags: Flags,
  crewFile: CrewFile,
  opened: OpenedRecord,
  start?: number,
): Promise<number> {
  return run(flags, crewFile, opened, start, true);
}

async function run(
  flags: Flags,
  crewFile: CrewFile,
  opened: OpenedRecord,
  start: number | undefined,
  withPage: boolean,
) {
  const clock = clockFrom(start, flags.speed);
  const started = await startCrew({ flags, crewFile, opened, clock, withPage });
  const running = await startBellsAndPage(started, flags.speed ?? 1);
  if (isFailed(running)) return complain(running.failed);
  await Promise.race([...(process.stdin.isTTY ? [running.typed()] : []), ...(withPage ? [untilStopped()] : [])]);
  await running.stop();
  return exitCodes.done;
}
