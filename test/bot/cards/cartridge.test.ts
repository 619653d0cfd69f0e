// How long a cartridge lasts at the most, in either tongue: by the rule of thumb, and no further than it goes.

import { expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const first = 'The maker’s change schedule comes first';

it.each([
  ['change-out toluene 40ppm 60%', 'At most 8 h'],
  ['change-out toluene 40ppm 85%', 'At most 4 h'],
  ['change-out toluene 40ppm 60% hard work', 'At most 4 h'],
  ['cartridge life at 120 ppm toluene and 70ppm xylene, humidity 90%, heavy work', 'At most 2 h'],
  ['change-out toluene 150ppm xylene 50ppm 60%', 'NO figure: 200 ppm together'],
  ['change-out acetone 40ppm 60%', 'NO figure: one of them boils at 56.1 °C'],
  ['change-out cyclohexanone 10ppm 60%', 'NO figure: the boiling point of one of them was not read'],
  ['change-out hdi 0.001ppm 60%', 'NOT with a cartridge'],
  ['change-out toluene 40ppm', 'No figure yet: nobody has read the humidity'],
])('given %s, then %s', async (line, said) => {
  const { say } = await talkAfter();
  const { text } = await say(line);
  expect(text).toContain(said);
  expect(text).toContain(first);
});

it('given the air was read, then its humidity stands in and is told', async () => {
  const { say } = await talkAfter('air 24C 88%');
  const { text } = await say('change-out toluene 40ppm');
  expect(text).toContain('At most 4 h');
  expect(text).toContain('humidity 88 % as last read');
});

it('given a figure is missing, then it is asked', async () => {
  const { say } = await talkAfter();
  expect((await say('change-out 40ppm')).text).toContain('Needed: of what');
  expect((await say('change-out toluene')).text).toContain('Needed: how much was measured');
});

it('given Spanish, then it reads and says the same', async () => {
  const { say } = await talkAfter('set language es');
  expect((await say('cambio de filtro tolueno 40ppm 90% trabajo duro')).text).toContain('Como mucho 2 h');
  expect((await say('cambio de filtro acetona 40ppm 60%')).text).toContain('SIN cifra: uno hierve a 56,1 °C');
});
