// What a can's cards say and offer. Part A of the demo sheet is lost under air and settles: common practice, no source; its
// minutes are invented.

import { describe, expect, it } from 'vitest';
import { sessionTalk } from './session-talk.ts';

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of lines) await say(line);
  return async (line: string) => (await say(line)).card;
}

const opened = ['air 22C 50%', 'open A lot 7731 5kg gas', 'mix 2.4kg'];

describe('Part A stirred alone', () => {
  it('given that its lid went on too soon, then the weighing says how long it was stirred, and offers the stir', async () => {
    const say = await talkAfter(...opened, 'prestir 1', 'wait 1m', 'blanket 1');
    const { lines, actions } = await say('weigh 2 1201g 1198g');
    expect(lines[0]).toMatch(/^Can 1 is not stirred long enough \(1 min of 2 min\)/);
    expect(actions.map(({ line }) => line)).toContain('prestir 1 gas');
  });

  it('given that it was stirred, then the time given stands in the trace', async () => {
    const say = await talkAfter(...opened, 'prestir 1', 'wait 3m', 'weigh 2 1201g 1198g');
    expect((await say('trace 2')).lines).toContainEqual(
      expect.stringContaining('can 1, 1201 g, stirred in the can 3 min of 2 min'),
    );
  });
});

describe('the lid of a can whose part needs no gas', () => {
  it('given it is put back, then the card tells of a lid and of no gas that nobody gave', async () => {
    const say = await talkAfter('air 22C 50%', 'open B lot 8820 5kg');
    const { title, lines } = await say('shut 1');
    expect([title, ...lines].join('\n')).toBe('Can 1: lid on');
  });
});

describe('given a can that was poured from with gas over it four minutes later', () => {
  const poured = [...opened, 'prestir 1', 'wait 2m', 'weigh 2 1201g 1198g', 'wait 4m', 'blanket 1'];

  it('when its batch is traced, then when gas went over it and how long it stood open stand there', async () => {
    const say = await talkAfter(...poured);
    expect((await say('trace 2')).lines).toContainEqual(
      expect.stringMatching(/can 1, 1201 g, .*, gas over it at \d\d:\d\d, 6 min after the lid came off$/),
    );
  });

  it('when its run is looked up, then the stir in the can, for how long, and the gas over it stand there', async () => {
    const say = await talkAfter(...poured);
    const { lines } = await say('card 2');
    expect(lines).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/can 1: stirring in the can \(omar\)$/),
        expect.stringMatching(/can 1: gas over it, lid on \(omar\)$/),
        expect.stringMatching(/^Part A: lot 7731, can 1, 1201 g, stirred in the can 2 min of 2 min, gas over it at /),
      ]),
    );
  });

  it('when the day is asked for, then they stand there too; opened again, that no gas was told', async () => {
    const say = await talkAfter(...poured);
    expect((await say('day')).lines).toContainEqual(
      expect.stringMatching(/^Can 1 Part A, lot 7731: 1201 g taken, 3799 g left, gas over it at .*, 6 min after/),
    );
    await say('lid 1 gas');
    expect((await say('day')).lines).toContainEqual(expect.stringMatching(/^Can 1 .*, gas over it not told$/));
  });

  it('when the can or its lot is traced, then everything done to it stands there with who did it', async () => {
    const say = await talkAfter(...poured, 'lid 1 gas', 'shut 1 already', 'discard 1 stood open');
    const history = [
      expect.stringMatching(/: can 1 opened: Part A, lot 7731, 5000 g, gas at hand$/),
      expect.stringMatching(/: stirring in the can$/),
      expect.stringMatching(/: 1201 g poured into batch 2$/),
      expect.stringMatching(/: gas over it, lid on$/),
      expect.stringMatching(/: lid off, gas at hand$/),
      expect.stringMatching(/: lid on, without gas$/),
      expect.stringMatching(/: discarded, stood open$/),
    ];
    expect((await say('trace can 1')).lines).toEqual(history);
    expect((await say('card can 1')).lines).toEqual(history);
    expect((await say('trace lot 7731')).lines).toEqual(expect.arrayContaining(history));
    expect((await say('trace can 9')).lines).toEqual([]);
  });
});

describe('given a delivery of sealed cans', () => {
  const delivered = ['air 22C 50%', 'received 4x5kg A lot 7731 exp 2026-03-07', 'received 5kg B lot 8'];

  it('when it is told, then it stands in the stock with its last day, and one is opened with a tap', async () => {
    const say = await talkAfter(...delivered);
    const { lines } = await say('stock');
    expect(lines).toEqual([
      'Sealed: 4 × 5000 g Part A Demo Clear, lot 7731; 5 d to expiry',
      'Sealed: 1 × 5000 g Part B Demo Clear, lot 8',
    ]);
    const told = await say('received 2x1kg A lot 9');
    expect([told.title, told.actions[0]?.line]).toEqual(['Received: 2 × 1000 g of Part A, lot 9', 'open A lot 9']);
  });

  it('when one is opened, then what is left is told, and of a lot that nobody received that none was there', async () => {
    const say = await talkAfter(...delivered);
    expect((await say('open A lot 7731 gas')).lines).toContain('Sealed cans of lot 7731 left by the record: 3.');
    expect((await say('open B lot 8')).lines).toContain('Sealed cans of lot 8 left by the record: none.');
    expect((await say('open B lot 9 5kg')).lines).toContainEqual(
      expect.stringMatching(/^By the record no such can of lot 9/),
    );
    expect((await say('trace lot 7731')).lines[0]).toBe(
      'Sealed: 3 × 5000 g Part A Demo Clear, lot 7731; 5 d to expiry',
    );
  });

  it('when cans of two sizes stand there, then each is a tap', async () => {
    const say = await talkAfter(...delivered, 'received 2x1kg A lot 7731');
    const { actions } = await say('open A lot 7731 gas');
    expect(actions.map(({ line }) => line)).toEqual(['open A lot 7731 5000g gas', 'open A lot 7731 1000g gas']);
  });
});
