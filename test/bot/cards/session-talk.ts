// A conversation over the real thing, from 8:00 on, as omar, who leads: kari and lia are crew, rosa supervises. Invented.

import { expect, onTestFinished } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { wire } from '../../../bot/run/wiring.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import { ringUntil } from '../../../bot/terminal/script.ts';
import { createTerminal } from '../../../bot/terminal/terminal.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import type { Store } from '../../../core/ports.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';

export const sprayCrew: CrewFile = {
  ...demoCrew,
  people: [...demoCrew.people, { name: 'lia', role: 'crew', language: 'en', units: 'metric' }],
};

/** `record`: its file, where its rows are to be looked at, or one that goes on; `since`: when this process was started. */
export function sessionTalk(
  record: string | Store = ':memory:',
  crewFile: CrewFile = sprayCrew,
  tongues = shipped,
  since = epochMs(Date.UTC(2026, 2, 2, 8)),
  shelf = demoShelf,
) {
  const clock = virtualClock(since);
  const heard: Answer[] = [];
  const frontEnd = {
    tell: async (answer: Answer) => {
      heard.push(answer);
      return 'posted' as const;
    },
    wasTold: async () => 'no' as const,
  };
  const log = {
    info: () => undefined,
    error: (event: string, details?: object) => expect.fail(`${event} ${JSON.stringify(details)}`),
  };
  const store = typeof record === 'string' ? openSqliteStore(record) : record;
  const { host, overview, ringer } = wire({ store, clock, log, crewFile, tongues, shelf, frontEnd });
  const terminal = createTerminal({ host, overview, clock, tongues, crewFile, as: 'omar' });
  let lines = 0;
  const say = async (line: string): Promise<Answer> => {
    lines += 1;
    const { answer, waitUntil } = await terminal.say(line, lines);
    if (answer === undefined) throw new Error(`no answer to "${line}"`);
    heard.push(answer);
    await ringUntil(waitUntil ?? clock.now(), ringer, clock);
    return answer;
  };
  return { say, heard, terminal, board: () => overview.board(undefined), now: clock.now, close: () => store.close() };
}

/** One that these lines have been said in, closed with its test. */
export async function talkAfter(...lines: readonly string[]) {
  const talk = sessionTalk();
  onTestFinished(talk.close);
  for (const line of lines) await talk.say(line);
  return { ...talk, card: async (line: string) => (await talk.say(line)).card };
}

export const taps = ({ card }: Answer) => Object.fromEntries(card.actions.map(({ id, line }) => [id, line]));
export const value = ({ card }: Answer, id: string) => card.facts.find((fact) => fact.id === id)?.value;
