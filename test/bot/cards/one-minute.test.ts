// The same clock ends on the same minute, whatever shows it: what must last is rounded up, what may only last so long down.

import { PassThrough } from 'node:stream';
import { expect, it } from 'vitest';
import { stampOf } from '../../../bot/language/ending.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { printPlain } from '../../../bot/terminal/output.ts';
import { sessionTalk } from './session-talk.ts';

it('given stirring that is done between two minutes, then card, now and handover say the same one', async () => {
  const { say } = sessionTalk();
  for (const line of ['air 23.3C 48%', 'mix 2.4kg']) await say(line);
  const weighed = await say('weigh 1 1200g 1200g');
  const done = weighed.card.facts.find(({ id }) => id === 'stir-done-at');
  expect(done?.value).not.toMatch(/:00(?:\+|Z)/);
  const ends = `${done?.shown} Batch 1: stirring done`;
  expect((await say('now')).card.lines).toContain(ends);
  expect((await say('handover rosa')).card.lines).toContain(ends);
  expect(weighed.card.next).toContainEqual({ key: 'batch/1/stir-done', dueAt: done?.value });
});

it('given the fan that runs on after a session, then its bell and its card say the same minute', async () => {
  const { say } = sessionTalk();
  const lines = ['air 24C 48%', 'mix 2.4kg', 'brief 1 in room spray omar', 'ack', 'set booth room 4m2 2000m3'];
  for (const line of [...lines, 'fan on 0.6mps', 'supplied yes', 'spray on', 'wait 7m', 'spray off']) await say(line);
  for (const line of ['flush gun', 'flush vessels', 'rags']) await say(line);
  const closed = await say('close');
  const until = closed.card.facts.find(({ id }) => id === 'fan-until');
  const { lines: now } = (await say('now')).card;
  expect(now.filter((line) => line.includes('fan on is over'))).toEqual([expect.stringMatching(`^${until?.shown} `)]);
});

it('given the bell of a stir that ended between two minutes, then it stands on the minute that the card gave', async () => {
  const { say, heard, terminal } = sessionTalk();
  for (const line of ['air 23.3C 48%', 'mix 2.4kg']) await say(line);
  const weighed = await say('weigh 1 1200g 1200g');
  const ends = weighed.card.facts.find(({ id }) => id === 'stir-done-at')?.shown;
  await say('wait 3h');
  const bell = heard.find(({ key }) => key === 'batch/1/stir-done');
  const out = new PassThrough();
  if (bell !== undefined) printPlain(out, terminal.profile)(bell);
  expect(String(out.read())).toMatch(new RegExp(`^${ends} 🔔`));
});

it('given whoever reads in another country, then what is told is stamped by the clock that its times are in', () => {
  const at = '2026-03-02T21:10:20-06:00';
  const stamps = (key: string | null) =>
    (['en-US', 'es-US', 'en-GB', 'es-ES'] as const).map((language) =>
      stampOf(shipped.profileOf(language, 'us'), { at, key }),
    );
  expect(stamps(null)).toEqual(['9:10 PM', '9:10 p.m.', '21:10', '21:10']);
  expect(stamps('batch/1/pot-end')).toEqual(['9:10 PM', '9:10 p.m.', '21:10', '21:10']);
  expect(stamps('batch/1/stir-done')).toEqual(['9:11 PM', '9:11 p.m.', '21:11', '21:11']);
});
