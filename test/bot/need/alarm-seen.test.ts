// An alarm that is on, a countdown that runs and a drill stand at the top of what runs now and of the board, whoever looks.

import { describe, expect, it } from 'vitest';
import { talkAfter } from '../cards/session-talk.ts';

async function seen(...lines: readonly string[]) {
  const talk = await talkAfter(...lines);
  const { card } = await talk.say('now');
  const [first] = (await talk.board()).items;
  return { card, first };
}

describe('what is on', () => {
  it('given a fire and a pot that runs, then the alarm stands first, told as what it is', async () => {
    const { card, first } = await seen('air 24C 48%', 'mix 2.4kg', '@kari: fire in the booth');
    expect([card.tone, card.lines[0]]).toEqual(['stop', 'ALARM, fire: since 08:00, cried by kari']);
    expect([first?.tone, first?.name]).toEqual(['stop', card.lines[0]]);
  });

  it('given a countdown, then what is left of it is told in seconds', async () => {
    const { card, first } = await seen('@kari: lia is hurt');
    expect(card.lines[0]).toBe(
      'May be a cry, somebody needs help: everybody is called in 20 s, unless somebody says no',
    );
    expect(first?.name).toBe(card.lines[0]);
  });

  it('given a drill, then it is plainly one, and no alarm', async () => {
    const { card, first } = await seen('start drill fire');
    expect([card.tone, card.lines[0]]).toEqual(['plain', 'DRILL, nothing has happened (fire): since 08:00']);
    expect([first?.tone, first?.name]).toEqual(['warn', card.lines[0]]);
  });

  it('given a drill and a real alarm, then the alarm is first', async () => {
    const { card } = await seen('start drill fire', '@kari: eyes');
    expect(card.lines.slice(0, 2)).toEqual([
      expect.stringContaining('ALARM, something in the eyes'),
      expect.stringContaining('DRILL'),
    ]);
  });

  it('given a lead ends it, then nothing of it stands there', async () => {
    const { card } = await seen('fire', 'all clear');
    expect(card.lines.join(' ')).not.toMatch(/ALARM/);
  });
});
