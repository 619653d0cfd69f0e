// How long gas runs over a can: of a can in the record, of a size that the sheet knows, of a headspace, in litres and in cubic feet.
// The sum is that of a well-mixed purge, V = Vh ln(C0 / C), O = C0 exp(-V / Vh), from 20.9 % (29 CFR 1910.134); sheet and can of
// the demo are invented.

import { describe, expect, it } from 'vitest';
import { talkAfter, value } from './session-talk.ts';

describe('minutes of purge', () => {
  it('given a headspace and a flow, then the minutes, the gas, the oxygen left, the sum and what was taken are told', async () => {
    const { say } = await talkAfter();
    const answer = await say('purge 4L 5L/min');
    // 4 L x ln(20.9 / 2) = 9.39 L, at 5 L/min 1.88 min; after two, 20.9 x exp(-10 / 4) = 1.716 %.
    expect(value(answer, 'gas-needed')).toBeCloseTo(9.386, 3);
    expect(value(answer, 'oxygen-left')).toBeCloseTo(1.716, 3);
    expect(answer.card.lines.slice(0, 3)).toEqual([
      '2 min at 5 L/min leave 1.8 % oxygen.',
      'Sum: gas = headspace × ln(20.9 % / 2 %), the sheet’s target; it holds where the gas mixes with the air.',
      'Taken: the headspace as you gave it; clean gas.',
    ]);
    expect(answer.recorded).toBe(false);
  });

  it('given less time than that, then it says what is left and that it is too short', async () => {
    const { card } = await (await talkAfter()).say('purge 4L 5L/min 1min');
    expect([card.tone, card.lines[0]]).toEqual(['warn', '1 min at 5 L/min leave 6 % oxygen.']);
    expect(card.lines[1]).toBe('The sheet asks for 2 % or less: let it run longer.');
  });

  it('given a can of the record, then its size and what is left in it are taken, and asked with how long too', async () => {
    const { say } = await talkAfter('open A lot 7731 5kg argon');
    const answer = await say('purge can 1 at 5 L/min');
    expect(answer.text).toContain('Taken: the can holds 6 L brimful, 5000 g left in it; clean gas.');
    expect((await say('how long purge can 1 5 L/min')).card).toEqual(answer.card);
  });

  it('given only a size, then the most gas is taken, and less where somebody says what is left', async () => {
    const { say } = await talkAfter();
    expect(value(await say('purge 5kg can argon 5L/min'), 'headspace')).toBe(6);
    expect(value(await say('purge 5kg can 3kg left argon 5L/min'), 'headspace')).toBeLessThan(3);
    expect((await say('purge 20kg can argon 5L/min')).text).toContain('Say its headspace');
  });

  it('given whoever reads cubic feet, then it is told in those', async () => {
    const { say } = await talkAfter('@kari: set units us');
    expect((await say('@kari: purge 4L 10 cfh')).card.lines[0]).toBe('2 min at 10 ft³/h leave 2 % oxygen.');
  });
});

describe('the shop’s own flow', () => {
  it('given none is set, then it is asked for, and a can’s card says no minutes', async () => {
    const { say } = await talkAfter('open A lot 7731 5kg argon');
    expect((await say('purge 1')).text).toContain('At which flow?');
    expect((await say('blanket 1')).text).not.toContain('min at');
  });

  it('given it is set, then the card of a can says how long in one line', async () => {
    const { say } = await talkAfter('set gas-flow 5L/min', 'open A lot 7731 5kg argon');
    expect((await say('blanket 1')).card.lines).toContain('1 min at 5 L/min leave 0.1 % oxygen.');
    expect((await say('purge 1')).card.lines[0]).toBe('1 min at 5 L/min leave 0.1 % oxygen.');
  });

  it('given a Spanish reader, then it is told in Spanish', async () => {
    const { say } = await talkAfter('@kari: set language es');
    expect((await say('@kari: purgar 4L 5L/min')).card.lines[0]).toBe('2 min a 5 L/min dejan 1,8 % de oxígeno.');
  });
});
