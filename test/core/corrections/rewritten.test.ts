// What a correction or a late reading makes wrong of what was done long since. Times by the demo sheet: 102 minutes at
// 24 degC, 90 at 30, 120 at 15 (common practice, no source; the temperatures invented).

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const coated = [
  '08:00 air 30C 48%',
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1200g 1200g',
  '09:30 filter 1',
  '09:35 coat new impeller-7 1 dip',
];

describe('given a coat that was right by what was known', () => {
  it('when the weighing turns out 8 % off, then the filtering and the coat are marked and the part is held', async () => {
    const shift = await given([...coated, '10:00 amend 1 weigh 1200g 1100g misread']);
    expect(await shift.deviations()).toEqual([
      'PartsWeighed 08:00 ratio-out',
      'MixFiltered 09:30 ratio-out',
      'CoatApplied 09:35 ratio-out',
    ]);
    expect((await shift.shop()).parts.get('impeller-7')?.verdict).toMatchObject({ is: 'held', because: ['ratio-out'] });
  });

  it('when a late reading says that it was colder, then the stirring was too short and the part is held', async () => {
    const shift = await given([...coated, '10:00 air 15C 50% at 8:10']);
    expect(await shift.deviations()).toEqual(['MixFiltered 09:30 blend-not-done', 'CoatApplied 09:35 blend-not-done']);
    expect((await shift.shop()).parts.get('impeller-7')?.verdict).toMatchObject({ because: ['blend-not-done'] });
  });

  it('when the correction changes nothing that matters, then nothing is held', async () => {
    const shift = await given([...coated, '10:00 amend 1 weigh 1201g 1199g misread']);
    expect(await shift.deviations()).toEqual([]);
    expect((await shift.shop()).parts.get('impeller-7')?.verdict).toBeUndefined();
  });
});

describe('given three readings, when one is amended by its time', () => {
  it('then that reading is corrected and the others stand', async () => {
    const shift = await given([
      '08:00 air 15C 50%',
      '08:20 air 18C 50%',
      '08:40 air 20C 50%',
      '08:45 amend air 19C at 8:20 misread',
    ]);
    const readings = (await shift.shop()).places.get('room')?.air.map(({ celsius }) => celsius);
    expect(readings).toEqual([15, 19, 20]);
  });
});
