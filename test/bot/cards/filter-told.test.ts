// Through what a mix was filtered and into what: told, objected to, recorded, put right, taken back. 1 micrometre glass fibre
// into a second clean vessel: common practice, no source.

import { describe, expect, it } from 'vitest';
import { sessionTalk } from './session-talk.ts';

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of lines) await say(line);
  return async (line: string) => (await say(line)).card;
}

const stirred = ['air 22C 50%', 'mix 2.4kg', 'weigh 1 1201g 1198g', 'wait 110m', 'stop 1'];
const asSheet = '1 µm glass fibre, second vessel';

describe('the filter of a pot', () => {
  it('given what the sheet names, then the tap says what it records, and day, trace, run and traveller have it', async () => {
    const say = await talkAfter(...stirred);
    const { actions } = await say('card 1');
    const filter = actions.find(({ id }) => id === 'filter');
    expect([filter?.label, filter?.line]).toEqual([`Filtered, ${asSheet}`, 'filter 1 1um glass-fibre second-vessel']);
    expect((await say('tap filter')).lines).toContain(`Filter: ${asSheet}.`);
    for (const line of ['trace 1', 'card 1']) expect((await say(line)).lines.join()).toContain(`filtered, ${asSheet}`);
    expect((await say('day')).lines).toContain(`Batch 1: filtered, ${asSheet}`);
    await say('coat new lid-1 1 brush');
    for (const line of ['card lid-1', 'trace lid-1']) {
      expect((await say(line)).lines.join()).toContain(`filtered, ${asSheet}`);
    }
  });

  it('given no more than that it was filtered, then nothing is asked and nothing is held against it', async () => {
    const say = await talkAfter(...stirred);
    const { title, tone, lines } = await say('filter 1');
    expect([title, tone]).toEqual(['Batch 1: filtered, in use', 'good']);
    expect(lines.join()).not.toContain('Filter:');
    expect((await say('trace 1')).lines.join()).not.toContain('µm');
  });

  it.each([
    ['filter 1 5um', '5 µm', '1 µm'],
    ['filter 1 nylon', 'nylon', 'glass fibre'],
    ['filter 1 1um same vessel', 'same vessel', 'second vessel'],
  ])(
    'given `%s`, then it is objected to before, and recorded it is a deviation that is filtered again',
    async (line, told, asked) => {
      const say = await talkAfter(...stirred);
      const told1 = `Filtering told: ${told}. The sheet: ${asked}. What passes stands in the film as specks: filter as the sheet asks.`;
      const refused = await say(line);
      expect(refused.lines).toContain(told1);
      expect(refused.actions.map(({ id }) => id)).toEqual(expect.arrayContaining(['happened', 'filter']));
      const { tone, lines, actions } = await say(`${line} already`);
      expect(tone).toBe('warn');
      expect(lines.join()).toContain(told1);
      expect(actions.map(({ id }) => id)).toContain('filter');
      for (const asked of ['trace 1', 'day']) expect((await say(asked)).lines.join()).toContain(told1);
      expect((await say('filter 1 1um glass second vessel')).tone).toBe('good');
      expect((await say('filter 1')).lines[0]).toMatch(/^Filtered at .* already\.$/);
    },
  );

  it('given a finer filter, then nothing is held against it', async () => {
    const say = await talkAfter(...stirred);
    expect((await say('filter 1 0.5um')).tone).toBe('good');
  });

  it('given a grade that was misread, then it is put right and taken back like any figure', async () => {
    const say = await talkAfter(...stirred, 'filter 1 5um already');
    expect((await say('amend 1 filter 1um "misread"')).lines).toContain('Is: filtered, 1 µm');
    expect((await say('trace 1')).lines.join()).not.toContain('Filtering told');
    await say('undo');
    expect((await say('trace 1')).lines.join()).toContain('Filtering told: 5 µm');
  });

  it('given what was caught, then its filtering is told and held against the sheet likewise', async () => {
    const say = await talkAfter(...stirred, 'filter 1 1um', 'coat new lid-1 1 flow', 'catch 1 300g');
    expect((await say('filter 1 10um')).lines.join()).toContain('Filtering told: 10 µm');
    expect((await say('filter 1 1um glass second vessel')).lines).toContain(`Filter: ${asSheet}.`);
  });

  it('given its speed was mistyped, then it is put right, and the run has it', async () => {
    const say = await talkAfter(...stirred.slice(0, 3), 'stir 1 400rpm');
    expect((await say('amend 1 stir 350rpm')).lines).toContain('Is: stirrer on, speed of the stirrer 350 rpm');
    expect((await say('card 1')).lines.join()).toContain('stirrer on, speed of the stirrer 350 rpm');
  });
});
