// A crew that a supervisor excuses from briefs: every card of what was sprayed so says it, by name.

import { expect, it } from 'vitest';
import { sessionTalk, taps } from './session-talk.ts';

// Stirred by 9:42 at 24 degC (common practice, no source; the temperatures invented).
const filtered = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m'];
const excused = 'No brief is asked for before spraying: rosa put it off at 08:00.';

it('given nobody has said anything of briefs, then a sprayed coat is objected to, with the brief one tap away', async () => {
  const { say } = sessionTalk();
  for (const line of [...filtered, 'filter 1']) await say(line);
  const asked = await say('coat new rail-1 1 spray');
  expect(asked.code).toBe('no-brief');
  expect(taps(asked)).toMatchObject({ brief: 'brief' });
});

it('given a supervisor who put it off, then the cards before and after the coat, the day and both traces say so', async () => {
  const { say } = sessionTalk();
  const before = [
    '@rosa: set brief off',
    ...filtered,
    'filter 1',
    'coat new rail-1 1 spray',
    'day',
    'trace 1',
    'trace rail-1',
  ];
  const answers = [];
  for (const line of before) answers.push({ line, text: (await say(line)).text });
  const saying = answers.filter(({ text }) => text.includes(excused)).map(({ line }) => line);
  expect(saying).toEqual(['filter 1', 'coat new rail-1 1 spray', 'day', 'trace 1', 'trace rail-1']);
});

it('given a coat by brush, then nothing of it is said', async () => {
  const { say } = sessionTalk();
  for (const line of ['@rosa: set brief off', ...filtered, 'filter 1']) await say(line);
  expect((await say('coat new rail-1 1 brush')).text).not.toContain('No brief');
});
