// A shop with the whole program behind it, over a record in a file: lines are said at their time, answers come back as
// cards, and the file lies open for whoever wants to harm it.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import type { Board } from '../../../bot/cards/board.ts';
import type { Card } from '../../../bot/cards/card.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { paperTray } from '../../../bot/records/paper-tray.ts';
import { wire } from '../../../bot/run/wiring.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import { ringUntil } from '../../../bot/terminal/script.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import type { StreamId } from '../../../core/ids.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';

export interface RecordsShop {
  readonly folder: string;
  readonly file: string;
  /** `09:40 @omar: day`; without a speaker it is omar, who leads. Times on 2 March 2026. */
  readonly say: (line: string) => Promise<Answer>;
  readonly rung: () => readonly Answer[];
  /** What the log says went wrong. */
  readonly logged: () => readonly string[];
  readonly board: () => Promise<Board>;
  /** The message that a chat platform keeps of it. */
  readonly standing: (subject: StreamId) => Promise<Card>;
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  readonly until: (time: string) => Promise<void>;
  /** Runs SQL past the triggers that keep events as they are. */
  readonly tamper: (sql: string) => void;
  readonly close: () => void;
}

const line = /^(\d\d):(\d\d)(?: @(\w+):)? (.*)$/;
const day = Date.UTC(2026, 2, 2);

export function openRecordsShop(
  folder = mkdtempSync(join(tmpdir(), 'batchbell-records-')),
  file = join(folder, 'batchbell.sqlite'),
  { crewFile = demoCrew, tongues = shipped } = {},
): RecordsShop {
  const clock = virtualClock(epochMs(day));
  const store = openSqliteStore(file);
  const rung: Answer[] = [];
  const logged: string[] = [];
  const log = { info: () => undefined, error: (...said: readonly unknown[]) => logged.push(JSON.stringify(said)) };
  const frontEnd = {
    tell: async (answer: Answer) => {
      rung.push(answer);
      return 'posted' as const;
    },
    wasTold: async () => 'no' as const,
  };
  const papers = paperTray(folder);
  const { host, ringer, picture, overview } = wire({
    store,
    clock,
    log,
    crewFile,
    tongues,
    shelf: demoShelf,
    papers,
    frontEnd,
  });
  const moveTo = (hour: string, minute: string) =>
    ringUntil(epochMs(day + (Number(hour) * 60 + Number(minute)) * 60_000), ringer, clock);

  return {
    folder,
    file,
    say: async (text) => {
      const [, hour = '', minute = '', as = 'omar', said = ''] = line.exec(text) ?? [];
      await moveTo(hour, minute);
      const answer = await host.handle({ text: said, as, in: text, id: undefined, atConsole: true });
      if (answer === undefined) throw new Error(`no answer to "${text}"`);
      await ringer.ringDue();
      return answer;
    },
    rung: () => rung,
    logged: () => logged,
    board: () => overview.board(undefined),
    standing: async (subject) => (await overview.standing(subject)).card,
    picture,
    until: async (time) => {
      const [hour = '', minute = ''] = time.split(':');
      await moveTo(hour, minute);
    },
    tamper: (sql) => {
      const database = new Database(file);
      database.exec('drop trigger event_stays; drop trigger event_kept;');
      database.exec(sql);
      database.close();
    },
    close: () => {
      store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** An invented morning: a batch, a part through the oven, a correction, solvent. */
export const morning = [
  '07:45 part impeller-7 serial 4411 job 88 customer invented-customer-A cast-iron 12mm 0.8m2 max 120C',
  '07:46 part valve-3 serial 4412 job 880 steel',
  '07:50 air 24C 48%',
  '07:52 open A lot 7731 5kg gas',
  '07:53 open B lot 8802 5kg',
  '07:54 prestir 1',
  '08:00 mix 2.4kg',
  '08:00 weigh 3 1200g 1212g',
  '08:01 blanket 1',
  '09:50 stop 3',
  '09:50 filter 3',
  '10:00 @kari: coat impeller-7 3 brush',
  '10:02 wet impeller-7 60 65 58um',
  '10:12 @kari: dry impeller-7',
  '10:15 cure impeller-7 oven 90C',
  '10:30 temp impeller-7 92C',
  '11:40 temp impeller-7 90C',
  '11:40 out impeller-7',
  '11:45 film impeller-7 12 14 13um',
  '11:50 amend 3 weigh 1200g 1200g =SUM(1) wrong scale',
  '11:55 empty 3 300g',
  '11:56 used acetone 500ml gun-cleaning',
  '11:58 release impeller-7',
] as const;

export async function givenTheMorning(spoken = {}): Promise<RecordsShop> {
  const shop = openRecordsShop(undefined, undefined, spoken);
  for (const each of morning) {
    const answer = await shop.say(each);
    if (!answer.recorded) throw new Error(`"${each}" was not recorded: ${answer.text}`);
  }
  return shop;
}
