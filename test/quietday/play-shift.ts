// Plays the shift through the real Slack front end against its stand-in on this machine: real HTTP, the real host, real
// SQLite, a clock that is moved from bell to bell. The same shift gives the same figures on every machine.

import { fileURLToPath } from 'node:url';
import type { Answer } from '../../bot/talk/answer.ts';
import { EventBody } from '../../core/history.ts';
import { onlyCrew } from '../../core/ids.ts';
import type { FakeMessage } from '../bot/slack/fake/fake-slack.ts';
import { openWorkshop } from '../bot/slack/fake/workshop.ts';
import { crew, type ShiftLine, shiftStart } from './shift.ts';

export interface Heard {
  readonly said: ShiftLine;
  readonly answer: Answer;
}

export interface Played {
  readonly heard: readonly Heard[];
  readonly record: readonly EventBody[];
  /** Every message that Slack was given as a new one, in channels, threads and direct conversations. */
  readonly posts: readonly FakeMessage[];
}

const sheets = fileURLToPath(new URL('./sheets', import.meta.url));
const msPerMinute = 60_000;
const moreThanADay = 100_000;

/** How long the bells of the day go on after the last line: until the last fan is off and the digest is out. */
const afterwards = 120;

export async function playShift(shift: readonly ShiftLine[]): Promise<Played> {
  const heard: Heard[] = [];
  let saying: ShiftLine | undefined;
  const shop = await openWorkshop({
    at: shiftStart,
    crews: [{ crew: onlyCrew, file: crew }],
    sheets: [sheets],
    hears: (_, answer) => void (saying !== undefined && heard.push({ said: saying, answer })),
  });
  const userOf = (name: string) => crew.people.find((person) => person.name === name)?.slack;
  try {
    for (const said of shift) {
      const at = Date.parse(`${shiftStart.slice(0, 10)}T${said.at}:00Z`);
      if (at > shop.clock.now()) await shop.passes((at - shop.clock.now()) / msPerMinute);
      saying = said;
      await shop.types(said.line, userOf(said.as));
    }
    saying = undefined;
    await shop.passes(afterwards);
    const rows = shop.store.archive.rowsAfter(onlyCrew, 0, moreThanADay);
    const record = rows.map(({ body }) => EventBody.parse(JSON.parse(body)));
    return { heard, record, posts: [...shop.fake.messages] };
  } finally {
    await shop.close();
  }
}
