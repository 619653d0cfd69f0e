// Starts Batchbell: reads flags and files, opens the record, wires one crew, and gives it a terminal. Alone in
// constructing things. Ends with 0 when done, 2 for a bad flag or sheet, 3 when the record cannot be written.

import { mkdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { DateTime } from 'luxon';
import type { Clock, Store } from '../core/ports.ts';
import { lockData } from '../core/store/data-lock.ts';
import { faultsOf, readSheetFolders } from '../core/store/sheet-files.ts';
import { openSqliteStore } from '../core/store/sqlite-store.ts';
import { epochMs } from '../core/units.ts';
import { fastClock, virtualClock, wallClock } from './clocks.ts';
import { type ConfigFault, type Flags, readCrew, readEnvironment, readFlags } from './config.ts';
import { stderrLog } from './log.ts';
import { converse } from './terminal/interactive.ts';
import { printJson, printPlain } from './terminal/output.ts';
import { runScript } from './terminal/script.ts';
import { createTerminal } from './terminal/terminal.ts';
import { startTicker } from './ticker.ts';
import { wire } from './wiring.ts';

const exitCodes = { done: 0, badFlagOrSheet: 2, cannotWrite: 3 } as const;

// A full disk quota must end in "not recorded", not in the end of the process.
process.on('SIGXFSZ', () => undefined);
// Whoever reads the output may go first (`| head`): nothing is left to say then.
process.stdout.on('error', () => process.exit(exitCodes.done));
process.exitCode = await main(process.argv.slice(2));

async function main(args: readonly string[]): Promise<number> {
  const flags = readFlags(args);
  if ('fault' in flags) return complain(flags.fault);
  const crewFile = readCrewFile(flags);
  if ('fault' in crewFile) return complain(crewFile.fault);
  const scripted = !process.stdin.isTTY;
  if (scripted && flags.speed !== undefined) return complain('--speed: a script has its own time; say wait');

  const sheetFolders = [
    join(packageFolder(), 'core/products/sheets'),
    ...(flags.sheets === undefined ? [] : [flags.sheets]),
  ];
  const shelf = readSheetFolders(sheetFolders);
  const faults = faultsOf(shelf);
  for (const fault of faults) stderrLog.error('sheet-fault', { ...fault });

  const store = openStore(
    flags.data ?? (scripted ? undefined : (readEnvironment(process.env).BATCHBELL_DATA ?? 'data')),
  );
  if ('fault' in store) {
    stderrLog.error('store-not-opened', store);
    return exitCodes.cannotWrite;
  }

  const start =
    flags.clock === undefined ? undefined : DateTime.fromISO(flags.clock, { zone: crewFile.zone }).toMillis();
  const scriptClock = virtualClock(epochMs(start ?? Date.now()));
  const clock =
    scripted || (start !== undefined && flags.speed === undefined) ? scriptClock : freeClock(start, flags.speed);
  const print = flags.json ? printJson(process.stdout) : printPlain(process.stdout, crewFile.zone);
  const frontEnd = {
    tell: async (answer: Parameters<typeof print>[0]) => {
      print(answer);
      terminal.speakers.saw(answer);
      return 'posted' as const;
    },
    // A printed line cannot be looked for.
    wasTold: async () => 'unknown' as const,
  };
  const { executor, host, ringer } = wire({ store, clock, log: stderrLog, crewFile, shelf, frontEnd });
  const terminal = createTerminal({ host, clock, crewFile, as: flags.as });
  await executor
    .reconcile(clock.now())
    .catch((error: unknown) => stderrLog.error('reconcile-failed', { error: String(error) }));

  if (scripted) {
    const lines = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
    const recorded = await runScript(lines, { terminal, ringer, clock: scriptClock, print });
    store.close();
    return !recorded ? exitCodes.cannotWrite : faults.length > 0 ? exitCodes.badFlagOrSheet : exitCodes.done;
  }
  const ticker = startTicker({ ringer, executor, clock, log: stderrLog, speed: flags.speed ?? 1 });
  await converse({ input: process.stdin, output: process.stdout, terminal, ticker, ringer, clock, print });
  await ticker.stop();
  store.close();
  return exitCodes.done;
}

function complain(fault: string): number {
  process.stderr.write(`batchbell: ${fault}\n`);
  return exitCodes.badFlagOrSheet;
}

function readCrewFile(flags: Flags) {
  if (flags.crew === undefined) return readCrew(undefined, undefined, flags);
  try {
    return readCrew(flags.crew, readFileSync(flags.crew, 'utf8'), flags);
  } catch (error) {
    return { fault: `--crew: ${error instanceof Error ? error.message : String(error)}` };
  }
}

/** In memory where no folder is named. */
function openStore(folder: string | undefined): Store | ConfigFault {
  try {
    if (folder === undefined) return openSqliteStore(':memory:');
    mkdirSync(folder, { recursive: true });
    const lock = lockData(folder);
    const store = openSqliteStore(join(folder, 'batchbell.sqlite'));
    return {
      ...store,
      close: () => {
        store.close();
        lock.release();
      },
    };
  } catch (error) {
    return { fault: `${folder}: ${error instanceof Error ? error.message : String(error)}` };
  }
}

function freeClock(start: number | undefined, speed: number | undefined): Clock {
  if (start === undefined && speed === undefined) return wallClock;
  return fastClock(epochMs(start ?? Date.now()), speed ?? 1);
}

/** Where package.json lies: two folders up in a build, one in the source. */
function packageFolder(): string {
  const here = import.meta.dirname;
  return here.endsWith(join('dist', 'bot')) ? dirname(dirname(here)) : dirname(here);
}
