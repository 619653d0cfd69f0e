// A bell that somebody wants for themselves: asked for in their own words, rung once at its time for them alone, taken back with Undo.

import { describe, expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };

function talking(crew = sprayCrew) {
  const talk = sessionTalk(openSqliteStore(':memory:'), crew);
  onTestFinished(talk.close);
  const bells = () => talk.heard.filter(({ kind }) => kind === 'reminder').map(({ card }) => card);
  return { ...talk, bells };
}

describe("a bell of one's own", () => {
  it.each([
    ['poke me in 15', '08:15'],
    ['remind me in 20 min to check the gun', '08:20'],
    ['remind me to close can 2 in half an hour', '08:30'],
    ['set a timer for 20 minutes', '08:20'],
    ['can you ping me at 10:15 about the argon?', '10:15'],
    ['give me a shout in an hour', '09:00'],
    ['set an alarm for 3pm', '15:00'],
  ])('given 08:00, when "%s" is said, then it rings at %s', async (line, at) => {
    const { card, recorded } = await talking().say(line);
    expect(recorded).toBe(true);
    expect(card.title).toBe(`Bell at ${at}`);
  });

  it.each([
    ['recuérdame en 15 minutos cerrar la lata', '8:15'],
    ['avísame en media hora', '8:30'],
    ['recuérdame cerrar la lata en 15 minutos', '8:15'],
    ['ponme una alarma a las 10:30 para sacar la pieza', '10:30'],
  ])('given Spanish, when "%s" is said, then it rings at %s', async (line, at) => {
    expect((await talking(spanish).say(line)).card.title).toBe(`Aviso a las ${at}`);
  });

  it('when its time comes, then it says what for, rings once, and for nobody else', async () => {
    const { say, bells } = talking();
    await say('remind me in 20 min to check the gun');
    await say('wait 19m');
    expect(bells()).toEqual([]);
    await say('wait 5m');
    await say('wait 3h');
    expect(bells().map(({ title, ping }) => [title, ping])).toEqual([['check the gun', ['omar']]]);
  });

  it('when it is taken back, then nothing rings', async () => {
    const { say, bells } = talking();
    const { card } = await say('remind 15m');
    await say(card.actions.find(({ label }) => label === 'Undo')?.line ?? '');
    await say('wait 1h');
    expect(bells()).toEqual([]);
  });

  it('when it is put off, then it rings again so much later', async () => {
    const { say, bells } = talking();
    await say('remind 10m look at the oven');
    await say('wait 10m');
    await say('snooze 5m');
    await say('wait 5m');
    expect(bells()).toHaveLength(2);
  });

  it.each(['remind 0m', 'remind 13h', 'remind', 'remind me'])('given "%s", then it asks in how long', async (line) => {
    const { card, recorded } = await talking().say(line);
    expect(recorded).toBe(false);
    expect(card.lines.join('\n')).toMatch(/in how long|remind 15m/);
  });

  it('given what rings by itself, then nothing is recorded, and when it will be is told', async () => {
    const { say } = talking();
    for (const line of ['air 24C 48%', 'part a1', 'mix 2.4kg', 'weigh 1 1200g 1200g']) await say(line);
    const { card, recorded } = await say('ping me when 1 is stirred');
    expect(recorded).toBe(false);
    expect(card.title).toContain('09:42');
  });

  it('given a crew that reads English, then a Spanish wish has its words and its time', async () => {
    const { card } = await talking().say('recuérdame cerrar la lata en 15 minutos');
    expect([card.title, card.lines.at(-1)]).toEqual(['Bell at 08:15', 'cerrar la lata']);
  });

  it('given a timer that rang, then nothing is recorded', async () => {
    expect((await talking().say('timer rang for 8 in 10 min')).recorded).toBe(false);
  });

  it("given a cry, then it is no bell of one's own", async () => {
    expect((await talking().say('alarm')).card.title).toBe('Not clear');
  });
});
