// A slip in a part's name is one tap away from what was meant, whatever the act.

import { afterEach, describe, expect, it } from 'vitest';
import { sessionTalk, taps } from './session-talk.ts';

let talk: ReturnType<typeof sessionTalk>;
afterEach(() => talk.close());

async function coated(): Promise<void> {
  talk = sessionTalk();
  for (const line of ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g', 'wait until 09:42', 'filter 1']) {
    await talk.say(line);
  }
  await talk.say('coat new impeller-7 rail-2 1 dip');
}

describe('a name that is nearly a part’s', () => {
  it.each([
    ['dry impeler-7', 'dry impeller-7'],
    ['dry impeler-7 rail-2', 'dry impeller-7 rail-2'],
    ['wet impeler-7 60 65 58um', 'wet impeller-7 60 65 58um'],
    ['hold impeler-7 orange peel', 'hold impeller-7 "orange peel"'],
    ['cure impeler-7 oven 90C', 'cure impeller-7 oven 90C'],
  ])('given "%s", then "%s" is one tap', async (typed, meant) => {
    await coated();
    const answer = await talk.say(typed);
    expect(answer).toMatchObject({ kind: 'misread', code: 'no-such-part', recorded: false });
    expect(Object.values(taps(answer))[0]).toBe(meant);
  });

  it('given the tap is pressed, then it is recorded of that part', async () => {
    await coated();
    await talk.say('dry impeler-7');
    const answer = await talk.say('tap part-1');
    expect(answer).toMatchObject({ kind: 'reply', recorded: true });
    expect(answer.card.title).toContain('impeller-7');
  });

  it('given a name like none, then nothing is offered', async () => {
    await coated();
    expect(taps(await talk.say('dry bracket-12'))).toEqual({});
  });
});
