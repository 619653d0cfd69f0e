// The invented shift, played on the page or in a terminal alone.

import type { Flags } from '../config/config.ts';
import { demoCrew, demoNotice } from '../demo/demo-crew.ts';
import { type DemoLine, demoShift, demoShiftStart, demoSpeed } from '../demo/demo-shift.ts';
import { demoClock, playShift } from '../demo/play-shift.ts';
import type { Answer } from '../talk/answer.ts';
import { goToWork } from './at-work.ts';
import { complain, exitCodes, untilStopped } from './exit-codes.ts';
import { goOn } from './going-on.ts';
import type { Ground } from './ground.ts';

export async function runDemo(flags: Flags, ground: Ground): Promise<number> {
  const speed = flags.speed ?? demoSpeed;
  const clock = demoClock(demoShiftStart, speed);
  const withPage = flags.serve || !flags.terminal;
  const work = await goToWork({ flags, crewFile: demoCrew, ground, clock, withPage });
  const going = await goOn(work, speed, demoNotice);
  if ('fault' in going) return complain(going.fault);
  const stopping = new AbortController();
  const onLine = async ({ as, line }: DemoLine, answer: Answer | undefined) => {
    if (!flags.json) process.stdout.write(`${as}: ${line}\n`);
    if (answer !== undefined) await work.print(answer);
    going.wake();
  };
  const told = playShift({ host: work.host, clock, shift: demoShift, onLine, signal: stopping.signal });
  // Without a page and without anybody typing, the end of the shift is the end.
  const alone = withPage ? [] : [told];
  await Promise.race([untilStopped(), ...(process.stdin.isTTY ? [going.typed()] : alone)]);
  stopping.abort();
  await going.stop();
  return exitCodes.done;
}
