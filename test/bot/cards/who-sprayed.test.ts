// Who sprayed, as trace, day and week tell it, in either tongue: a name, or that nobody gave one, beside who typed it.

import { expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

// Stirred by 9:42 at 24 degC (common practice, no source; the temperatures invented).
const filtered = ['air 24C 48%', 'set booth 4m2', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1'];
const sprayed = [
  ...[...filtered, 'brief 1 in booth spray kari lia', '@kari: ack', '@lia: ack', 'fan on 0.6m/s', 'supplied yes'],
  ...['spray on', 'coat new rail-1 1 spray by kari already', 'coat new rail-2 1 spray already'],
];

it('given one coat with a name and one without, of two sprayers, then both are told so', async () => {
  const { say } = await talkAfter(...sprayed);
  expect((await say('trace rail-1')).text).toContain('spray by kari, typed by omar, batch 1');
  expect((await say('trace rail-2')).text).toContain('spray, sprayer not given, typed by omar, batch 1');
  const day = (await say('day')).text;
  expect(day).toContain('Sprayed by kari: rail-1');
  expect(day).toContain('Sprayer not given: rail-2');
  expect((await say('week')).text).toContain('rail-2: batch 1, spray, sprayer not given, typed by omar');
});

it('given Spanish, then it reads and tells the same', async () => {
  const { say } = await talkAfter(...sprayed, 'set language es', 'capa nueva rail-3 1 pistola, pintó Kari ya');
  expect((await say('trazar rail-3')).text).toContain('pistola por kari, anotada por omar');
  expect((await say('trazar rail-2')).text).toContain('pistola, sin decir quién pintó, anotada por omar');
  expect((await say('día')).text).toContain('Pintó kari: rail-1');
});
