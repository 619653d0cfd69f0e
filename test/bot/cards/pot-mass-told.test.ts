// That a bigger pot lives shorter is told while B can still stay out. By hand from the demo sheets, which are invented: Demo
// Build 240 min at 20 degC, 1 up to 10 kg and 0.6 at 30 kg; Demo Clear gives no figure by mass, its time is for 3 kg.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew, talkAfter } from './session-talk.ts';

const air = 'air 20C 50%';
// 20 kg is half the way from 10 to 30: 0.8 of 240 min.
const share = 'So much in one pot: the sheet gives it 80 % of the usual pot life.';
const ahead = 'Once B is in, such a pot lives 3 h 12 min in this air.';
const tested = "The sheet's pot life is for 3000 g. A bigger pot lives shorter; the sheet gives no figure.";

describe('a sheet that says how pot life goes with the mass', () => {
  it('given 20 kg, then the card of the new batch and that of A alone tell the life of such a pot', async () => {
    const { card } = await talkAfter(air);
    expect((await card('mix 20kg build')).lines).toEqual(expect.arrayContaining([share, ahead]));
    // 5.4 of 6.45 parts are A.
    expect((await card('weigh 1 a 16744g')).lines).toEqual(expect.arrayContaining([share, ahead]));
    const both = await card('weigh 1 b 3256g');
    expect(both.lines).toContain(share);
    expect(both.lines).not.toContain(ahead);
  });

  it('given more A than was planned, then it is the life of the pot that comes of it', async () => {
    const { card } = await talkAfter(air, 'mix 10kg build');
    expect((await card('weigh 1 a 16744g')).lines).toContain(share);
  });

  it('given a mix that the sheet gives its whole time, then nothing is said', async () => {
    const { say } = await talkAfter(air);
    expect((await say('mix 10kg build')).text).not.toContain('such a pot');
  });

  it('given no reading of the air, then the life is the shortest that the sheet gives', async () => {
    const { say } = await talkAfter();
    // 60 min at 40 degC, the end of its range: 0.8 of it.
    expect((await say('mix 20kg build permit no gauge')).text).toContain(
      'such a pot lives 48 min at worst: no air is read',
    );
  });

  it('given a plan, then the life of one of its pots is told before anything is mixed', async () => {
    const { say } = await talkAfter(air);
    const { text } = await say('plan 1x60m2 brush build');
    expect(text).toMatch(/the sheet gives it \d\d % of the usual pot life/);
    expect(text).toMatch(/such a pot lives 3 h \d+ min in this air/);
  });
});

describe('a sheet that gives no figure by mass', () => {
  it.each(['mix 3.1kg', 'plan 1x90m2 brush'])('given %s, then it says for how much its pot life is', async (line) => {
    const { card } = await talkAfter(air);
    expect((await card(line)).lines).toContain(tested);
  });

  it('given A alone, then it says so before B, and again when both are in', async () => {
    const { card } = await talkAfter(air, 'mix 4kg');
    expect((await card('weigh 1 a 2000g')).lines).toContain(tested);
    expect((await card('weigh 1 b 2000g')).lines).toContain(tested);
  });

  it('given no more than it was tested with, then nothing is said', async () => {
    const { card } = await talkAfter(air);
    expect((await card('mix 3kg')).lines).not.toContain(tested);
  });
});

it('given a Spanish reader, then both are told in Spanish', async () => {
  const people = sprayCrew.people.map((person) => ({ ...person, language: 'es' }));
  const { say, close } = sessionTalk(':memory:', { ...sprayCrew, people });
  onTestFinished(close);
  const card = async (line: string) => (await say(line)).card;
  await say('aire 20C 50%');
  expect((await card('mezclar 4kg')).lines.join('\n')).toContain(
    'es para 3000 g. Más cantidad junta dura menos; no da cifra.',
  );
  expect((await card('mezclar 20kg build')).lines).toContain('Con la Parte B dentro dura 3 h 12 min con este aire.');
});
