// Starts Batchbell: reads flags and files, opens the record, wires one crew, and gives it a terminal. Alone in
// constructing things. Ends with 0 when done, 2 for a bad flag or sheet, 3 when the record cannot be written.

import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { DateTime } from 'luxon';
import type { Clock, Store } from '../core/ports.ts';
import type { SheetShelf } from '../core/products/sheet.ts';
import { lockData } from '../core/store/data-lock.ts';
import { faultsOf, readSheetFolders } from '../core/store/sheet-files.ts';
import { openSqlitePostbox } from '../core/store/sqlite-postbox.ts';
import { openSqliteStore } from '../core/store/sqlite-store.ts';
import { epochMs } from '../core/units.ts';
import type { Answer } from './answer.ts';
import { fastClock, virtualClock, wallClock } from './clocks.ts';
import { type ConfigFault, type Flags, readCrew, readEnvironment, readFlags } from './config.ts';
import { readCrewFiles } from './crew-files.ts';
import { demoCrew, demoNotice } from './demo/demo-crew.ts';
import { type DemoLine, demoShift, demoShiftStart, demoSpeed } from './demo/demo-shift.ts';
import { demoClock, playShift } from './demo/play-shift.ts';
import { stderrLog } from './log.ts';
import { type RecordPlace, recordPlace } from './record-place.ts';
import { paperTray } from './records/paper-tray.ts';
import { readSlackSettings, type SlackSettings } from './slack/slack-settings.ts';
import { converse } from './terminal/interactive.ts';
import { printJson, printPlain } from './terminal/output.ts';
import { picturePrinter } from './terminal/picture-printer.ts';
import { ringUntil, runScript } from './terminal/script.ts';
import { createTerminal } from './terminal/terminal.ts';
import { startTicker } from './ticker.ts';
import { openConversation } from './web/conversation.ts';
import { overheardHost } from './web/overheard-host.ts';
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
  const slack = flags.serve ? readSlackSettings(process.env) : undefined;
  if (slack !== undefined) return 'fault' in slack ? complain(slack.fault) : inSlack(slack, flags);
  const crewFile = flags.demo ? demoCrew : readCrewFile(flags);
  if ('fault' in crewFile) return complain(crewFile.fault);
  const withPage = flags.serve || (flags.demo && !flags.terminal);
  const piped = !process.stdin.isTTY;
  // A service has nobody at its keyboard: what it is given on standard input is no script.
  const scripted = piped && !withPage && !flags.demo;
  if (scripted && flags.speed !== undefined) return complain('--speed: a script has its own time; say wait');
  const start =
    flags.clock === undefined ? undefined : DateTime.fromISO(flags.clock, { zone: crewFile.zone }).toMillis();
  if (Number.isNaN(start)) return complain('--clock: no such date and time');

  const sheetFolders = [
    join(packageFolder(), 'core/products/sheets'),
    ...(flags.sheets === undefined ? [] : [flags.sheets]),
  ];
  const shelf = readSheets(sheetFolders);
  if ('fault' in shelf) return complain(shelf.fault);
  const faults = faultsOf(shelf);
  for (const fault of faults) stderrLog.error('sheet-fault', { ...fault });

  const inMemory = scripted || flags.demo;
  const place = recordPlace(
    flags.data ?? (inMemory ? undefined : (readEnvironment(process.env).BATCHBELL_DATA ?? 'data')),
  );
  const store = openStore(place);
  if ('fault' in store) {
    stderrLog.error('store-not-opened', store);
    return exitCodes.cannotWrite;
  }

  const scriptClock = virtualClock(epochMs(start ?? Date.now()));
  const shiftClock = demoClock(demoShiftStart, flags.speed ?? demoSpeed);
  const steps = scripted || (start !== undefined && flags.speed === undefined);
  const clock = flags.demo ? shiftClock : steps ? scriptClock : freeClock(start, flags.speed);
  const printed = flags.json ? printJson(process.stdout) : printPlain(process.stdout, crewFile.zone);
  let couldRecord = true;
  const print = async (answer: Parameters<typeof printed>[0]) => {
    if (answer.kind === 'error') couldRecord = false;
    printed(answer);
    if (!flags.json) await printPicture(answer);
  };
  const conversation = withPage ? openConversation(place?.folder, stderrLog) : undefined;
  const frontEnd = {
    tell: async (answer: Parameters<typeof print>[0]) => {
      await print(answer);
      terminal.speakers.saw(answer);
      return conversation === undefined ? ('posted' as const) : conversation.tell(answer);
    },
    // A printed line cannot be looked for; what the page has told can.
    wasTold: async (key: string) => conversation?.wasTold(key) ?? ('unknown' as const),
  };
  const papers = paperTray(place?.folder);
  const wired = wire({ store, clock, log: stderrLog, crewFile, shelf, papers, frontEnd });
  const { executor, ringer, picture } = wired;
  let wake = () => {};
  const host = conversation === undefined ? wired.host : overheardHost(wired.host, conversation, () => wake());
  const terminal = createTerminal({ host, clock, crewFile, as: flags.as });
  const printPicture = picturePrinter({ out: process.stdout, papers, picture, words: terminal.words });
  await executor
    .reconcile(clock.now())
    .catch((error: unknown) => stderrLog.error('reconcile-failed', { error: String(error) }));

  if (scripted) {
    // What came due while nothing ran rings before the first line.
    await ringUntil(scriptClock.now(), ringer, scriptClock);
    const lines = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
    await runScript(lines, { terminal, ringer, clock: scriptClock, print });
    store.close();
    return !couldRecord ? exitCodes.cannotWrite : faults.length > 0 ? exitCodes.badFlagOrSheet : exitCodes.done;
  }
  const page =
    conversation === undefined
      ? undefined
      : await (await import('./web/start-page.ts')).startPage({
          ...{ flags, folder: place?.folder, host, conversation, overview: wired.overview, picture, crewFile, clock },
          ...{ log: stderrLog, assetFolder: join(packageFolder(), 'bot/web/assets') },
          notice: flags.demo ? demoNotice : undefined,
        });
  if (page !== undefined && 'fault' in page) {
    store.close();
    return complain(page.fault);
  }
  const speed = flags.speed ?? (flags.demo ? demoSpeed : 1);
  const ticker = startTicker({ ringer, executor, clock, log: stderrLog, speed });
  wake = ticker.wake;
  const stopping = new AbortController();
  const onLine = async ({ as, line }: DemoLine, answer: Answer | undefined) => {
    if (!flags.json) process.stdout.write(`${as}: ${line}\n`);
    if (answer !== undefined) await print(answer);
    wake();
  };
  const told = flags.demo
    ? playShift({ host, clock: shiftClock, shift: demoShift, onLine, signal: stopping.signal })
    : undefined;
  const typing = { input: process.stdin, output: process.stdout, terminal, ticker, ringer, clock, print };
  // A service goes on until it is told to stop; a page beside a terminal ends with it.
  const ends = piped ? (withPage ? [] : [told]) : [converse(typing)];
  await Promise.race([...ends, ...(withPage || flags.demo ? [untilStopped()] : [])]);
  stopping.abort();
  await ticker.stop();
  await page?.stop();
  conversation?.close();
  store.close();
  process.stdin.destroy();
  return exitCodes.done;
}

