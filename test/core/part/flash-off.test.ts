// Flash-off: the least time has passed and somebody said that it is dry. 10 to 15 minutes at room temperature (common
// practice, no source).

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const coatedAt = (celsius: number) => [
  `08:00 air ${celsius}C 48%`,
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1200g 1200g',
  '09:55 filter 1',
  '10:00 coat new impeller-7 1 brush',
];

describe('flash-off', () => {
  it.each([
    ['at 9 minutes, not dry', [], '10:09', { objected: ['flash-off-not-over', 'not-dry'] }],
    ['at 9 minutes, dry', ['10:05 dry impeller-7'], '10:09', { objected: ['flash-off-not-over'] }],
    ['at 10 minutes, dry', ['10:05 dry impeller-7'], '10:10', { recorded: ['CureStarted'] }],
    ['at 40 minutes, not dry', [], '10:40', { objected: ['not-dry'] }],
    ['at 40 minutes, dry', ['10:39 dry impeller-7'], '10:40', { recorded: ['CureStarted'] }],
  ])('given the film %s, when it goes into the oven, then %j', async (_, lines, at, heard) => {
    const shift = await given([...coatedAt(24), ...lines]);
    expect(await shift.when(`${at} cure impeller-7 oven 90C`)).toEqual(heard);
  });

  it.each([20, 24, 30])('given a room of %d degC, then warmth never shortens the least', async (celsius) => {
    const shift = await given(coatedAt(celsius));
    expect(await shift.plan()).toMatchObject({
      'part/impeller-7/flash-least': '10:10',
      'part/impeller-7/flash-most': '10:15',
    });
  });

  it('given it is dry before the least, then the least still rings and the most does not', async () => {
    const shift = await given([...coatedAt(24), '10:05 dry impeller-7']);
    const plan = await shift.plan();
    expect(plan['part/impeller-7/flash-least']).toBe('10:10');
    expect(plan).not.toHaveProperty(['part/impeller-7/flash-most']);
  });

  it('given nobody says dry, then it rings at the least and at the most', async () => {
    const shift = await given(coatedAt(24));
    await shift.until('10:30');
    const rung = shift.rung().filter(({ key }) => key.startsWith('part/'));
    expect(rung).toEqual([
      { at: '10:10', key: 'part/impeller-7/flash-least', to: ['kari'] },
      { at: '10:15', key: 'part/impeller-7/flash-most', to: ['kari'] },
    ]);
  });

  it('given dry was said of the first coat, then a second coat has to dry for itself', async () => {
    const shift = await given([...coatedAt(24), '10:12 dry impeller-7', '10:15 coat new impeller-7 1 brush already']);
    expect(await shift.when('10:30 cure impeller-7 oven 90C')).toEqual({ objected: ['not-dry'] });
  });

  it('given a coat told half an hour late, then flash-off runs from when it was', async () => {
    const shift = await given([...coatedAt(24), '10:40 coat new impeller-8 1 brush at 10:10']);
    const rung = shift.rung().filter(({ key }) => key.startsWith('part/impeller-8'));
    expect(rung.map(({ at, key }) => `${at} ${key}`)).toEqual([
      '10:40 part/impeller-8/flash-least',
      '10:40 part/impeller-8/flash-most',
    ]);
    expect(await shift.when('10:41 cure impeller-8 oven 90C')).toEqual({ objected: ['not-dry'] });
  });
});
