// A slip in a part's name is one tap away from what was meant, whatever the act.

import { afterEach, describe, expect, it } from 'vitest';
import { sessionTalk, taps } from './session-talk.ts';

let talk: ReturnType<typeof sessionTalk>;
afterEach(() => talk.close());

async function coated(): Promise<void> {
  talk = sessionTalk();
  for (const line of ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g', 'wait until 09:42', 'filter 1']) {
    await talk.say(line);
  }
  await talk.say('coat new impeller-7 rail-2 1 dip');
}

describe('a name that is nearly a part’s', () => {
  it.each([
    ['dry impeler-7', 'dry impeller-7'],
    ['dry impeler-7 rail-2', 'dry impeller-7 rail-2'],
    ['wet impeler-7 60 65 58um', 'wet impeller-7 60 65 58um'],
    ['hold impeler-7 orange peel', 'hold impeller-7 "orange peel"'],
    ['cure impeler-7 oven 90C', 'cure impeller-7 oven 90C'],
  ])('given "%s", then "%s" is one tap', async (typed, meant) => {
    await coated();
    const answer = await talk.say(typed);
    expect(answer).toMatchObject({ kind: 'misread', code: 'new-part', recorded: false });
    expect(Object.values(taps(answer))[0]).toBe(meant);
  });

  it('given the tap is pressed, then it is recorded of that part', async () => {
    await coated();
    await talk.say('dry impeler-7');
    const answer = await talk.say('tap part-1');
    expect(answer).toMatchObject({ kind: 'reply', recorded: true });
    expect(answer.card.title).toContain('impeller-7');
  });

  it('given a name like none, then only that it is new, and the act goes on from there', async () => {
    await coated();
    expect(taps(await talk.say('dry bracket-12'))).toEqual({ 'new-part': 'dry new bracket-12' });
    expect(await talk.say('tap new-part')).toMatchObject({ kind: 'objection', code: 'not-coated', recorded: false });
  });

  it('given a decision on a name like none, then nothing is offered: nobody releases what was never there', async () => {
    await coated();
    expect(taps(await talk.say('release bracket-12'))).toEqual({});
  });
});

describe('a name that nobody has used', () => {
  const labels = (answer: Awaited<ReturnType<typeof talk.say>>) =>
    answer.card.actions.map(({ label, line }) => [label, line]);

  async function booked(): Promise<void> {
    talk = sessionTalk();
    for (const line of ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g', 'part impeller-1; part impeller-4']) {
      await talk.say(line);
    }
    for (const line of ['wait until 09:42', 'filter 1']) await talk.say(line);
  }

  it('given many of which one is nearly known, then that one first, then that all are new', async () => {
    await booked();
    const answer = await talk.say('coat imp-1 x-1..x-39 1 brush');
    expect(labels(answer)).toEqual([
      ['imp-1 is impeller-1; 39 new', 'coat new impeller-1 x-1..x-39 1 brush'],
      ['All 40 are new: coat them', 'coat new imp-1 x-1..x-39 1 brush'],
    ]);
  });

  it('given the tap, then one card tells of all, and how many were new', async () => {
    await booked();
    await talk.say('coat x-1..x-40 1 brush');
    const { card } = await talk.say('tap new-part');
    expect(card.title).toBe('x-1 to x-40: coated (brush, batch 1)');
    expect(card.lines.join(' ')).toContain('40 are new here, x-1 to x-40');
  });

  it('given a coat, then the near ones come first, and each tap says what it does', async () => {
    await booked();
    const answer = await talk.say('coat imp-1 1 brush');
    expect(answer).toMatchObject({ kind: 'misread', code: 'new-part', recorded: false });
    expect(answer.card.lines[0]).toBe('imp-1 is not known here. Near: impeller-1. Which is meant?');
    expect(labels(answer)).toEqual([
      ['Coat impeller-1 (batch 1, brush)', 'coat impeller-1 1 brush'],
      ['New part imp-1: coat it', 'coat new imp-1 1 brush'],
    ]);
    expect(await talk.say('tap new-part')).toMatchObject({ recorded: true });
  });

  it('given a coat that has happened, then its tap keeps the time at which it was said', async () => {
    await booked();
    await talk.say('coat zeta-9 1 brush already');
    await talk.say('wait 3m');
    const answer = await talk.say('tap new-part');
    expect(answer.text).toContain('Happened at 09:42, written 3 min later.');
  });

  it('given several, some of them new, then it is asked once for all', async () => {
    await booked();
    expect(labels(await talk.say('coat impeller-1 x-1 x-2 1 brush'))).toEqual([
      ['New parts x-1, x-2: coat them', 'coat new impeller-1 x-1 x-2 1 brush'],
    ]);
  });

  it('given a surface of what may be a place, then both are a tap', async () => {
    await booked();
    expect(labels(await talk.say('surface tank-1 15C'))).toEqual([
      ['New part tank-1: its surface', 'surface new tank-1 15C'],
      ['tank-1 is a place: its steel', 'surface new 15C in tank-1'],
    ]);
  });

  it.each([
    ['coat impeller-01 1 brush', ['coat impeller-1 1 brush']],
    ['coat impeller brush', ['coat impeller-1 brush', 'coat impeller-4 brush']],
    ['coat imp 1 brush', ['coat impeller-1 1 brush', 'coat impeller-4 1 brush']],
  ])('given "%s", of other zeros or without its number, then the known ones are a tap', async (typed, meant) => {
    await booked();
    const lines = Object.values(taps(await talk.say(typed)));
    expect(lines.slice(0, -1)).toEqual(meant);
    expect(lines.at(-1)).toBe(typed.replace('coat', 'coat new'));
  });

  it('given a figure whose unit slipped, then the figure is offered', async () => {
    await booked();
    expect(Object.values(taps(await talk.say('prep impeller-1 sa2.5 60uwn')))).toEqual(['prep impeller-1 sa2.5 60um']);
  });
});
