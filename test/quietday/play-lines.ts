// Says ordinary lines to the real host over real SQLite and sees whom each of them calls. They are said in a shop that has a
// pot, a can and parts, since what a line means lies with what there is.

import { stderrLog } from '../../bot/run/log.ts';
import { wire } from '../../bot/run/wiring.ts';
import { virtualClock } from '../../bot/time/clocks.ts';
import { alarms } from '../../core/session/session-commands.ts';
import { readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { epochMs, minutes } from '../../core/units.ts';
import { crew, shiftStart } from './shift.ts';

export interface LineHeard {
  readonly line: string;
  /** Whom it called, besides whoever said it; everybody, where a countdown began. */
  readonly called: readonly string[];
  /** One tap more and everybody is called. */
  readonly offersCall: boolean;
}

const before = [
  'air 22C 48%',
  'open A lot invented-1 5kg gas',
  'mix 2.4kg',
  'weigh 2 1200g 1200g',
  'part plate-1 serial invented-1 steel 3mm 0.2m2 max 150C',
];

const speaker = 'kari';

export async function playLines(lines: readonly string[]): Promise<readonly LineHeard[]> {
  const clock = virtualClock(epochMs(Date.parse(shiftStart)));
  const store = openSqliteStore(':memory:');
  const { host } = wire({
    ...{ store, clock, log: stderrLog },
    crewFile: {
      ...{ name: crew.name, zone: crew.zone, language: 'en', units: 'metric', digestHour: 17 },
      escalationMinutes: minutes(10),
      people: crew.people.map(({ name, role }) => ({ name, role, language: 'en', units: 'metric' })),
    },
    shelf: readSheetFolders(['core/products/sheets']),
    frontEnd: { tell: async () => 'posted', wasTold: async () => 'no' },
  });
  const say = (text: string) => host.handle({ text, as: speaker, in: text, id: undefined });
  try {
    for (const line of before) await say(line);
    const heard: LineHeard[] = [];
    for (const line of lines) {
      const answer = await say(line);
      heard.push({
        line,
        called: [
          ...(answer?.to ?? []).filter((name) => name !== speaker),
          ...(answer?.recorded === true && answer.card.actions.some(({ id }) => id === 'no-alarm')
            ? ['everybody in 20 s']
            : []),
        ],
        offersCall: answer?.card.actions.some((action) => isCall(action.line)) ?? false,
      });
    }
    return heard;
  } finally {
    store.close();
  }
}

/** The taps that call are lines of one word, in either language. */
const callWords: ReadonlySet<string> = new Set([...alarms, 'ojos', 'derrame', 'fuego', 'caído', 'caliente']);
const isCall = (line: string): boolean => callWords.has(line);
