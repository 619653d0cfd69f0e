// A lot is called back: what has some of it on is held, released and gone or not, and nothing more of it is used.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const coated = [
  ...[
    '08:00 open B lot 8820 5kg',
    '08:00 open B lot 8821 5kg',
    '08:00 air 24C 48%',
    '08:00 mix 2.4kg',
    '08:00 mix 1kg',
  ],
  ...['08:10 weigh 3 1201g 1198g can 1', '08:10 weigh 4 501g 499g can 2', '09:55 filter 3', '09:55 filter 4'],
  ...['10:00 coat new fin-1 new fin-2 3 brush', '10:00 coat new fin-3 4 brush', '10:15 dry fin-1 fin-2 fin-3'],
  ...['10:20 cure fin-1 fin-2 fin-3 oven 90C', '10:25 temp fin-1 90C', '10:25 temp fin-2 90C', '10:25 temp fin-3 90C'],
  ...['11:26 temp fin-1 90C', '11:26 temp fin-2 90C', '11:26 temp fin-3 90C', '11:27 out fin-1 fin-2 fin-3'],
];

const heldIn = async (shift: Awaited<ReturnType<typeof given>>) =>
  [...(await shift.shop()).parts.values()]
    .flatMap(({ name, verdict }) => (verdict?.is === 'held' ? [name] : []))
    .sort();

describe('a recall', () => {
  it('given parts with some of it on, released, gone and here, then each is held, and no other', async () => {
    const shift = await given([...coated, '11:30 @omar: release fin-1', '11:31 shipped fin-1']);
    expect(await shift.when('12:00 @omar: recall lot 8820 gels in the can')).toEqual({
      recorded: ['LotRecalled', 'PartHeld', 'PartHeld'],
    });
    expect(await heldIn(shift)).toEqual(['fin-1', 'fin-2']);
    expect(await shift.when('12:01 @omar: release fin-2')).toEqual({ objected: ['on-hold'] });
    expect(await shift.when('12:01 @omar: release fin-3')).toHaveProperty('recorded');
  });

  it('given a year has gone by and nothing of it is live any more, then its parts are found all the same', async () => {
    const shift = await given([
      ...[...coated, '11:30 @omar: release fin-1 fin-2 fin-3', '11:31 shipped fin-1 fin-2 fin-3'],
      ...['11:32 empty 3', '11:32 empty 4', '11:33 discard 1 used up', '11:33 discard 2 used up'],
    ]);
    await shift.until('Sun 23:00');
    expect(await shift.when('Sun 23:10 @omar: recall lot 8820 gels')).toEqual({
      recorded: ['LotRecalled', 'PartHeld', 'PartHeld'],
    });
  });

  it('given it is on, then nothing of it is opened, poured or put on; and what has happened is a deviation that holds', async () => {
    const shift = await given([...coated, '11:30 mix 1kg', '12:00 @omar: recall B lot 8820 gels']);
    expect(await shift.when('12:05 open B lot 8820 5kg')).toEqual({ objected: ['lot-recalled'] });
    expect(await shift.when('12:05 weigh 5 501g 499g can 1')).toEqual({ objected: ['lot-recalled'] });
    expect(await shift.when('12:05 coat new fin-9 3 brush')).toEqual({ objected: ['lot-recalled'] });
    await shift.when('12:05 coat new fin-9 3 brush already');
    expect(await shift.deviations()).toContain('CoatApplied 12:05 lot-recalled');
    expect(await heldIn(shift)).toContain('fin-9');
    // The other part's lot may bear the same number.
    expect(await shift.when('12:06 open A lot 8820 5kg gas')).toHaveProperty('recorded');
  });

  it('given it is over, then the lot is used again, and what is held stays held', async () => {
    const shift = await given([
      ...coated,
      '12:00 @omar: recall lot 8820 gels',
      '12:30 @omar: recall-over lot 8820 cleared',
    ]);
    expect(await shift.when('12:31 open B lot 8820 5kg')).toHaveProperty('recorded');
    expect(await heldIn(shift)).toEqual(['fin-1', 'fin-2']);
    expect(await shift.when('12:32 @omar: recall-over lot 8820 cleared')).toEqual({ unclear: 'not-recalled' });
  });

  it('given a part was reworked or scrapped since, then nothing of it is left to hold', async () => {
    const shift = await given([
      ...coated,
      ...[
        '11:40 @omar: rework fin-1 run at the edge',
        '11:41 @omar: scrap fin-2 cracked',
        '12:00 @omar: recall lot 8820 gels',
      ],
    ]);
    expect(await heldIn(shift)).toEqual([]);
  });

  it('given crew says it, then it is for a lead', async () => {
    const shift = await given(coated);
    expect(await shift.when('12:00 recall lot 8820 gels')).toEqual({ unclear: 'may-not-settle' });
  });

  it('given a can whose lot was misread, when that is put right, then it is found under the right one', async () => {
    const shift = await given([...coated, '11:40 amend 2 open lot 8830 misread']);
    expect(await shift.when('12:00 @omar: recall lot 8830 gels')).toEqual({ recorded: ['LotRecalled', 'PartHeld'] });
    expect(await heldIn(shift)).toEqual(['fin-3']);
  });
});
