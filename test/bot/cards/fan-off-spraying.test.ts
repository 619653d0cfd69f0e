// The fan goes off while somebody sprays: what to do now is read first, in both languages.

import { expect, it } from 'vitest';
import { sessionTalk, sprayCrew } from './session-talk.ts';

const spraying = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1', 'set booth 4m2'],
  ...['@kari: brief 1 in booth spray kari', '@kari: ack', 'fan on 0.6m/s', 'supplied yes', 'spray on'],
];

it.each([
  ['en', 'Stop spraying now: the extraction is off while the gun runs.'],
  ['es', 'Dejen de pintar ya: la extracción está apagada y la pistola en marcha.'],
])('given the gun runs, when the fan goes off, then in %s the first line says stop', async (language, first) => {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  const { say } = sessionTalk(':memory:', { ...sprayCrew, people });
  for (const line of spraying) await say(line);
  const { card } = await say('fan off');
  expect(card.tone).toBe('stop');
  expect(card.lines[0]).toContain(first);
  expect((await say('fan on 0.6m/s')).card.tone).not.toBe('stop');
});
