// What is told of a part in the oven is one sum on every card, and nothing leaves from it by a decision. One hour at 90 degC:
// common practice, no source; all other figures are invented.

import { describe, expect, it } from 'vitest';
import { sessionTalk } from './session-talk.ts';

const inOven = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 103m', 'filter 1'],
  ...['part plate-1 cast-iron 30mm', 'coat plate-1 1 brush', 'wait 12m', 'dry plate-1'],
];

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of [...inOven, ...lines]) await say(line);
  return say;
}

describe('a part that cures in the room', () => {
  it('given the night was colder than the sheet has a figure for, then the answer names the part and its new end', async () => {
    const say = await talkAfter('cure plate-1 room', 'wait 22h');
    const [, before] = /plate-1: in cure, rings at (.*)/.exec((await say('air 24C 48%')).text) ?? [];
    const [, after] = /plate-1: in cure, rings at (.*)/.exec((await say('night 12C')).text) ?? [];
    expect(before).toBeDefined();
    expect(after).toBeDefined();
  });
});

describe('a part that is still in the oven', () => {
  it('given nothing was measured, then its card and what objects to taking it out name one minute, as an estimate', async () => {
    const say = await talkAfter();
    const { text } = await say('cure plate-1 oven 95C');
    const [, due] = /estimate, not measured: (\d\d:\d\d)/.exec(text) ?? [];
    expect(due).toBeDefined();
    const told = `The cure time is not given: 0 % so far is proved. Estimate, not measured: at ${due}.`;
    for (const line of ['out plate-1', 'release plate-1']) expect((await say(line)).card.lines).toContain(told);
  });

  it('given it is held, then no reason lifts hold and cure at once: it is taken out first', async () => {
    const say = await talkAfter('cure plate-1 oven 95C', 'hold plate-1 runs at the rim');
    const { lines, actions } = (await say('release plate-1')).card;
    expect(lines[0]).toBe('It has been in the oven since 09:55. Take it out first, and say out.');
    expect(actions.map(({ line }) => line)).toContain('out plate-1');
    expect((await say('release plate-1 permit customer agreed')).card.title).toBe('Not yours to decide');
    const out = (await say('out plate-1 already')).card.actions;
    expect(out.find(({ id }) => id === 'lift')?.line).toBe('release plate-1 permit hold {why}');
    const both = await say('release plate-1 permit customer agreed');
    expect([both.kind, both.card.actions.map(({ id }) => id)]).toEqual([
      'objection',
      ['left-unreleased', 'lift', 'lift-cure'],
    ]);
    const one = await say('release plate-1 permit hold customer agreed');
    expect(one.card.actions.find(({ id }) => id === 'lift-cure')?.line).toBe(
      'release plate-1 permit hold "customer agreed" permit cure {why}',
    );
  });
});
