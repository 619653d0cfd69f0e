// A can that was cried hot, smoking or swollen: nobody opens, closes, stirs, pours or admits it any more, and it rings nothing. What
// has stood open too long is not closed tight. Minutes by Demo Clear, which is invented.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const open = ['08:00 air 24C 48%', '08:00 open A lot 7731 5kg gas'];

describe('a can that is cried', () => {
  it.each(['lid 1 gas', 'shut 1 gas', 'shut 1', 'prestir 1', 'weigh 2 1200g 1200g can 1'])(
    'given it swells, when "%s" is asked, then it is objected to by that first, and already done it is marked',
    async (act) => {
      const shift = await given([...open, '08:00 mix 2.4kg', '08:01 can 1 bulging']);
      const heard = await shift.when(`08:05 ${act}`);
      expect(heard).toHaveProperty('objected');
      expect(JSON.stringify(heard)).toMatch(/^\{"objected":\["can-reacts"/);
      expect(await shift.when(`08:06 ${act} already`)).toHaveProperty('recorded');
      expect((await shift.deviations()).some((each) => each.includes('can-reacts'))).toBe(true);
    },
  );

  it('given it is the only can, when no number is said, then it is that one; of two none', async () => {
    const one = await given([...open, '08:01 can bulging']);
    expect(await one.when('08:05 blanket 1')).toEqual({ objected: ['can-reacts'] });
    const two = await given([...open, '08:00 open A lot 7732 5kg gas', '08:01 can bulging']);
    expect(await two.when('08:05 blanket 1')).toHaveProperty('recorded');
  });

  it('given it, then nobody is rung to put gas over it and close it', async () => {
    const shift = await given([...open, '08:01 can 1 hot']);
    await shift.until('08:30');
    expect(shift.rung().filter(({ key }) => key.startsWith('can/'))).toEqual([]);
  });

  it('given it, when a lead looks at it, then no check admits it: not as already done either', async () => {
    const shift = await given([...open, '08:01 can 1 bulging']);
    for (const act of ['check 1', 'check 1 already'])
      expect(await shift.when(`08:25 @omar: ${act}`)).toEqual({ objected: ['can-reacts'] });
    expect((await shift.shop()).cans.get(1)?.checkedAt).toEqual([]);
  });

  it('given a check before it was cried, said late, then it is taken as it was then', async () => {
    const shift = await given([...open, '08:25 can 1 bulging']);
    expect(await shift.when('08:26 @omar: check 1 at 08:23')).toEqual({ recorded: ['CanChecked'] });
  });

  it('given a check that the supervisor permits, then it stays what it is; thrown away it is told no more', async () => {
    const shift = await given([...open, '08:01 can 1 smoking', '08:02 @rosa: check 1 permit "cold since Friday"']);
    expect(await shift.when('08:05 blanket 1')).toEqual({ objected: ['can-reacts'] });
    expect(await shift.when('08:06 discard 1 swollen, taken away')).toHaveProperty('recorded');
  });
});
