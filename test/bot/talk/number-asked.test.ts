// Which number to call is asked ahead, and answered with the number; a cry stays a cry.

import { expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };

async function shop(crew = sprayCrew) {
  const talk = sessionTalk(openSqliteStore(':memory:'), crew);
  onTestFinished(talk.close);
  await talk.say('@rosa: set emergency call 112');
  return talk;
}

it.each([
  ["what's the emergency number", sprayCrew],
  ['what number do I call in an emergency', sprayCrew],
  ["who do I call if there's a fire?", sprayCrew],
  ['a qué número llamo si hay una emergencia', spanish],
  ['¿qué teléfono es el de emergencias?', spanish],
  ['a quién llamo en caso de incendio', spanish],
])('given "%s", then the number is told, and nobody is called', async (line, crew) => {
  const { card, recorded } = await (await shop(crew)).say(line);
  expect(recorded).toBe(false);
  expect(card.title).toContain('112');
});

it.each([
  ['emergencia, a quién llamo', spanish],
  ['a quién llamo, hay fuego', spanish],
  ['hay una emergencia', spanish],
  ['fire, what number do I call', sprayCrew],
])('given "%s", then it is a cry', async (line, crew) => {
  expect((await (await shop(crew)).say(line)).recorded).toBe(true);
});
