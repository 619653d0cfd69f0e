// Somebody at a terminal, with or without the page beside it; or the page alone, as a service.

import type { CrewFile } from '../../core/crew/crew.ts';
import type { Flags } from '../config/config.ts';
import { goToWork } from './at-work.ts';
import { complain, exitCodes, untilStopped } from './exit-codes.ts';
import { goOn } from './going-on.ts';
import type { Ground } from './ground.ts';
import { clockFrom } from './run-clock.ts';

/** Until the terminal's input ends. */
export async function runTyped(flags: Flags, crewFile: CrewFile, ground: Ground, start?: number): Promise<number> {
  return run(flags, crewFile, ground, start, false);
}

/** A service goes on until it is told to stop; a page beside a terminal ends with it. */
export async function runServed(flags: Flags, crewFile: CrewFile, ground: Ground, start?: number): Promise<number> {
  return run(flags, crewFile, ground, start, true);
}

async function run(flags: Flags, crewFile: CrewFile, ground: Ground, start: number | undefined, withPage: boolean) {
  const clock = clockFrom(start, flags.speed);
  const work = await goToWork({ flags, crewFile, ground, clock, withPage });
  const going = await goOn(work, flags.speed ?? 1);
  if ('fault' in going) return complain(going.fault);
  await Promise.race([...(process.stdin.isTTY ? [going.typed()] : []), ...(withPage ? [untilStopped()] : [])]);
  await going.stop();
  return exitCodes.done;
}
