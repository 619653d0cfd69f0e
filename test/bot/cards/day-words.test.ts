// What the day says of bells and corrections: in the reader's words, each bell once, and no key of the machine's. Invented.

import { describe, expect, it } from 'vitest';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { demoCrew } from '../../core/given.ts';
import { sessionTalk } from './session-talk.ts';

const inSpanish: CrewFile = { ...demoCrew, people: demoCrew.people.map((person) => ({ ...person, language: 'es' })) };

async function linesOfDay(crew: CrewFile, ...said: readonly string[]) {
  const { say, close } = sessionTalk(':memory:', crew);
  for (const line of said) await say(line);
  const { lines } = (await say('day')).card;
  close();
  return { lines };
}

const opened = ['air 24C 48%', 'open A lot 7731 5kg exp 12/26 gas', 'wait 40m'];

describe('the day', () => {
  it('given a bell that rang three times unheard, then it stands there once, with how often', async () => {
    const { lines } = await linesOfDay(demoCrew, ...opened);
    expect(lines.filter((line) => line.startsWith('Unanswered'))).toEqual([
      'Unanswered: Can 1: gas over it now (3 times)',
    ]);
  });

  it('given a Spanish reader, then the same in Spanish', async () => {
    const { lines } = await linesOfDay(inSpanish, ...opened);
    expect(lines.filter((line) => line.startsWith('Sin contestar'))).toEqual([
      'Sin contestar: Lata 1: gas ahora (3 veces)',
    ]);
  });

  it('given a correction that was taken back, then its reason is a word of the reader’s', async () => {
    const pot = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'amend 1 weigh 1210g 1200g misread', 'undo'];
    const { lines } = await linesOfDay(inSpanish, ...pot);
    expect(lines).toContainEqual(expect.stringMatching(/^Corregido .* \(deshacer\)$/));
  });
});

it('given a word that begins one act in two tongues, then it is offered once, in the speaker’s own', async () => {
  const { say, close } = sessionTalk(':memory:', inSpanish);
  const { card } = await say('gas');
  expect(card.actions.map(({ line }) => line)).toEqual(['gas puesto']);
  close();
});

it.each([
  ['en', 'Morning list: can 1 near expiry'],
  ['es', 'Repaso de la mañana: lata 1, cerca de caducar'],
])(
  'given a can that expires in months in %s, then the list of what rings says that this is what its morning is for',
  async (language, said) => {
    const { say, close } = sessionTalk(':memory:', language === 'es' ? inSpanish : demoCrew);
    await say('open A lot 7731 5kg exp 12/26 gas');
    expect((await say('now')).card.lines.join('\n')).toContain(said);
    close();
  },
);

it('given a digest and a week, then the record’s end is told by its beginning, which proves as the whole does', async () => {
  const { say, heard, close } = sessionTalk();
  await say('air 24C 48%');
  await say('wait until 18:00');
  const digest = heard.find(({ key }) => key?.startsWith('crew/digest') === true) ?? expect.fail();
  for (const text of [digest.text, (await say('week')).text]) {
    expect(text).not.toMatch(/[0-9a-f]{17}/);
    expect((await say(/verify [0-9a-f]{16}/.exec(text)?.[0] ?? '')).card.tone).toBe('good');
  }
  close();
});
