// A pot's weights, its air or its time are put right after its parts were released: whoever let them go is told which, by name,
// however long ago that was.

import { describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { given } from './given.ts';

const released = [
  ...['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['10:00 coat new a1 a2 1 brush', '10:12 dry a1 a2', '10:12 cure a1 a2 oven 90C'],
  ...['10:12 temp a1 90C', '10:12 temp a2 90C', '11:12 temp a1 90C', '11:12 temp a2 90C', '11:12 out a1 a2'],
  ...['11:15 @omar: release a1 a2', '11:20 empty 1'],
];

const verdicts = async (shift: Awaited<ReturnType<typeof given>>) => {
  const { parts } = await shift.shop();
  return ['a1', 'a2'].map((name) => parts.get(name)?.verdict?.is);
};

describe('a late change to what released parts rest on', () => {
  it('given the weights turn out to be off the ratio, then both released parts are held by it', async () => {
    const shift = await given(released);
    expect(await verdicts(shift)).toEqual(['released', 'released']);
    expect(await shift.when('13:00 @omar: amend 1 weigh 1200g 1300g wrong scale')).toEqual({
      recorded: ['Amended', 'PartHeld', 'PartHeld'],
    });
    expect(await verdicts(shift)).toEqual(['held', 'held']);
  });

  it('given two months lie between, and nobody waits for pot or parts any more, then they are held all the same', async () => {
    const store = openSqliteStore(':memory:');
    await given([...released, '11:30 shipped a1'], { store });
    const later = await given([], { store, week: '2026-05-04' });
    expect(await later.when('08:00 @omar: amend 1 weigh 1200g 1300g wrong scale')).toEqual({
      recorded: ['Amended', 'PartHeld', 'PartHeld'],
    });
    expect(await verdicts(later)).toEqual(['held', 'held']);
  });

  it('given air that nobody had told, read late and outside the sheet, then what was coated in it is held', async () => {
    const shift = await given(released);
    await shift.when('13:00 air 24C 95% at 9:50');
    expect(await verdicts(shift)).toEqual(['held', 'held']);
  });

  it('given what is put right lies within what the sheet allows, then a release stands', async () => {
    const shift = await given(released);
    expect(await shift.when('13:00 @omar: amend 1 weigh 1201g 1199g misread')).toEqual({ recorded: ['Amended'] });
    expect(await verdicts(shift)).toEqual(['released', 'released']);
  });

  it('given the correction is taken back, then the holds that followed go with it', async () => {
    const shift = await given([...released, '13:00 @omar: amend 1 weigh 1200g 1300g wrong scale']);
    await shift.when('13:01 @omar: undo');
    expect(await verdicts(shift)).toEqual(['released', 'released']);
  });
});
