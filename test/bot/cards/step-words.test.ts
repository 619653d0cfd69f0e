// What a card prints of a step is what its reader takes, in every country of both tongues; neither yes nor no is asked, and
// nobody is asked of an oven for what cures in the room.

import { describe, expect, it } from 'vitest';
import { englishSteps } from '../../../bot/language/tongues/english/steps.ts';
import { spokenIn } from '../../../bot/language/tongues/spanish/spoken.ts';
import { spanishSteps } from '../../../bot/language/tongues/spanish/steps.ts';
import { askedSteps } from '../../../core/steps/step-rows.ts';
import { sessionTalk, sprayCrew, taps } from './session-talk.ts';

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of lines) await say(line);
  return say;
}

const inSpanish = (language: string) => {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  return sessionTalk(':memory:', { ...sprayCrew, language, people });
};

const pot = ['air 22C 50%', 'mix 2.4kg', 'weigh 1 1201g 1198g', 'wait 110m', 'filter 1 already'];

describe('the words of a step', () => {
  it.each(askedSteps)('given %s as its card prints it, then it is read', async (step) => {
    const { name } = englishSteps('en-GB').rows[step];
    const say = await talkAfter();
    expect((await say(`confirm ${name} yes`)).card.title).toBe(englishSteps('en-GB').noted(step, true));
  });

  it.each(['es-ES', 'es-MX', 'es-US'].flatMap((country) => askedSteps.map((step) => [country, step] as const)))(
    'given in %s %s as its card prints it, then it is read',
    async (country, step) => {
      const { rows, noted } = spanishSteps(spokenIn(country));
      const { say } = inSpanish(country);
      expect((await say(`confirmo ${rows[step].name} sí`)).card.title).toBe(noted(step, true));
    },
  );

  it('given neither yes nor no, then both are a tap and nothing is recorded', async () => {
    const say = await talkAfter('air 22C 50%', 'mix 2.4kg');
    const answer = await say('confirm 1 bonding');
    expect(answer.recorded).toBe(false);
    expect(Object.values(taps(answer))).toEqual(['confirm 1 bonding yes', 'confirm 1 bonding no']);
    expect((await say('tap meant-2')).card.title).toBe('Lacking: vessels bonded and earthed');
  });
});

describe('what nobody has said', () => {
  it('given a part that cures in the room, then its card is silent of the oven; one in the oven, of the room', async () => {
    const say = await talkAfter(...pot, 'coat new lid-1, new lid-2 1 brush', 'wait 12m', 'dry lid-1, lid-2');
    await say('cure lid-1 room');
    await say('cure lid-2 oven 90C already');
    const unsaid = async (part: string) => (await say(`card ${part}`)).text.match(/Nobody has said: (.*)/)?.[1] ?? '';
    const [inRoom, inOven] = [await unsaid('lid-1'), await unsaid('lid-2')];
    expect([inRoom.includes('a clean place to cure in'), inRoom.includes('a clean oven')]).toEqual([true, false]);
    expect([inOven.includes('a clean place to cure in'), inOven.includes('a clean oven')]).toEqual([false, true]);
  });

  it('given a pot past its life, then what is said of its vessels afterwards does not count for it', async () => {
    const say = await talkAfter(...pot, 'wait 8h', 'confirm 1 bonding yes');
    const { text } = await say('card 1');
    expect(text).toMatch(/Nobody has said: .*vessels bonded and earthed/);
    expect(text).not.toContain('Kept: vessels bonded');
  });

  it('given a coat before it was said, then it does not count for that coat', async () => {
    const say = await talkAfter(...pot, 'coat new lid-1 1 brush', 'wait 1m', 'confirm 1 bonding yes');
    expect((await say('card lid-1')).text).not.toContain('Kept: vessels bonded');
  });
});
