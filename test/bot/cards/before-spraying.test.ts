// What is said round the gun: a pot that is not fit yet, a gun that nobody has said to run, and how long the extraction stays on.

import { expect, it } from 'vitest';
import { sessionTalk } from './session-talk.ts';

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of lines) await say(line);
  return say;
}

// Stirred by 9:42 at 24 degC (common practice, no source; the temperatures invented).
const weighed = ['air 24C 48%', 'set booth 4m2', 'mix 2.4kg', 'weigh 1 1200g 1200g'];

it('given a pot that is not weighed, then brief and ack say so before anybody holds the gun', async () => {
  const say = await talkAfter('air 24C 48%', 'set booth 4m2', 'mix 2.4kg');
  const unfit = 'Batch 1 is not fit to be sprayed yet: to be weighed.';
  expect((await say('@kari: brief 1 in booth spray kari')).text).toContain(unfit);
  expect((await say('@kari: ack')).text).toContain(unfit);
});

it('given a stir that is not over, then spray on says until when', async () => {
  const say = await talkAfter(
    ...weighed,
    '@kari: brief 1 in booth spray kari',
    '@kari: ack',
    'fan on 0.6m/s',
    'supplied yes',
  );
  expect((await say('spray on')).text).toContain(
    'Batch 1 is not fit to be sprayed yet: mixing time runs, done at 09:42.',
  );
});

it('given a filtered pot, then nothing of it is said', async () => {
  const say = await talkAfter(...weighed, 'wait 102m', 'filter 1');
  expect((await say('@kari: brief 1 in booth spray kari')).text).not.toContain('not fit');
});

it('given a gun that nobody has said to run, then it does not stop, and what to say is said', async () => {
  const say = await talkAfter(...weighed, '@kari: brief 1 in booth spray kari');
  const asked = await say('spray off');
  expect([asked.code, asked.recorded]).toEqual(['not-spraying', false]);
  expect(asked.text).toContain('say spray on 2 with its time, at 9:40');
});

it('given the flush, then the extraction stays on for half an hour more (invented for the demo), and off too early it says so', async () => {
  const before = [...weighed, 'wait 102m', 'filter 1', '@kari: brief 1 in booth spray kari', '@kari: ack'];
  const say = await talkAfter(...before, 'fan on 0.6m/s', 'supplied yes', 'spray on', 'wait 18m');
  const stays = 'The extraction stays on through the flush, and until 10:30 at the least.';
  expect((await say('spray off')).text).toContain(stays);
  expect((await say('flush gun acetone 300ml')).text).toContain(stays);
  expect((await say('fan no')).text).toContain(stays);
});

it('given the bell to flush, then it is one line in either tongue, with until when the fan stays on; flash points were told at the stop', async () => {
  const before = [...weighed, 'wait 102m', 'filter 1', '@kari: brief 1 in booth spray kari', '@kari: ack'];
  for (const [language, line] of [
    [
      '',
      'Now, in the booth with the fan on; it stays on until 10:30 at the least. It rings until somebody says flush.',
    ],
    [
      '@kari: set language es',
      'Ahora, en la cabina y con la extracción en marcha, que sigue al menos hasta las 10:30.',
    ],
  ] as const) {
    const { say, heard } = sessionTalk();
    for (const each of [...before, 'fan on 0.6m/s', 'supplied yes', 'spray on', 'wait 18m']) await say(each);
    if (language !== '') await say(language);
    expect((await say('spray off')).card.hazards).toHaveLength(1);
    await say('wait 6m');
    const bell = heard.find(({ key }) => key?.startsWith('session/2/flush'));
    expect(bell?.card.lines).toEqual([expect.stringContaining(line)]);
    expect(bell?.card.hazards).toEqual([]);
  }
});
