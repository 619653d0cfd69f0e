// What a job asks for before a release, on cards: still lacking on each card of the part, in both tongues, with taps that give it.

import { describe, expect, it } from 'vitest';
import { sessionTalk, sprayCrew, taps } from './session-talk.ts';

const cured = [
  ...['part a1 job 88', 'air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1', 'coat a1 1 brush'],
  ...['wait 12m', 'dry a1', 'cure a1 oven 90C', 'temp a1 90C', 'wait 60m', 'temp a1 90C'],
];

async function said(language: string, ...lines: readonly string[]) {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  const talk = sessionTalk(':memory:', { ...sprayCrew, people });
  for (const line of lines) await talk.say(line);
  return talk;
}

describe('what a job asks for before a release', () => {
  it('given it is told in words, then the settings card says it back as it was meant', async () => {
    const { say } = await said('en');
    const { card } = await say('job 88 asks film, adhesion 4B, rub 50 and second eyes');
    expect(card.lines).toEqual([
      'Asked by job: 88: dry film, adhesion 4B or better, 50 double rubs, release by somebody who did not coat it',
    ]);
  });

  it('given it is told in Spanish, then it says it back in Spanish', async () => {
    const { say } = await said('es');
    const { card } = await say('pon orden 88 pide espesor, adherencia 4B y segundos ojos');
    expect(card.lines.join(' ')).toContain('espesor seco, adherencia 4B o mejor, que la libere quien no la pintó');
  });

  it('given the part comes out of cure, then its card says what is still lacking, and the release offers to give it', async () => {
    const { say } = await said('en', 'job 88 asks film adhesion 4B', ...cured);
    const lacking = 'Before its release job 88 still asks: dry film, adhesion 4B or better.';
    expect((await say('out a1')).card.lines).toContain(lacking);
    const refused = await say('release a1');
    expect(refused.card.lines).toContain(lacking);
    expect(taps(refused)).toMatchObject({ film: 'film a1 {dry-films}um', adhesion: 'adhesion a1 {rating}' });
    expect((await say('film a1 10 11 12um')).card.lines).toContain(
      'Before its release job 88 still asks: adhesion 4B or better.',
    );
    expect((await say('adhesion a1 4B')).card.lines.join(' ')).not.toContain('still asks');
    expect((await say('release a1')).recorded).toBe(true);
  });

  it('given a cross-cut below what the job asks, then it is told as failed by the job, and holds the part', async () => {
    const { say } = await said('es', 'set job 88 adhesion 4B', ...cured, 'out a1');
    const { card } = await say('adhesion a1 3B');
    expect(card.lines.join(' ')).toContain('la orden pide 4B o mejor');
    expect(card.lines.join(' ')).toContain('Retenida');
  });
});
