// What drains from a flow coat, caught and used again; a pot left open; and a pot life that shortens with mass.

import { describe, expect, it } from 'vitest';
import { potLifeTimes } from '../../../core/batch/batch-clocks.ts';
import { uncoveredMinutes } from '../../../core/batch/lid.ts';
import { dayRecord, daySpan } from '../../../core/records/day.ts';
import { airLog } from '../../../core/shop.ts';
import { given } from '../given.ts';

const flowed = [
  'Mon 08:00 mix 2.4kg 24C 48%',
  '08:05 weigh 1 1201g 1198g',
  '09:48 filter 1',
  '10:00 coat new plate-1 1 flow',
  '10:02 catch 1 300g',
];

describe('given 300 g caught from a flow coat (to be filtered and used again: common practice, no source)', () => {
  it('when the next part is coated before it is filtered, then the bot objects', async () => {
    const shift = await given(flowed);
    expect(await shift.when('10:05 coat new plate-2 1 flow')).toEqual({ objected: ['caught-not-filtered'] });
    expect(shift.objections()).toEqual([{ code: 'caught-not-filtered', grams: 300, at: shift.time('10:02') }]);
    expect(await shift.when('10:06 filter 1')).toEqual({ recorded: ['MixFiltered'] });
    expect(await shift.when('10:08 coat new plate-2 1 flow')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('when more is said to be caught than was mixed, then the bot objects, and what was filtered may be caught again', async () => {
    const shift = await given(flowed);
    expect(await shift.when('10:03 catch 1 2100g')).toEqual({ objected: ['caught-more-than-mixed'] });
    expect(shift.objections()).toEqual([{ code: 'caught-more-than-mixed', grams: 2400, mixedGrams: 2399 }]);
    await shift.when('10:06 filter 1');
    expect(await shift.when('10:08 catch 1 2100g')).toEqual({ recorded: ['MixCaught'] });
  });

  it('when a correction makes it more than was mixed, then it is marked; of another pot each counts by itself', async () => {
    const shift = await given([...flowed, '10:03 mix 1kg', '10:04 weigh 2 500g 500g']);
    await shift.when('10:05 catch 2 900g already');
    expect(await shift.deviations()).not.toContain('MixCaught 10:05 caught-more-than-mixed');
    await shift.when('10:10 amend 2 catch 1100g wrong scale');
    expect(await shift.deviations()).toContain('MixCaught 10:05 caught-more-than-mixed');
  });

  it('when it was coated unfiltered, then the coat is marked and holds the part', async () => {
    const shift = await given([...flowed, '10:05 coat new plate-2 1 flow already']);
    expect(await shift.deviations()).toEqual(['CoatApplied 10:05 caught-not-filtered']);
    expect((await shift.events()).at(-1)?.body).toMatchObject({ type: 'PartHeld', because: ['caught-not-filtered'] });
  });

  it('when it is caught, then it keeps the pot’s age: its end does not move', async () => {
    const shift = await given(flowed.slice(0, 4));
    const before = (await shift.plan())['batch/1/pot-end'];
    await shift.when('10:02 catch 1 300g');
    await shift.when('10:06 filter 1');
    expect((await shift.plan())['batch/1/pot-end']).toBe(before);
  });

  it('when the day is asked, then what was mixed, caught and left over stands on it', async () => {
    const shift = await given([...flowed, '10:06 filter 1', '11:00 empty 1 200g']);
    const span = daySpan('2026-03-02', 'UTC');
    const day = span && dayRecord(await shift.shop(), span, shift.time('12:00'));
    expect(day?.material.pots).toMatchObject([{ mixedGrams: 2399, caughtGrams: 300, leftOverGrams: 200 }]);
  });

  it('when nothing was weighed, then there is nothing to catch', async () => {
    const shift = await given(['Mon 08:00 mix 2.4kg 24C 48%']);
    expect(await shift.when('08:05 catch 1 300g')).toEqual({ objected: ['not-weighed'] });
  });
});

it('given a pot that stood open twice, then its minutes add up, the time still running included', async () => {
  const shift = await given([
    'Mon 08:00 mix 2.4kg 24C 48%',
    '08:05 weigh 1 1201g 1198g',
    '08:10 uncover 1',
    '08:14 cover 1',
    '08:20 uncover 1',
  ]);
  const batch = (await shift.shop()).batches.get(1);
  expect(batch && uncoveredMinutes(batch, shift.time('08:27'))).toBe(11);
});

describe('given the demo build, whose pot life shortens from 10 kg to 30 kg to six tenths (invented)', () => {
  const build = (a: string, b: string) => ['Mon 08:00 mix 25kg demo-build 20C 48%', `08:00 weigh 1 ${a} ${b}`];

  it('when 6.45 kg are in the pot, then it lives its four hours; when 20 kg are, a fifth less', async () => {
    const ends: string[] = [];
    for (const [a, b] of [
      ['5400g', '1050g'],
      ['16744.2g', '3255.8g'],
    ] as const) {
      const shift = await given([...build(a, b).slice(0, 1), `${build(a, b)[1]} already`, '11:00 air 20C 48%']);
      const shop = await shift.shop();
      const batch = shop.batches.get(1);
      const end = batch && potLifeTimes(batch, airLog(shop))?.endAt;
      ends.push(end === undefined ? '' : shift.spoken(end));
    }
    // 240 min at 20 degC; 20 kg lie half way between 1 and 0.6: 192 min.
    expect(ends).toEqual(['12:00', '11:12']);
  });
});
