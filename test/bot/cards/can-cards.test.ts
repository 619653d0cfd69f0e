// What a can's cards say and offer. Part A of the demo sheet is lost under air and settles: common practice, no source; its
// minutes are invented.

import { describe, expect, it } from 'vitest';
import { sessionTalk } from './session-talk.ts';

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of lines) await say(line);
  return async (line: string) => (await say(line)).card;
}

const opened = ['air 22C 50%', 'open A lot 7731 5kg gas', 'mix 2.4kg'];

describe('Part A stirred alone', () => {
  it('given that its lid went on too soon, then the weighing says how long it was stirred, and offers the stir', async () => {
    const say = await talkAfter(...opened, 'prestir 1', 'wait 1m', 'blanket 1');
    const { lines, actions } = await say('weigh 2 1201g 1198g');
    expect(lines[0]).toMatch(/^Can 1 is not stirred long enough \(1 min of 2 min\)/);
    expect(actions.map(({ line }) => line)).toContain('prestir 1');
  });

  it('given that it was stirred, then the time given stands in the trace', async () => {
    const say = await talkAfter(...opened, 'prestir 1', 'wait 3m', 'weigh 2 1201g 1198g');
    expect((await say('trace 2')).lines).toContainEqual(
      expect.stringContaining('can 1, 1201 g, stirred in the can 3 min of 2 min'),
    );
  });
});
