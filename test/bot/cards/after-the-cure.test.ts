// From when a cured part may serve, has its full properties, until when it improves: by the sheet, from when the cure is
// given. All figures are invented, but for one hour at 90 degC: common practice, no source.

import { describe, expect, it } from 'vitest';
import { sessionTalk } from './session-talk.ts';

const dry = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 103m', 'filter 1', 'coat new hub-1 1 brush'],
  ...['empty 1', 'wait 17m', 'dry hub-1'],
];

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of [...dry, ...lines]) await say(line);
  return async (line: string) => (await say(line)).card.lines;
}

describe('after the cure', () => {
  it('given the oven gave it at 11:00, then service an hour and improvement a week later stand on card, trace and run', async () => {
    const say = await talkAfter('cure hub-1 oven 90C', 'temp hub-1 90C', 'wait 60m', 'temp hub-1 91C');
    const told =
      'After its cure, by the sheet: service from 12:00, improves until Mon 9 Mar 11:00. That is no release.';
    expect(await say('out hub-1')).toContain(told);
    for (const line of ['trace hub-1', 'card hub-1']) expect(await say(line)).toContain(told);
  });

  it('given nothing proves the cure, then nothing is promised', async () => {
    const say = await talkAfter('cure hub-1 oven 90C', 'wait 60m');
    for (const line of ['out hub-1 already', 'trace hub-1', 'card hub-1']) {
      expect((await say(line)).join(' ')).not.toContain('After its cure');
    }
  });

  it('given a cure in the room, then its own figures count', async () => {
    const readings = Array.from({ length: 8 }, () => ['wait 3h', 'air 24C 48%']).flat();
    const say = await talkAfter('cure hub-1 room', ...readings, 'wait 1h', 'air 24C 48%');
    expect((await say('out hub-1')).join(' ')).toMatch(/full properties from .*, improves until /);
  });
});
