// What a card asked is answered as people answer: in a sentence. A missing fact is taken; what somebody vouches for is one tap.

import { expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };

async function after(asked: string, crew = sprayCrew) {
  const talk = sessionTalk(openSqliteStore(':memory:'), crew);
  onTestFinished(talk.close);
  await talk.say('air 24C 48%');
  await talk.say(asked);
  return talk;
}

it.each([
  ['yes, stirrer and lamps are all ex rated', ['confirm 1 equipment yes']],
  ['all of it is rated yes', ['confirm 1 equipment yes']],
  ["the fan isn't rated", ['confirm 1 equipment no']],
  ['not sure the fan is rated', ['confirm 1 equipment yes', 'confirm 1 equipment no']],
])(
  'given a mix asks whether all is rated, when "%s" is said, then a tap says it and nothing is recorded',
  async (line, taps) => {
    const { card, recorded } = await (await after('mix 2.4kg')).say(line);
    expect(recorded).toBe(false);
    expect(card.actions.map((tap) => tap.line)).toEqual(taps);
  },
);

it('given the same in Spanish', async () => {
  const { card } = await (await after('mix 2.4kg', spanish)).say('sí, agitador y lámparas están clasificados');
  expect(card.actions.map((tap) => tap.line)).toEqual(['confirm 1 equipment yes']);
});

it('given no card asked, then whoever speaks of lamps confirms nothing', async () => {
  const { card } = await (await after('air 24C 49%')).say('the stirrer and lamps are rated');
  expect(card.actions.some(({ line }) => line.startsWith('confirm'))).toBe(false);
});

it.each(['I have argon', "we've got argon here", 'yes I told you I have argon', 'argon', 'nitrogen'])(
  'given a can asks for gas or whole, when "%s" is said, then the gas is at hand',
  async (line) => {
    const { recorded, card } = await (await after('open A lot 77 5kg exp 2026-12')).say(line);
    expect(recorded).toBe(true);
    expect(card.lines.join(' ')).toContain('Gas over it');
  },
);

it('given the same in Spanish, then `ya te dije que tengo argón` answers it', async () => {
  const talk = await after('open A lot 77 5kg exp 2026-12', spanish);
  expect((await talk.say('ya te dije que tengo argón')).recorded).toBe(true);
});
