// The clause that says why, and what is told the other way round (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import { turnedRound, withoutReason } from '../../../../bot/language/sayings/reason-apart.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const inUse = {
  batches: [1],
  parts: ['flange-1', 'flange-2'],
  live: () => ({
    parts: [
      { name: 'flange-1', phase: 'curing' as const },
      { name: 'flange-2', phase: 'bare' as const },
    ],
    batches: [{ number: 1, phase: 'filtered' as const }],
    cans: [],
  }),
};
const shop = { ...shopAtTen, ...inUse };
const taller = { ...tallerALasDiez, ...inUse };

describe('the clause that says why', () => {
  it.each([
    ['flange-1 is out because nobody needs the oven', 'flange-1 is out'],
    ['because the brush shed hairs, flange-2 got the roller', 'flange-2 got the roller'],
    ['flange-1 reads 90, as the sheet asks', 'flange-1 reads 90'],
    ['wiped flange-2, as nobody had done it', 'wiped flange-2'],
    ['who opened can 3, because the boss is asking?', 'who opened can 3?'],
    ['brushed flange-2 from batch 1 so that it can dry, and the room is at 21C', null],
    ['somebody had to make room, so I lifted flange-1 out of the oven', 'I lifted flange-1 out of the oven'],
  ])('given %s, then %s is told', (line, told) => {
    expect(withoutReason(line, shop)?.line).toBe(told ?? 'brushed flange-2 from batch 1, and the room is at 21C');
  });

  it('given it in Spanish, then the rest is told', () => {
    expect(withoutReason('la 1 ya salió, ya que urge', taller)?.line).toBe('la 1 ya salió');
  });

  it.each([
    'flange-1 is dry, as far as I think',
    'wiped the flanges, since 9:40',
    'the cause of it is dust',
    'flange-1 came out, so flange-2 is in the oven',
  ])('given %s, then none of it is', (line) => {
    expect(withoutReason(line, shop)).toBeUndefined();
  });

  it('given a part or a figure in it, then what is told is only offered', () => {
    expect(withoutReason('took it out because flange-2 was next', shop)?.isNamed).toBe(true);
    expect(readLine('took flange-1 out because flange-2 was next', shop).kind).toBe('misread');
    expect(readLine('took flange-1 out because the shelf was needed', shop)).toMatchObject({
      takenAs: 'out flange-1',
    });
  });

  it('given that it denies, then the act stands', () => {
    expect(readLine("brushed flange-2 from batch 1 because it wasn't done yet", shop)).toMatchObject({
      command: { verb: 'coat', parts: ['flange-2'] },
    });
    expect(readLine("didn't brush flange-2 from batch 1 because the brush was wet", shop).kind).toBe('misread');
  });

  it('given an act that takes a reason, then it is told with it, and without the word for it', () => {
    expect(readLine('Put flange-2 on hold, please, since it has rust on the rim', shop)).toMatchObject({
      takenAs: 'hold flange-2 "rust on the rim"',
    });
  });
});

describe('what is told the other way round', () => {
  it.each([
    ['89 degrees is what flange-1 reads now', 'flange-1 reads now 89 degrees'],
    ['what the probe on flange-1 shows is 91 degrees', 'the probe on flange-1 shows 91 degrees'],
    ['when I looked 10min ago, flange-1 was at 89 degrees', 'flange-1 was at 89 degrees, looked 10min ago'],
    ['In the oven is where flange-1 is, set to 90', 'flange-1 is in the oven, set to 90'],
  ])('given %s, then it is read as %s', (line, turned) => {
    expect(turnedRound(line, shop)).toBe(turned);
  });

  it('given a question, then nothing is turned', () => {
    expect(turnedRound('90 is what it should be?', shop)).toBeUndefined();
  });

  it('given that it is denied, then nothing is recorded', () => {
    expect(readLine('89 degrees is what flange-1 does not read', shop).kind).toBe('misread');
  });
});
