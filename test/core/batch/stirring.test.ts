// Stirring by dose: 120 minutes at 15 degC and 90 at 30, straight line between (90 to 120 minutes, the colder the longer:
// common practice, no source; the temperatures invented).

import { describe, expect, it } from 'vitest';
import { blendDueAt } from '../../../core/batch/batch-clocks.ts';
import { airLog } from '../../../core/shop.ts';
import { given } from '../given.ts';

const weighedAt = (celsius: number) => [`08:00 air ${celsius}C 50%`, '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];
const stirDone = 'batch/1/stir-done';

describe('stirring by dose', () => {
  it.each([
    [15, '10:00'],
    [20, '09:50'],
    [24, '09:42'],
    [30, '09:30'],
  ])('given %d degC all through, then stirring is done at %s', async (celsius, done) => {
    expect(await (await given(weighedAt(celsius))).plan()).toMatchObject({ [stirDone]: done });
  });

  it('given half of it at 15 degC, when the room is at 30, then it takes 60 and 45 minutes', async () => {
    const shift = await given([...weighedAt(15), '09:00 air 30C 50%']);
    expect(await shift.plan()).toMatchObject({ [stirDone]: '09:45' });
    expect(await shift.when('09:44 filter 1')).toEqual({ objected: ['blend-not-done'] });
    expect(await shift.when('09:45 filter 1')).toEqual({ recorded: ['MixFiltered'] });
  });

  it('given half of it at 30 degC, when the room is at 15, then it takes 45 and 60 minutes', async () => {
    const shift = await given([...weighedAt(30), '08:45 air 15C 50%']);
    expect(await shift.plan()).toMatchObject({ [stirDone]: '09:45' });
  });

  it('given a due time between two milliseconds, then it is the later one', async () => {
    const shift = await given([...weighedAt(24), '09:00 air 20C 50%']);
    const shop = await shift.shop();
    const batch = shop.batches.get(1);
    // 42 of 102 minutes are left, and 110 wanted at 20 degC: 42 / 102 * 110 min = 2 717 647.06 ms.
    expect(batch && blendDueAt(batch, airLog(shop))).toBe(shift.time('09:00') + 2_717_648);
  });

  it('given humidity alone, then the temperature of before still counts', async () => {
    const shift = await given([...weighedAt(24), '09:00 air 60%']);
    expect(await shift.plan()).toMatchObject({ [stirDone]: '09:42' });
  });
});

describe('the stirrer', () => {
  it('given it stopped for half an hour, then done comes half an hour later, and somebody is asked after 10 minutes', async () => {
    const shift = await given([...weighedAt(24), '08:30 stop 1']);
    expect(await shift.plan()).toMatchObject({ 'batch/1/stir-paused': '08:40' });
    expect(await shift.plan()).not.toHaveProperty([stirDone]);
    await shift.when('09:00 stir 1');
    // 30 of 102 minutes were given; 72 are left.
    expect(await shift.plan()).toMatchObject({ [stirDone]: '10:12' });
    expect(await shift.plan()).not.toHaveProperty(['batch/1/stir-paused']);
    expect(shift.rung().map(({ at, key }) => `${at} ${key}`)).toContain('08:40 batch/1/stir-paused');
  });

  it('given it stopped too early, when somebody filters, then the objection says how much was given', async () => {
    const shift = await given([...weighedAt(24), '08:30 stop 1']);
    await shift.when('10:30 filter 1');
    expect(shift.objections()).toMatchObject([
      { code: 'blend-not-done', way: 'stir', givenMinutes: 30, progress: 30 / 102, dueAt: undefined },
    ]);
  });

  it('given it stopped after its time, then stirring is done and nobody is asked', async () => {
    const shift = await given([...weighedAt(24), '09:45 stop 1']);
    expect(await shift.plan()).not.toHaveProperty(['batch/1/stir-paused']);
    expect(await shift.when('10:30 filter 1')).toEqual({ recorded: ['MixFiltered'] });
  });

  it('given it was started twice or stopped twice, then the clock does not run twice', async () => {
    const shift = await given([
      ...weighedAt(24),
      '08:10 stir 1',
      '08:30 stop 1',
      '08:40 stop 1 already',
      '09:00 stir 1',
    ]);
    expect(await shift.plan()).toMatchObject({ [stirDone]: '10:12' });
  });
});

describe('where the sheet gives no figure', () => {
  it.each([
    [12, 'below'],
    [31, 'above'],
  ])(
    'given %d degC, %s the table, then no credit, yet a due time at the slowest, 120 minutes',
    async (celsius, side) => {
      const shift = await given(weighedAt(celsius));
      expect(await shift.plan()).toMatchObject({ [stirDone]: '10:00' });
      expect(await shift.when('10:00 filter 1')).toEqual({ objected: ['blend-not-done'] });
      expect(shift.objections()).toMatchObject([{ progress: 0, givenMinutes: 120, withoutFigure: side }]);
    },
  );

  it('given the first half hour at 12 degC, when the room is at 20, then its 110 minutes begin there', async () => {
    const shift = await given([...weighedAt(12), '08:30 air 20C 50%']);
    expect(await shift.plan()).toMatchObject({ [stirDone]: '10:20' });
  });

  it('given it rang at the slowest and was heard, when credit begins only later, then it rings again, numbered', async () => {
    const shift = await given([...weighedAt(12), '10:01 ok', '10:05 air 20C 50%']);
    expect(await shift.plan()).toMatchObject({ [`${stirDone}/2`]: '11:55' });
  });

  it('given credit comes so late that the pot dies first, then nobody is told to filter it', async () => {
    // At 12 degC the pot runs at the sheet's fastest, 200 minutes: 150 of them by 10:30, then a quarter of 360 at 20 degC.
    const shift = await given([...weighedAt(12), '10:01 ok', '10:30 air 20C 50%']);
    expect(await shift.plan()).toMatchObject({ 'batch/1/pot-end': '12:00' });
    expect(await shift.plan()).not.toHaveProperty([`${stirDone}/2`]);
  });

  it('given no air was ever read, then no credit, and the objection says that it is unknown', async () => {
    const shift = await given(['08:00 @omar: mix 2.4kg permit hygrometer broken', '08:00 weigh 1 1200g 1200g']);
    expect(await shift.plan()).toMatchObject({ [stirDone]: '10:00' });
    await shift.when('10:00 filter 1');
    expect(shift.objections()).toMatchObject([{ code: 'blend-not-done', progress: 0, withoutFigure: 'unknown' }]);
  });

  it('given a reading that grew too old on the way, then what came after it earns nothing until the next', async () => {
    const shift = await given(['08:00 @omar: set air-limit 1h', ...weighedAt(24)]);
    expect(await shift.plan()).toMatchObject({ [stirDone]: '09:42' });
    await shift.when('09:42 filter 1');
    expect(shift.objections()).toMatchObject([
      { code: 'blend-not-done', progress: 60 / 102, withoutFigure: 'unknown' },
    ]);
    await shift.when('09:42 air 24C 50%');
    expect(await shift.plan()).toMatchObject({ [`${stirDone}/2`]: '10:24' });
  });
});
