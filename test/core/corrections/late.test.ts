// Said times: people type after the act. What counts is when it was; that it was said late is kept.

import { describe, expect, it } from 'vitest';
import { isLate } from '../../../core/history.ts';
import { given } from '../given.ts';

const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1201g 1198g'];

describe('an act told late', () => {
  it('given the weighing is told after half an hour, then stir and pot life run from when it was', async () => {
    const shift = await given([...weighed.slice(0, 2), '08:40 weigh 1 1200g 1200g at 8:10']);
    expect(await shift.plan()).toMatchObject({ 'batch/1/stir-done': '09:52', 'batch/1/pot-half': '10:34' });
    const entry = (await shift.shop()).batches.get(1)?.entries.at(-1);
    expect(entry && isLate(entry)).toBe(true);
    expect(entry).toMatchObject({ happenedAt: shift.time('08:10'), recordedAt: shift.time('08:40') });
  });

  it('given a coat put on in time and told after the pot died, then it is no deviation', async () => {
    const shift = await given([...weighed, '09:42 filter 1', '14:00 coat new impeller-7 1 brush at 12:30']);
    expect(await shift.deviations()).toEqual([]);
  });

  it('given a coat told now, when an earlier one is told after it, then the later is the second', async () => {
    const shift = await given([
      ...weighed,
      '09:42 filter 1',
      '10:30 coat new impeller-7 1 roller',
      '10:40 coat impeller-7 1 brush at 10:00',
    ]);
    const part = (await shift.shop()).parts.get('impeller-7');
    expect(part?.coats.map(({ method }) => method)).toEqual(['brush', 'roller']);
    expect(await shift.deviations()).toEqual(['CoatApplied 10:30 recoat-forbidden']);
    // Flash-off counts from the later coat.
    await shift.when('10:41 dry impeller-7');
    expect(await shift.when('10:41 cure impeller-7 oven 90C')).toEqual({ recorded: ['CureStarted'] });
  });

  it('given dry is told for a time before the coat, then there was nothing to be dry', async () => {
    const shift = await given([...weighed, '09:42 filter 1', '10:30 coat new impeller-7 1 brush']);
    await shift.when('10:40 dry impeller-7 at 10:20');
    expect(await shift.deviations()).toEqual(['FilmDry 10:20 not-coated']);
    expect(await shift.when('10:45 cure impeller-7 oven 90C')).toEqual({ objected: ['not-dry'] });
  });

  it('given an earlier reading is told after a later one, then each holds for its own time', async () => {
    const shift = await given([...weighed, '09:00 air 15C 50%', '09:05 air 30C 50% at 8:30']);
    // 30 minutes of 102, 30 of 90, then 120 for the whole: (1 - 30/102 - 30/90) * 120 = 44 min 42.4 s after nine.
    expect(await shift.plan()).toMatchObject({ 'batch/1/stir-done': '09:44:42' });
  });

  it('given the very first reading is told late after another, then it comes first all the same', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:10 air 20C 50% at 7:00']);
    expect((await shift.shop()).places.get('room')?.air.map(({ celsius }) => celsius)).toEqual([20, 24]);
  });

  it('given a time to come, then it is refused', async () => {
    const shift = await given(weighed);
    expect(await shift.when('09:42 filter 1 at 9:50')).toHaveProperty('misread');
    expect((await shift.events()).some(({ body }) => body.type === 'MixFiltered')).toBe(false);
  });

  it('given a whole shift told in the evening, then its deviations are those of the day and no more', async () => {
    const shift = await given([
      '18:00 air 24C 48% at 8:00',
      '18:00 mix 2.4kg at 8:00',
      '18:01 weigh 1 1200g 1200g at 8:00',
      '18:01 filter 1 at 9:41',
      '18:02 coat new impeller-7 1 brush at 10:00',
      '18:02 dry impeller-7 at 10:12',
      '18:03 cure impeller-7 oven 90C at 10:15',
    ]);
    expect(await shift.deviations()).toEqual(['MixFiltered 09:41 blend-not-done', 'CoatApplied 10:00 blend-not-done']);
  });
});
