// How a cure in the room stands, in two lines: one progress and what it rests on, one end that never lies in the past, and
// what to say for the time that nobody read. 24 h at room temperature: common practice, no source; the rest is invented.

import { describe, expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const curing = [
  ...['air 22C 50%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 109m', 'filter 1', 'coat new hub-1 1 brush', 'empty 1'],
  ...['clean brush', 'wait 15m', 'dry hub-1', 'cure hub-1 room'],
];
const askNight = 'Say the lowest of the time nobody read: night 16C.';

describe('a cure in the room', () => {
  it('given the room is read, then it ends when that goes on', async () => {
    const { say } = await talkAfter(...curing, 'wait 110m');
    expect((await say('card hub-1')).card.lines).toEqual(
      expect.arrayContaining([
        '7 % proved by the readings. If it is read on, it ends at Tue 3 Mar 10:04.',
        'A night that nobody reads earns nothing until somebody says its lowest: night 16C.',
      ]),
    );
  });

  it('given three hours that nobody read, then they do not count until their lowest is told', async () => {
    const { say } = await talkAfter(...curing, 'wait 5h');
    const { card } = await say('temp hub-1 20C');
    expect(card.lines).toEqual([
      '8 % proved by the readings; 3 h 4 min that nobody read do not count. Once that is told, it ends at Tue 3 Mar 10:04.',
      askNight,
    ]);
  });

  it('given its bell has rung unproved, then objection and card give one end, which is still to come', async () => {
    const { say, heard } = await talkAfter(...curing, 'wait 25h');
    const ring = heard.find(({ key }) => key === 'part/hub-1/cure-done');
    expect(ring?.card.lines).toEqual([
      '8 % proved by the readings; 22 h 4 min that nobody read do not count. Once that is told, it ends at 10:04.',
      askNight,
    ]);
    const { card } = await say('card hub-1');
    const ends = 'As it is, it ends at Wed 4 Mar 09:08.';
    expect(card.lines.join(' ')).toContain(ends);
    expect(card.facts.find(({ id }) => id === 'cure-done-at')?.value).toBe('2026-03-04T09:08:00Z');
    expect((await say('out hub-1')).text).toContain(
      '8 % so far is proved. By what is known it has it at Wed 4 Mar 09:08.',
    );
  });

  it('given the lowest was told, then it is part of what it rests on', async () => {
    const { say } = await talkAfter(...curing, 'wait 16h', 'night 17C', 'air 21C 50%');
    expect((await say('card hub-1')).text).toContain('proved by the readings and the lowest that was told');
  });
});
