// How much is to be mixed for parts that are named or counted; a number in words that counts them is no can and no pot.

import { expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { sessionTalk, sprayCrew } from './session-talk.ts';

const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };
const shift = [
  ...[
    'air 24C 48%',
    'open A lot 77 5kg exp 2026-12 gas',
    'open B lot 78 5kg exp 2026-12',
    'open B lot 79 5kg exp 2026-12',
  ],
  ...['part br-7 0.2m2', 'part br-8 0.2m2', 'part br-9 0.2m2', 'mix 2kg'],
];

async function asking(crew = sprayCrew) {
  const talk = sessionTalk(openSqliteStore(':memory:'), crew);
  onTestFinished(talk.close);
  for (const line of shift) await talk.say(line);
  return talk;
}

it.each([
  ['how much for br-7 and br-8, brushed', 'Plan (brush)'],
  ['how much for 3 parts of 0.4 m2 brush', 'Plan (brush)'],
  ['how much should I mix for br 7 to 9', 'To mix: '],
  ['how much to mix for 7 and 8', 'To mix: '],
])('given "%s", then what is to be mixed for them is told, by that method where one is said', async (line, title) => {
  const { card, recorded } = await (await asking()).say(line);
  expect(recorded).toBe(false);
  expect(card.title.startsWith(title)).toBe(true);
});

it('given parts alone, then each tap plans those parts', async () => {
  const { actions } = (await (await asking()).say('how much do br-7 and br-8 need')).card;
  expect(actions.map(({ line }) => line)).toContain('plan br-7 br-8 brush');
});

it.each(['cuánta mezcla para la 7 y la 8', 'cuánto mezclo para br-7 y br-8'])('given "%s"', async (line) => {
  expect((await (await asking(spanish)).say(line)).card.title).toMatch(/^A mezclar: /);
});

it.each(['how long for the three plates', 'how much for the three plates'])(
  'given "%s", then it is not asked of can 3',
  async (line) => {
    expect((await (await asking()).say(line)).card.title).not.toMatch(/^Can 3/);
  },
);

it('given Spanish, then `las tres` is no can either', async () => {
  expect((await (await asking(spanish)).say('necesito pintar tres placas de acero')).card.title).not.toMatch(/^Lata/);
});

it.each([
  ['how much hardener goes in', sprayCrew, /^Batch 4: Part A: 1000 g, Part B: 1000 g$/],
  ['how much of A am I weighing out again', sprayCrew, /^Batch 4: Part A: 1000 g, Part B: 1000 g$/],
  ['cuánto va de cada componente', spanish, /^Mezcla 4: Parte A: 1000 g, Parte B: 1000 g$/],
  ['de B cuántos gramos son', spanish, /^Mezcla 4: Parte A: 1000 g, Parte B: 1000 g$/],
])('given one pot that waits for its weights, when "%s" is asked, then they are told', async (line, crew, title) => {
  expect((await (await asking(crew)).say(line)).card.title).toMatch(title);
});

it('given that pot weighed, then it is asked of the sheet', async () => {
  const talk = await asking();
  await talk.say('weigh 4 1000g 1000g already');
  expect((await talk.say('how much hardener goes in')).card.title).toMatch(/^A to B 1 : 1/);
});
