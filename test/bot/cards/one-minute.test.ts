// The same clock ends on the same minute, whatever shows it: what must last is rounded up, what may only last so long down.

import { expect, it } from 'vitest';
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
