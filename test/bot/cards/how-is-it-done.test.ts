// Whoever asks how something is done gets the way of it and what to wear, what the sheet says, or how it is told; never an act.

import { expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { sessionTalk, sprayCrew } from './session-talk.ts';

const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };
const shift = ['air 24C 48%', 'part a1 4m2', 'mix 2.4kg', 'weigh 1 1200g 1200g'];

async function asking(crew = sprayCrew) {
  const talk = sessionTalk(openSqliteStore(':memory:'), crew);
  onTestFinished(talk.close);
  for (const line of shift) await talk.say(line);
  return talk;
}

it.each([
  ['how do I brush it?', 'Wiping, brush and roller: what to look at', 'Brush: wear gloves, goggles.'],
  ['how to dip these', 'Dipping: what to look at', 'Dip: once, and slowly.'],
  [
    'so how do we flush the brush?',
    'Flush with: acetone, then isopropyl alcohol of 99 %',
    'By the sheet of Demo Clear',
  ],
  ["what's the right way to weigh it", 'weigh, weighed, weight, weights, weighing', 'weigh 1 1201g 1198g'],
  ['how do I cure it', 'cure, curing, bake, baking', 'cure a1 oven 90C'],
])('given "%s", then its way is told and nothing is recorded', async (line, title, told) => {
  const { card, recorded } = await (await asking()).say(line);
  expect(recorded).toBe(false);
  expect(card.title).toBe(title);
  expect(card.lines.join('\n')).toContain(told);
});

it.each([
  ['¿cómo lo aplico con brocha?', 'Trapo, brocha y rodillo: qué mirar'],
  ['cómo hago para meterla al horno', 'curar, cura, curado, curada, curando, hornear'],
  ['cómo preparo la superficie', 'Superficie: perfil de rugosidad de 25 µm a 75 µm'],
])('given "%s", then its way is told in Spanish', async (line, title) => {
  expect((await (await asking(spanish)).say(line)).card.title).toBe(title);
});

it.each(['how is a1', 'how do you know', 'how hot is it'])('given "%s", then it asks no way', async (line) => {
  expect((await (await asking()).say(line)).card.title).not.toMatch(/what to look at|^weigh|^What you can say/);
});

it("given 'what's next', then one step is told, not all that runs", async () => {
  expect((await (await asking()).say("what's next")).card.title).toBe('What now');
});

it('given the help of a coat, then it fits a phone, and what may object is a tap away by who may lift it', async () => {
  const { say } = await asking();
  const { lines, actions } = (await say('help coat')).card;
  expect(lines.length).toBeLessThan(6);
  const rules = actions.find(({ label }) => label === 'What may object');
  const told = (await say(rules?.line ?? '')).card.lines;
  const lead = told.indexOf('A lead may lift these beforehand, with permit and a reason:');
  expect(told.slice(lead + 1)).toContain("blend not done: the product's sheet");
  expect(told.at(-1)).not.toContain('lift');
  expect(told).toContain('Nobody lifts these beforehand:');
});
