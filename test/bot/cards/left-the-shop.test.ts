// What the cards say of parts that have left the shop, and who is called: the lead and the supervisor, for what nobody released and
// for what was let go before it was known to be wrong.

import { describe, expect, it } from 'vitest';
import { sessionTalk, sprayCrew, taps } from './session-talk.ts';

const cured = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1', 'coat new a1 a2 1 brush', 'wait 12m'],
  ...['dry a1 a2', 'cure a1 a2 oven 90C', 'temp a1 90C', 'temp a2 90C', 'wait 60m', 'temp a1 90C', 'temp a2 90C'],
  'out a1 a2',
];

const crew = {
  ...sprayCrew,
  people: [...sprayCrew.people, { name: 'bea', role: 'supervisor' as const, language: 'en', units: 'metric' as const }],
};

async function said(...lines: readonly string[]) {
  const talk = sessionTalk(':memory:', crew);
  for (const line of lines) await talk.say(line);
  return talk;
}

describe('what left unreleased', () => {
  it('given crew tells that a part is gone, then lead and supervisor are called, and the card says what to do', async () => {
    const { say } = await said(...cured);
    const { card, recorded } = await say('@kari: the customer came for a1 and took it');
    expect(recorded).not.toBe(true);
    // Whoever only names it agrees to nothing.
    expect((await say('@kari: a1')).recorded).toBe(false);
    const told = await say(`@kari: ${card.actions[0]?.line ?? ''}`);
    expect(told.card.lines.join(' ')).toMatch(/nobody had released it\. Have it fetched back/);
    expect(told.card.ping).toEqual(expect.arrayContaining(['omar', 'bea']));
    // What becomes of it, and nothing that is done to it here.
    expect(Object.keys(taps(told))).toEqual(['rework', 'scrap', 'return']);
  });

  it('given it stays away, then what runs and the day show it until somebody settles it', async () => {
    const { say } = await said(...cured, 'shipped a1');
    expect((await say('now')).card.lines.join('\n')).toContain(
      'a1: left the shop. On hold: left the shop, not released',
    );
    expect((await say('day')).card.lines.join('\n')).toContain('nobody had released it');
    await say('@omar: release a1 permit the customer inspected it on site');
    expect((await say('now')).card.lines.join('\n')).not.toContain('a1: left');
  });

  it('given it was released before it went, then the card says by whom and calls nobody', async () => {
    const { say } = await said(...cured, '@omar: release a1');
    const { card } = await say('@kari: shipped a1');
    expect(card.lines).toContainEqual(expect.stringMatching(/^Released by omar/));
    expect(card.ping).toEqual([]);
  });
});

describe('a mix that is put right after its parts were let go', () => {
  it('given one is here and one has gone, then both are named ahead of all else, each with what to do', async () => {
    const { say } = await said(...cured, '@omar: release a1 a2', 'shipped a2');
    const { card } = await say('@omar: amend 1 weigh 1200g 1300g wrong scale');
    expect(card.lines.slice(0, 2)).toEqual([
      'Released before this was known, and on hold from now on: a1.',
      'Left the shop before this was known: a2. Tell the customer; have them held where they are, or fetched back.',
    ]);
    expect(card.ping).toEqual(expect.arrayContaining(['omar', 'bea']));
  });
});
