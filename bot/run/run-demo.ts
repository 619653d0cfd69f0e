// The invented shift, played on the page or in a terminal alone.

import { isFailed } from '../../core/failed.ts';
import type { Flags } from '../config/config.ts';
import { demoCrew, demoNotice } from '../demo/demo-crew.ts';
import { type DemoLine, demoShift, demoShiftStart, demoSpeed } from '../demo/demo-shift.ts';
import { demoClock, playShift } from '../demo/play-shift.ts';
import type { Answer } from '../talk/answer.ts';
import { startBellsAndPage } from './bells-and-page.ts';
import { complain, exitCodes, untilStopped } from './exit-codes.ts';
import type { OpenedRecord } from './open-record.ts';
import { startCrew } from './start-crew.ts';

export async function runDemo(flags: Flags, opened: OpenedRecord): Promise<number> {
  const speed = flags.speed ?? demoSpeed;
  const clock = demoClock(demoShiftStart, speed);
  const withPage = flags.serve || !flags.terminal;
  const started = await startCrew({ flags, crewFile: demoCrew, opened, clock, withPage });
  const running = await startBellsAndPage(started, speed, demoNotice);
  if (isFailed(running)) return complain(running.failed);
  const stopping = new AbortController();
  const onLine = async ({ as, line }: DemoLine, answer: Answer | undefined) => {
    if (!flags.json) process.stdout.write(`${as}: ${line}\n`);
    if (answer !== undefined) await started.print(answer);
    running.wake();
  };
  const told = playShift({ host: started.host, clock, shift: demoShift, onLine, signal: stopping.signal });
  // Without a page and without anybody typing, the end of the shift is the end.
  const alone = withPage ? [] : [told];
  await Promise.race([untilStopped(), ...(process.stdin.isTTY ? [running.typed()] : alone)]);
  stopping.abort();
  await running.stop();
  return exitCodes.done;
}
