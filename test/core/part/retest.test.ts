// A set that failed stands until it is disposed of. One that passes afterwards counts in its place only where it says why, and only if
// whoever may release read it.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const cured = [
  ...['08:00 part a1 job 88', '08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['10:00 coat a1 1 brush', '10:12 dry a1', '10:12 cure a1 oven 90C', '10:12 temp a1 90C', '11:12 temp a1 90C'],
  '11:12 out a1',
];

const verdictOf = async (shift: Awaited<ReturnType<typeof given>>) => (await shift.shop()).parts.get('a1')?.verdict;

describe('a reading again after one that failed', () => {
  it.each([
    ['film a1 4 5 5um', 'film a1 10 11 12um'],
    ['adhesion a1 0B', 'adhesion a1 5B'],
    ['rub a1 50 through', 'rub a1 50 no-effect'],
  ])('given "%s", then "%s" wipes it away only with why and by a lead', async (failing, passing) => {
    const shift = await given([...cured, `11:20 ${failing}`]);
    await shift.when(`11:21 ${passing}`);
    expect(await verdictOf(shift)).toMatchObject({ is: 'held' });
    await shift.when(`11:22 @kari: ${passing} retest gauge was not zeroed`);
    expect(await verdictOf(shift)).toMatchObject({ is: 'held' });
    expect(await shift.when(`11:23 @omar: ${passing} retest gauge was not zeroed`)).toMatchObject({
      recorded: [expect.any(String), 'FailureAnswered'],
    });
    expect(await verdictOf(shift)).toBeUndefined();
    expect(await shift.when('11:24 @omar: release a1')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given it fails again, then the reason answers nothing', async () => {
    const shift = await given([...cured, '11:20 film a1 4 5 5um']);
    expect(await shift.when('11:21 @omar: film a1 4 4 4um retest gauge was not zeroed')).toEqual({
      recorded: ['FilmRead', 'PartHeld'],
    });
  });

  it('given another kind passes, or somebody held it too, then what stood for itself stays', async () => {
    const shift = await given([...cured, '11:20 film a1 4 5 5um', '11:21 hold a1 customer looks first']);
    await shift.when('11:22 @omar: adhesion a1 5B retest new blade');
    expect(await verdictOf(shift)).toMatchObject({ because: ['film-outside'] });
    await shift.when('11:23 @omar: film a1 10 11 12um retest gauge was not zeroed');
    expect(await verdictOf(shift)).toMatchObject({ is: 'held', why: 'customer looks first', because: [], failed: [] });
  });

  it('given the job asks for a cross-cut, then the answered one is no longer the worst', async () => {
    const shift = await given(['08:00 @omar: set job 88 adhesion 4B', ...cured, '11:20 adhesion a1 2B']);
    await shift.when('11:21 @omar: adhesion a1 5B retest the blade was blunt');
    expect(await shift.when('11:22 @omar: release a1')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given no reason behind the word, then it is a reading like any other, and the hold stands', async () => {
    const shift = await given([...cured, '11:20 film a1 4 5 5um']);
    await shift.when('11:21 @omar: film a1 10 11 12um retest');
    expect(await verdictOf(shift)).toMatchObject({ is: 'held', because: ['film-outside'] });
  });
});
