// Starts one crew over the opened record: wires it, gives it a terminal that prints what it is told and, where there is
// a page, lets the page listen to all that is said.

import type { CrewFile } from '../../core/crew/crew.ts';
import { onlyCrew } from '../../core/ids.ts';
import type { Clock } from '../../core/ports.ts';
import type { Flags } from '../config/config.ts';
import { type PaperTray, paperTray } from '../records/paper-tray.ts';
import type { Answer } from '../talk/answer.ts';
import type { Host } from '../talk/host.ts';
import { type Print, printJson, printPlain } from '../terminal/output.ts';
import { picturePrinter } from '../terminal/picture-printer.ts';
import { createTerminal, type Terminal } from '../terminal/terminal.ts';
import { whereItLies } from '../terminal/where-it-lies.ts';
import { type Conversation, openConversation } from '../web/conversation.ts';
import { overheardHost } from '../web/overheard-host.ts';
import { stderrLog } from './log.ts';
import type { OpenedRecord } from './open-record.ts';
import { openPractisers } from './practisers-file.ts';
import { type Wired, wire } from './wiring.ts';

export interface StartCrewDeps {
  readonly flags: Flags;
  readonly crewFile: CrewFile;
  readonly opened: OpenedRecord;
  readonly clock: Clock;
  readonly withPage: boolean;
}

export interface StartedCrew extends Omit<StartCrewDeps, 'withPage'> {
  readonly wired: Wired;
  /** As every front end uses it. */
  readonly host: Host;
  readonly terminal: Terminal;
  readonly papers: PaperTray;
  /** Of the page; `undefined` where there is none. */
  readonly conversation: Conversation | undefined;
  readonly print: Print;
  /** Every answer printed so far could be written down. */
  readonly couldRecord: () => boolean;
  /** What is to happen after each line: the next bell may have moved. */
  readonly onLine: (then: () => void) => void;
}

/** What was not recorded though the store can write. */
const notTheStore: readonly string[] = ['not-read', 'line-broke', 'rests-on-unread'];

export async function startCrew({ withPage, ...deps }: StartCrewDeps): Promise<StartedCrew> {
  const { flags, crewFile, opened, clock } = deps;
  const { place, store, shelf } = opened;
  const papers = paperTray(place?.folder);
  const conversation = withPage ? openConversation(place?.folder, stderrLog) : undefined;
  let couldRecord = true;
  let then = (): void => undefined;

  const print = async (answer: Answer): Promise<void> => {
    if (answer.kind === 'error' && !notTheStore.includes(answer.code ?? '')) couldRecord = false;
    printed(files.told(answer));
    if (!flags.json) await printPicture(answer);
  };
  const frontEnd = {
    tell: async (answer: Answer) => {
      await print(answer);
      terminal.speakers.saw(answer);
      return conversation === undefined ? ('posted' as const) : conversation.tell(answer);
    },
    // A printed line cannot be looked for; what the page has told can.
    wasTold: async (key: string) => conversation?.wasTold(key) ?? ('unknown' as const),
  };
  const practisers = openPractisers(place?.folder, stderrLog)(onlyCrew);
  const wired = wire({ store, clock, log: stderrLog, crewFile, shelf, papers, frontEnd, practisers });
  const host = conversation === undefined ? wired.host : overheardHost(wired.host, conversation, () => then());
  const terminal = createTerminal({
    host,
    overview: wired.overview,
    clock,
    crewFile,
    tongues: wired.tongues,
    as: flags.as,
  });
  const files = whereItLies({ papers, words: terminal.words });
  const printed = flags.json ? printJson(process.stdout, files.fileOn) : printPlain(process.stdout, terminal.profile);
  const printPicture = picturePrinter({ out: process.stdout, papers, picture: wired.picture, words: terminal.words });
  await wired.executor
    .reconcile(clock.now())
    .catch((error: unknown) => stderrLog.error('reconcile-failed', { error: String(error) }));
  return {
    ...deps,
    wired,
    host,
    terminal,
    papers,
    conversation,
    print,
    couldRecord: () => couldRecord,
    onLine: (what) => {
      then = what;
    },
  };
}
