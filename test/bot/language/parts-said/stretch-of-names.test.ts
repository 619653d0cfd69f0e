// Several parts, each by its whole name: from one to another all between are meant, and no mark in a list parts what is told of them.
// What is only begun, or at hand, is no act.

import { describe, expect, it } from 'vitest';
import { sessionTalk } from '../../cards/session-talk.ts';

const parts = ['air 24C 48%', 'part gp-1 gp-2 gp-3 gp-4', 'mix 1kg', 'weigh 1 500g 500g', 'wait 102m', 'filter 1'];

async function said(line: string) {
  const talk = sessionTalk();
  for (const each of parts) await talk.say(each);
  return talk.say(line);
}

describe('from one name to another', () => {
  it.each([
    'GP-1 to GP-3 are 5 mm thick, 0.1 m2 each and take 120C',
    'gp-1 through gp-3 prepped sa2.5',
    'coat gp-1 to gp-3 1 brush',
  ])('given "%s", then the one between is meant as well, and no other', async (line) => {
    const { card } = await said(line);
    const told = [card.title, ...card.lines].join(' ');
    expect(told).toMatch(/gp-2|gp-1 to gp-3/);
    expect(told).not.toContain('gp-4:');
  });

  it('given all of them, then each is asked about', async () => {
    const { card, recorded } = await said('gp-1 to gp-4 are dry');
    expect(recorded).not.toBe(true);
    expect(card.lines.join(' ')).toContain('gp-1 gp-2 gp-3 gp-4');
  });
});

describe('a list of whole names', () => {
  it.each([
    ['gp-1, gp-2 and gp-3 prepped sa2.5', 'prep'],
    ['brushed gp-1, gp-2 and gp-3 with batch 1', 'coat'],
    ['coat gp-1, gp-2 and gp-3 1 brush', 'coat'],
  ])('given "%s", then it is told of each of them at once', async (line) => {
    const { card, recorded } = await said(line);
    expect(recorded).toBe(true);
    expect(card.actions.some((action) => action.line.includes('gp-1 gp-2 gp-3'))).toBe(true);
  });

  it('given a reading of all of them, then the first tap reads each, and none is dropped without a word', async () => {
    const { card } = await said('probe gp-1, gp-2 and gp-3 at 90 degrees');
    expect(card.actions[0]?.line).toBe('temp gp-1 90C; temp gp-2 90C; temp gp-3 90C');
  });
});

it.each(['starting to brush gp-1', 'started coating gp-1', 'I have argon for Part A'])(
  'given what is only begun or at hand ("%s"), then nothing is recorded of it',
  async (line) => {
    const { card, recorded } = await said(line);
    expect(recorded).not.toBe(true);
    expect(card.actions.map((action) => action.line).filter((each) => /^(?:coat|blanket)/.test(each))).toEqual([]);
  },
);
