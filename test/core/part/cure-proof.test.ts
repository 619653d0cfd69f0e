// What readings on a part in the oven prove, and what they do not. One hour at 90 degC: common practice, no source; all other
// figures are invented.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const inOven = [
  ...['08:00 air 20C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '10:30 filter 1 already'],
  ...['10:35 coat new hub-1 1 brush', '10:46 dry hub-1', '11:00 cure hub-1 oven 90C'],
];
const done = 'part/hub-1/cure-done';

/** The share of the hour that is proved when it is asked to come out. */
async function provedBy(at: string, ...lines: readonly string[]): Promise<number> {
  const shift = await given([...inOven, ...lines]);
  const heard = await shift.when(`${at} out hub-1`);
  if ('recorded' in heard) return 1;
  const [objection] = shift.objections();
  return objection?.code === 'cure-not-given' ? objection.progress : Number.NaN;
}

describe('between two readings', () => {
  it('given 90 and 57 minutes later 31 degC, then the colder counts: nothing is proved', async () => {
    expect(await provedBy('12:00', '11:00 temp hub-1 90C', '11:57 temp hub-1 31C already')).toBe(0);
  });

  it('given one reading, then an hour after it proves nothing', async () => {
    expect(await provedBy('12:00', '11:00 temp hub-1 95C')).toBe(0);
  });

  it('given two an hour apart and no colder, then they prove it; a minute less does not', async () => {
    expect(await provedBy('12:00', '11:00 temp hub-1 95C', '12:00 temp hub-1 90C')).toBe(1);
    expect(await provedBy('12:30', '11:00 temp hub-1 95C', '11:59 temp hub-1 90C')).toBeCloseTo(59 / 60, 9);
  });

  it('given they are further apart than a reading serves, then nothing between them is proved', async () => {
    expect(await provedBy('15:30', '11:00 temp hub-1 95C', '15:20 temp hub-1 95C')).toBe(0);
  });

  it('given it was read as it came out, then the time up to that counts, and a cold reading later takes none of it', async () => {
    const shift = await given([...inOven, '11:00 temp hub-1 95C', '12:00 temp hub-1 94C', '12:00 out hub-1']);
    await shift.when('14:00 temp hub-1 24C');
    expect(await shift.when('14:01 release hub-1')).toEqual({ recorded: ['PartReleased'] });
  });
});

describe('the door', () => {
  const read = ['11:00 temp hub-1 95C', '12:00 temp hub-1 95C'];

  it('given it stood open for 15 minutes, then from its opening to the next reading nothing counts', async () => {
    expect(await provedBy('12:00', ...read.slice(0, 1), '11:30 door hub-1 15m', ...read.slice(1))).toBeCloseTo(0.5, 9);
  });

  it('given the part was read meanwhile, then at the least the minutes that were told are off', async () => {
    const lines = ['11:00 temp hub-1 95C', '11:30 door hub-1 15m', '11:31 temp hub-1 93C', '12:00 temp hub-1 95C'];
    expect(await provedBy('12:00', ...lines)).toBeCloseTo(45 / 60, 9);
  });

  it('given it was opened since the last reading, then it rings so much later', async () => {
    const shift = await given([...inOven, '11:00 temp hub-1 95C', '11:30 door hub-1 15m']);
    expect(await shift.plan()).toMatchObject({ [done]: '12:15' });
  });
});

it('given its hour is over by the last reading held, then it rings, and asks for the reading that proves it', async () => {
  const shift = await given([...inOven, '11:10 temp hub-1 91C']);
  await shift.until('12:10');
  expect(shift.rung().map(({ at, key }) => `${at} ${key}`)).toContain(`12:10 ${done}`);
  expect(await shift.when('12:10 out hub-1')).toEqual({ objected: ['cure-not-given'] });
  await shift.when('12:11 temp hub-1 92C');
  expect(await shift.plan()).not.toHaveProperty([done]);
  expect(await shift.when('12:11 out hub-1')).toEqual({ recorded: ['CureEnded'] });
});
