// An act that is told where nothing is in the state for it: it is understood, nothing is recorded, and what is lacking is said.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew } from '../../cards/session-talk.ts';

function talkIn(language: 'en' | 'es') {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  const talk = sessionTalk(':memory:', { ...sprayCrew, people });
  onTestFinished(talk.close);
  return talk;
}

describe('given no pot, no can and no part', () => {
  it.each<[string, 'en' | 'es', RegExp]>([
    ['the stirrer is off', 'en', /No batch is live\. Start one with mix/],
    ['ran it thru the 1 micron filter', 'en', /No batch is live\. Start one with mix/],
    ['it gelled', 'en', /No batch is live\. Start one with mix/],
    ['gas is on it', 'en', /No can is open\. Say, for example, open A/],
    ['took it out', 'en', /Nothing is in the oven\. Name the part/],
    ['its dry', 'en', /nothing here waits for that.*\n.*part or parts.*\n.*dry impeller-7/],
    ['put it in the oven', 'en', /nothing here waits for that/],
    ['the fan on the booth is off', 'en', /No spray session is open\. Say brief/],
    ['el agitador está parado', 'es', /No hay ninguna mezcla abierta\. Escriba: mezclar/],
    ['ya está seca', 'es', /Dígalo con aquello a lo que se hizo/],
    ['la extracción de la cabina está parada', 'es', /No hay sesión de pintado abierta/],
  ])('when %j is said, then it is told what is lacking', async (line, language, told) => {
    const answer = await talkIn(language).say(line);
    expect([answer.recorded, answer.text]).toEqual([false, expect.stringMatching(told)]);
    expect(answer.card.title).toBe(language === 'en' ? 'Not clear' : 'No queda claro');
  });

  it.each(['closed the door', 'stopped for lunch', 'it is not dry yet', 'need to stir'])(
    'when %j is said, then no act is made of it',
    async (line) => {
      const answer = await talkIn('en').say(line);
      expect([answer.recorded, answer.text]).toEqual([false, expect.stringMatching(/^Not understood/)]);
      expect(answer.text).not.toMatch(/Taken as/);
    },
  );
});

it('given cans whose lids are on, when the gas is told of none of them, then one tap tells it of each', async () => {
  const talk = talkIn('en');
  await talk.say('open A lot 7731 5kg exp 2027-01 gas');
  await talk.say('blanket 1');
  await talk.say('open B lot 8820 5kg');
  await talk.say('shut 2');
  const answer = await talk.say('gas is on it');
  expect([answer.recorded, answer.card.actions.map(({ line }) => line)]).toEqual([false, ['blanket 1', 'blanket 2']]);
});