function untilStopped(): Promise<unknown> {
  return new Promise((resolve) => {
    process.once('SIGTERM', resolve).once('SIGINT', resolve);
  });
}

async function inSlack(settings: SlackSettings, flags: Flags): Promise<number> {
  const crews = readCrewFiles(flags);
  if ('fault' in crews) return complain(crews.fault);
  const own = join(packageFolder(), 'core/products/sheets');
  const shelf = readSheets(flags.sheets === undefined ? [own] : [own, flags.sheets]);
  if ('fault' in shelf) return complain(shelf.fault);
  for (const fault of faultsOf(shelf)) stderrLog.error('sheet-fault', { ...fault });
  const place = recordPlace(flags.data ?? readEnvironment(process.env).BATCHBELL_DATA ?? 'data');
  const store = openStore(place);
  if ('fault' in store) {
    stderrLog.error('store-not-opened', store);
    return exitCodes.cannotWrite;
  }
  const papers = paperTray(place?.folder);
  const postbox = openSqlitePostbox(place?.file ?? ':memory:');
  const clock = freeClock(undefined, flags.speed);
  // Loading it costs what Slack's packages cost: only where it is on.
  const { serveSlack } = await import('./serve-slack.ts');
  const ended = await serveSlack({
    ...{ settings, crews, postbox, clock, speed: flags.speed ?? 1, stop: untilStopped() },
    wire: (crew, crewFile, frontEnd, log) => wire({ store, clock, log, crewFile, shelf, crew, papers, frontEnd }),
  });
  postbox.close();
  store.close();
  return ended === undefined ? exitCodes.done : complain(ended.fault);
}

function complain(fault: string): number {
  process.stderr.write(`batchbell: ${fault}\n`);
  return exitCodes.badFlagOrSheet;
}

function readSheets(folders: readonly string[]): SheetShelf | ConfigFault {
  try {
    return readSheetFolders(folders);
  } catch (error) {
    return { fault: `--sheets: ${error instanceof Error ? error.message : String(error)}` };
  }
}

function readCrewFile(flags: Flags) {
  if (flags.crew === undefined) return readCrew(undefined, undefined, flags);
  try {
    return readCrew(flags.crew, readFileSync(flags.crew, 'utf8'), flags);
  } catch (error) {
    return { fault: `--crew: ${error instanceof Error ? error.message : String(error)}` };
  }
}

/** Node's own recursive making never ends where a file system refuses it with "no such file": /proc, for one. */
function makeFolder(folder: string): void {
  if (existsSync(folder)) return;
  makeFolder(dirname(folder));
  mkdirSync(folder);
}

/** In memory where no folder is named. */
function openStore(place: RecordPlace | undefined): Store | ConfigFault {
  try {
    if (place === undefined) return openSqliteStore(':memory:');
    makeFolder(place.folder);
    const lock = lockData(place.folder);
    const store = openSqliteStore(place.file);
    return {
      ...store,
      close: () => {
        store.close();
        lock.release();
      },
    };
  } catch (error) {
    return { fault: `${place?.file}: ${error instanceof Error ? error.message : String(error)}` };
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
