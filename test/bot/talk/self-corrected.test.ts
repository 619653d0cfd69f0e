// Who puts themselves right within one line means what they said last: the first half is neither recorded nor offered, and what was
// recorded before is not touched.

import { expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };
const inUse = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'part br-1 br-2 br-3 br-5', 'wait 102m', 'filter 1'],
  'coat br-3 1 brush',
];

async function after(crew = sprayCrew, lines = inUse) {
  const talk = sessionTalk(openSqliteStore(':memory:'), crew);
  onTestFinished(talk.close);
  for (const line of lines) await talk.say(line);
  return talk;
}

it.each([
  ['br 1 brush... no wait, I mean br 5', 'coat br-5 1 brush'],
  ['br 1 brushed, scratch that, br 2', 'coat br-2 1 brush'],
  ['air 24, sorry 25 degrees, 48', 'air 25C 48%'],
  ['wet 3 60, make that 65um', 'wet br-3 65um'],
])('given br-3 coated, when "%s" is said, then its one tap says what was meant', async (line, meant) => {
  const { card, recorded } = await (await after()).say(line);
  expect(recorded).toBe(false);
  expect(card.actions.map((tap) => tap.line)).toEqual([meant]);
});

it.each([
  ['brocha a la br 1... no, miento, era la 5', 'br-5'],
  ['húmeda 3 60um, perdón, 65um', '65'],
])('given the same in Spanish, when "%s" is said', async (line, meant) => {
  const { actions } = (await (await after(spanish)).say(line)).card;
  expect(actions).toHaveLength(1);
  expect(actions[0]?.line).toContain(meant);
});

it('given the weights, then the one that was misread is not among them', async () => {
  const talk = await after(spanish, ['air 24C 48%', 'mix 2.4kg']);
  const { actions } = (await talk.say('1210 de A, digo 1201, y de B 1199')).card;
  expect(actions[0]?.line).toContain('1201g');
  expect(actions.some(({ line }) => line.includes('1210'))).toBe(false);
});
