// Where the next reading is warmer, one line says when a pot may have ended. Demo Clear (invented) lasts 480 minutes at 15
// degC and 200 at 30.

import { expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const pot = ['air 15C 50%', 'mix 2.4kg', 'weigh 1 1200g 1200g'];
const ended = 'At worst the pot life ended at 11:20: the air was read at 08:00 and again, warmer, at 11:59.';

it('given a warmer reading, then the reading, the list of what runs and the pot say it, and a coat is marked without being objected to', async () => {
  const { say } = await talkAfter(...pot, 'wait 180m', 'filter 1 already', 'wait 59m');
  expect((await say('air 30C 50%')).card.lines).toContain(`Batch 1: pot life ends at 13:39. ${ended}`);
  expect((await say('now')).card.lines).toContain(`Batch 1 Demo Clear: in use. ${ended}`);
  expect((await say('run card 1')).text).toContain(ended);
  const coated = await say('coat new lid-1 1 brush');
  expect(coated.recorded).toBe(true);
  expect(coated.card.lines).toContain(`Recorded, marked as a deviation: ${ended}`);
  for (const paper of ['day', 'trace lid-1']) expect((await say(paper)).text).toContain(ended);
});

it('given it is still to come, then it is said so', async () => {
  const { say } = await talkAfter(...pot, 'wait 60m');
  expect((await say('air 30C 50%')).text).toContain('At worst the pot life ends at 11:20: ');
});

it('given a colder reading, then nothing is said of it', async () => {
  const { say } = await talkAfter('air 20C 50%', ...pot.slice(1), 'wait 60m');
  expect((await say('air 15C 50%')).text).not.toContain('At worst');
});

it('given a speaker of Spanish, then it is told in Spanish', async () => {
  const { say } = await talkAfter(...pot, 'wait 60m', 'set language es');
  expect((await say('aire 30C 50%')).text).toContain(
    'En el peor caso la vida de la mezcla termina a las 11:20: el aire se leyó a las 8:00 y otra vez, más cálido, a las 9:00.',
  );
});
