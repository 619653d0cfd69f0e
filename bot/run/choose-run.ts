// Reads the flags and the crew's file, and chooses how Batchbell runs. Ends with 0 when done, 2 for a bad flag or sheet, 3
// when the record cannot be written.

import { readFileSync } from 'node:fs';
import type { CrewFile } from '../../core/crew/crew.ts';
import { type Failed, isFailed } from '../../core/failed.ts';
import { clockFault, type Flags, readCrew, readFlags } from '../config/config.ts';
import { usage } from '../config/usage.ts';
import { demoCrew } from '../demo/demo-crew.ts';
import { readSlackSettings } from '../slack/slack-settings.ts';
import { complain, exitCodes } from './exit-codes.ts';
import { openRecord } from './open-record.ts';
import { namedStart } from './run-clock.ts';
import { runDemo } from './run-demo.ts';
import { runAsScript } from './run-script.ts';
import { runInSlack } from './run-slack.ts';
import { runServed, runTyped } from './run-typed.ts';

export async function chooseRun(args: readonly string[]): Promise<number> {
  const flags = readFlags(args, process.env);
  if (isFailed(flags)) return complain(flags.failed);
  if (flags.help) {
    process.stdout.write(usage);
    return exitCodes.done;
  }
  const slack = flags.serve ? readSlackSettings(process.env) : undefined;
  if (slack !== undefined) return isFailed(slack) ? complain(slack.failed) : runInSlack(slack, flags);

  const crewFile = flags.demo ? demoCrew : readCrewFile(flags);
  if (isFailed(crewFile)) return complain(crewFile.failed);
  const how = howItRuns(flags);
  if (how === 'script' && flags.speed !== undefined) {
    return complain('--speed: a script has its own time; say wait');
  }
  const badClock = clockFault(flags, crewFile.zone);
  if (badClock !== undefined) return complain(badClock.failed);
  const start = namedStart(flags, crewFile.zone);
  const opened = openRecord(flags, how === 'script' || how === 'demo');
  if (isFailed(opened)) return opened.failed;
  switch (how) {
    case 'script':
      return runAsScript(flags, crewFile, opened, start);
    case 'typed':
      return runTyped(flags, crewFile, opened, start);
    case 'served':
      return runServed(flags, crewFile, opened, start);
    case 'demo':
      return runDemo(flags, opened);
    default: {
      const never: never = how;
      return never;
    }
  }
}

function howItRuns(flags: Flags): 'script' | 'typed' | 'served' | 'demo' {
  if (flags.demo) return 'demo';
  // A service has nobody at its keyboard: what it is given on standard input is no script.
  if (flags.serve) return 'served';
  return process.stdin.isTTY ? 'typed' : 'script';
}

function readCrewFile(flags: Flags): CrewFile | Failed<string> {
  if (flags.crew === undefined) return readCrew(undefined, undefined, flags);
  try {
    return readCrew(flags.crew, readFileSync(flags.crew, 'utf8'), flags);
  } catch (error) {
    return { failed: `--crew: ${error instanceof Error ? error.message : String(error)}` };
  }
}
