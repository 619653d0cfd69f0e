// Behind a reading of one part comes that of the next, told by its number alone: never spots of the first one.

import { expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };
const coated = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g'],
  ...['part br-7 0.2m2', 'part br-8 0.2m2', 'part gc-12 0.2m2', 'wait 102m', 'filter 1'],
  ...['coat br-7 1 brush', 'coat br-8 1 brush', 'wet br-7 60 65um'],
];

async function after(crew = sprayCrew) {
  const talk = sessionTalk(openSqliteStore(':memory:'), crew);
  onTestFinished(talk.close);
  for (const line of coated) await talk.say(line);
  return talk;
}

it.each([
  ['and 8: 61 66', true],
  ['and br-8: 61 and 66', true],
  ['8: 61 66', false],
  ['the 8 is 61 66', false],
])('given the wet film of br-7, when "%s" is said, then it is that of br-8 (at once: %s)', async (line, isTaken) => {
  const { card, recorded } = await (await after()).say(line);
  expect(recorded).toBe(isTaken);
  if (isTaken) expect(card.lines).toContain('Taken as: wet br-8 61 66um');
  else expect(card.actions.map((tap) => tap.line)).toEqual(['wet br-8 61 66um']);
});

it('given the same in Spanish', async () => {
  const { card } = await (await after(spanish)).say('y la 8: 61 y 66');
  expect(card.lines.join(' ')).toContain('br-8 61 66um');
});

it('given a dry film, when another part is told by its number, then it is no spot of the first', async () => {
  const talk = await after();
  for (const line of ['wait 12m', 'dry br-7', 'dry br-8', 'film br-7 12 13 12']) await talk.say(line);
  const { card, recorded } = await talk.say('and 8: 12 13 14');
  expect(recorded).toBe(true);
  expect(card.title).toBe('br-8: dry film');
});

it('given nothing was read before, then a number and figures record nothing', async () => {
  const talk = await after();
  await talk.say('air 23C 47%');
  expect((await talk.say('and 8: 61 66')).recorded).toBe(false);
});
