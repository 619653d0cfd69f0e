// Another chat platform is what translates cards: a whole batch on one of plain text, through the same room as Slack's.

import { expect, test } from 'vitest';
import { showAnswer } from '../../../bot/messages/answers.ts';
import type { MessageDesk } from '../../../bot/messages/desk.ts';
import { createMail } from '../../../bot/messages/mail.ts';
import { createMessages } from '../../../bot/messages/messages.ts';
import { createRings } from '../../../bot/messages/rings.ts';
import { createSender } from '../../../bot/messages/sender.ts';
import { createToldAlone } from '../../../bot/messages/told-alone.ts';
import { wire } from '../../../bot/run/wiring.ts';
import { ringUntil } from '../../../bot/terminal/script.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import { readSheetFolders } from '../../../core/store/sheet-files.ts';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { inventedCrew } from '../../durability/two-batches.ts';
import { plainText } from './plain-text-platform.ts';

/** Nothing here is ever limited. */
const pace = { now: () => 0, wait: async () => undefined };

test('given plain text as a platform, then a batch has its one message, its thread and its bells there', async () => {
  const clock = virtualClock(epochMs(Date.UTC(2026, 2, 2, 8)));
  const [store, postbox] = [openSqliteStore(':memory:'), openSqlitePostbox(':memory:')];
  const log = { info: () => undefined, error: (event: string) => expect(event).toBe('') };
  const { platform, messages, whispers } = plainText();
  const mail = createMail({ platform, sender: createSender(pace), now: clock.now });
  const files = { send: () => undefined };
  const frontEnd = {
    tell: (answer: Parameters<typeof rings.tell>[0]) => rings.tell(answer),
    wasTold: async () => 'no' as const,
  };
  const { host, ringer, overview, picture, papers } = wire({
    ...{ store, clock, log, crewFile: inventedCrew, frontEnd },
    shelf: readSheetFolders(['core/products/sheets']),
  });
  const shared = { crew: 'crew', overview, mail, postbox, log, pace, now: clock.now };
  const where = {
    team: 'T',
    user: 'ada',
    channel: 'bay',
    thread: undefined,
    via: 'mention',
    responseUrl: undefined,
  } as const;
  const to = { team: () => 'T', channel: () => 'bay' };
  const roster = { idOf: (_: string, name: string) => name, isGone: async () => false };
  const desk: MessageDesk = {
    ...{ ...shared, ...to, roster, picture, papers, isOurs: () => true },
    toldAlone: createToldAlone(),
    messages: createMessages({ ...shared, ...to }),
  };
  const rings = createRings({ ...shared, ...to, desk, files });
  let said = 0;
  const says = async (text: string) => {
    said += 1;
    const answer = await host.handle({ text, as: 'ada', in: text, id: `line-${said}` });
    if (answer === undefined) return;
    await desk.messages.settle(answer.about ?? []);
    await showAnswer({ mail, files, log }, desk, answer, where, `line-${said}`);
    await desk.messages.refresh(answer.about);
  };
  const passes = async (minutes: number) => ringUntil(epochMs(clock.now() + minutes * 60_000), ringer, clock);

  for (const line of ['mix 2.4kg 24C 48%', 'weigh 1 1201g 1198g']) await says(line);
  await passes(103);
  for (const line of ['filter 1', 'coat new impeller-7 flow']) await says(line);

  const batch = messages.filter(({ key }) => key.startsWith('standing/'));
  expect(batch).toHaveLength(1);
  expect(batch[0]?.text).toContain('impeller-7');
  expect(batch[0]?.changes).toBeGreaterThan(2);
  const thread = messages.filter((each) => each.thread === batch[0]?.ts).map(({ text }) => text.split('\n')[0]);
  expect(thread).toEqual([
    'Batch 1: A and B together, clocks run',
    'Batch 1: stirring done @ada',
    'Batch 1: filtered, in use',
    'impeller-7: coated (flow, batch 1)',
  ]);
  // What was said before has lost its taps, and whoever typed in the channel is told where it went.
  const last = messages.filter((each) => each.thread === batch[0]?.ts).at(-1);
  expect(
    messages.filter(({ text, thread, ts }) => thread !== undefined && ts !== last?.ts && text.includes('  > ')),
  ).toEqual([]);
  expect(whispers.at(-1)?.to).toBe('ada');
  store.close();
  postbox.close();
});
