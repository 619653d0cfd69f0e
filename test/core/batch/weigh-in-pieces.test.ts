// Weighing one part at a time, and a scale that spoke in another unit.

import { describe, expect, it } from 'vitest';
import { potLifeTimes } from '../../../core/batch/batch-clocks.ts';
import { airLog } from '../../../core/shop.ts';
import { given } from '../given.ts';

const opened = ['Mon 08:00 mix 2.4kg 24C 48%'];

describe('given a batch that is weighed one part at a time', () => {
  it('when A is in, then no clock runs; when B follows, then pot life and stirring run from B', async () => {
    const shift = await given([...opened, '08:05 weigh 1 a 1201g']);
    expect(Object.keys(await shift.plan())).not.toContain('batch/1/pot-end');
    expect(await shift.when('08:12 weigh 1 b 1198g')).toEqual({ recorded: ['PartWeighed'] });
    const shop = await shift.shop();
    const batch = shop.batches.get(1);
    expect(batch?.weighing).toMatchObject({ at: shift.time('08:12'), partAGrams: 1201, partBGrams: 1198 });
    expect(batch?.stirring).toEqual([{ from: shift.time('08:12'), to: undefined }]);
    // 24 degC on the demo sheet: 360 - 4 x 18 = 288 min from 8:12, while the 8:00 reading serves (4 h); then 200 min.
    // By 12:00 a share of 228 / 288 is gone; the rest, 60 / 288 of 200 min, is 41.67 min: 12:41:40.
    expect(batch && shift.spoken(potLifeTimes(batch, airLog(shop))?.endAt ?? shift.time('00:00'))).toBe('12:41:40');
  });

  it('when B goes in before A, then the bot objects; told after it, the clocks run once A is in', async () => {
    const shift = await given(opened);
    expect(await shift.when('08:05 weigh 1 b 1198g')).toEqual({ objected: ['b-before-a'] });
    await shift.when('08:06 weigh 1 b 1198g already');
    await shift.when('08:09 weigh 1 a 1201g');
    expect((await shift.shop()).batches.get(1)?.weighing?.at).toBe(shift.time('08:09'));
    expect(await shift.deviations()).toEqual(['PartWeighed 08:06 b-before-a']);
  });

  it('when A is weighed twice, then the bot objects; poured twice all the same, both count', async () => {
    const shift = await given([...opened, '08:05 weigh 1 a 1201g']);
    expect(await shift.when('08:07 weigh 1 a 1201g')).toEqual({ objected: ['weighed-twice'] });
    expect(await shift.when('08:08 weigh 1 1201g 1198g')).toEqual({ objected: ['weighed-twice'] });
    await shift.when('08:09 weigh 1 a 1201g already');
    await shift.when('08:12 weigh 1 b 1198g');
    expect((await shift.shop()).batches.get(1)?.weighing?.partAGrams).toBe(2402);
    expect(await shift.deviations()).toEqual(['PartWeighed 08:09 weighed-twice', 'PartWeighed 08:12 ratio-out']);
  });

  it('when both are in, then a third weighing is objected to once, as weighed already', async () => {
    const shift = await given([...opened, '08:05 weigh 1 a 1201g', '08:06 weigh 1 b 1198g']);
    expect(await shift.when('08:07 weigh 1 b 1198g')).toEqual({ objected: ['already-weighed'] });
  });

  it('when one weight was misread, then it is amended by its letter', async () => {
    const shift = await given([
      ...opened,
      '08:05 weigh 1 a 1201g',
      '08:06 weigh 1 b 1098g',
      '08:07 amend 1 weigh b 1198g "misread"',
      '08:07 amend 1 weigh a 1203g "misread"',
    ]);
    expect((await shift.shop()).batches.get(1)?.weighing).toMatchObject({ partAGrams: 1203, partBGrams: 1198 });
    expect(await shift.deviations()).toEqual([]);
  });
});

describe('given a plan of 1200 g of each', () => {
  const slips: readonly (readonly [string, string])[] = [
    ['42.3 g, which are the ounces of 1199 g', 'weigh 1 42.3g 1198g'],
    ['2.65 g, which are the pounds of 1202 g', 'weigh 1 2.65g 1198g'],
    ['1.2 g, which are kilograms', 'weigh 1 1.2g 1198g'],
    ['1200 oz, which are grams', 'weigh 1 1200oz 1198g'],
    ['1200 lb, which are grams', 'weigh 1 a 1200lb'],
    ['120 g, which lacks a digit', 'weigh 1 120g 1198g'],
    ['12010 g, which has one too many', 'weigh 1 a 12010g'],
  ];
  for (const [what, line] of slips) {
    it(`when ${what} are said, then the bot asks and records nothing`, async () => {
      const shift = await given(opened);
      expect(await shift.when(`08:05 ${line}`)).toEqual({ unclear: 'other-unit' });
      expect((await shift.events()).filter(({ body }) => body.type !== 'AirRead')).toHaveLength(1);
    });
  }

  it('when it is told as already weighed, then it is recorded as said', async () => {
    const shift = await given(opened);
    expect(await shift.when('08:05 weigh 1 42.3g 1198g already')).toEqual({ recorded: ['PartsWeighed'] });
  });

  it('when a small batch is weighed as planned, then nobody is asked', async () => {
    const shift = await given(['Mon 08:00 mix 85g 24C 48%']);
    expect(await shift.when('08:05 weigh 1 42.3g 42.5g')).toEqual({ recorded: ['PartsWeighed'] });
  });
});
