// Pot life by dose, from the first contact of B with A. The demo sheet's table is invented: 480 minutes at 15 degC, 360
// at 20, 270 at 25, 200 at 30; 30 minutes are left at the end to empty and flush.

import { describe, expect, it } from 'vitest';
import { potLifeTimes } from '../../../core/batch/batch-clocks.ts';
import { airLog } from '../../../core/shop.ts';
import { given, type Shift } from '../given.ts';

const weighedAt = (celsius: number) => [`08:00 air ${celsius}C 50%`, '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];

async function pot(shift: Shift): Promise<readonly (string | undefined)[]> {
  const plan = await shift.plan();
  return ['half', 'margin', 'end'].map((ring) => plan[`batch/1/pot-${ring}`]);
}

describe('pot life by dose', () => {
  it('given five readings, one amended in the middle, one outside the table, one entered late, then half, margin and end follow', async () => {
    const shift = await given([...weighedAt(20), '09:00 air 25C 50%', '10:00 air 20C 50%']);
    // 60/360 + 60/270 = 0.3889 by ten; 0.1111 more is 40 minutes at 20 degC.
    expect((await pot(shift))[0]).toBe('10:40');

    await shift.when('10:20 amend air 25C misread the dial');
    // At 25 degC 0.1111 is 30 minutes.
    expect((await pot(shift))[0]).toBe('10:30');

    await shift.when('11:00 air 33C 50%');
    // 60/360 + 120/270 = 0.6111 by eleven; 33 degC is past the table, so the rest goes at the fastest, 200 minutes for
    // the whole: 0.3889 * 200 = 77 min 46.67 s.
    expect(await pot(shift)).toEqual([undefined, '11:47:47', '12:17:47']);

    await shift.when('11:45 air 15C 50% at 11:30');
    // 30/200 more by half past eleven, 0.7611 in all; 0.2389 * 480 = 114 min 40 s.
    expect(await pot(shift)).toEqual([undefined, '12:54:40', '13:24:40']);
    expect(await shift.when('13:24:39 stir 1')).toEqual({ recorded: ['StirrerStarted'] });
    expect(await shift.when('13:24:40 stir 1')).toEqual({ objected: ['past-pot-life'] });
  });

  it('given an end between two milliseconds, then it is the earlier one', async () => {
    const shift = await given([...weighedAt(20), '09:00 air 25C 50%', '11:00 air 33C 50%']);
    const shop = await shift.shop();
    const batch = shop.batches.get(1);
    // (1 - 60/360 - 120/270) * 200 min = 4 666 666.67 ms.
    expect(batch && potLifeTimes(batch, airLog(shop))?.endAt).toBe(shift.time('11:00') + 4_666_666);
  });

  it.each([10, 33])(
    'given %d degC, outside the table, then the pot runs at the fastest: 200 minutes',
    async (celsius) => {
      expect(await pot(await given(weighedAt(celsius)))).toEqual(['09:40', '10:50', '11:20']);
    },
  );

  it('given no reading at all, then the pot runs at the fastest', async () => {
    const shift = await given(['08:00 @omar: mix 2.4kg permit hygrometer broken', '08:00 weigh 1 1200g 1200g']);
    expect(await pot(shift)).toEqual(['09:40', '10:50', '11:20']);
  });

  it('given a night without readings, then it runs at the fastest from when the last is four hours old, lowest or not', async () => {
    const shift = await given(['16:00 air 15C 50%', '16:00 mix 2.4kg', '16:00 weigh 1 1200g 1200g']);
    // 240/480 by eight in the evening; the other half of 200 minutes is 100.
    expect(await pot(shift)).toEqual(['20:00', '21:10', '21:40']);
    await shift.when('Tue 07:00 night 12C');
    const shop = await shift.shop();
    const batch = shop.batches.get(1);
    expect(batch && potLifeTimes(batch, airLog(shop))?.endAt).toBe(shift.time('Mon 21:40'));
    expect(await shift.when('Tue 07:00 coat new impeller-7 1 brush')).toHaveProperty(['objected', 0], 'past-pot-life');
  });

  it('given the stirrer stopped, then the pot dies no later', async () => {
    const shift = await given(weighedAt(24));
    const before = await pot(shift);
    await shift.when('08:30 stop 1');
    expect(await pot(shift)).toEqual(before);
  });

  it('given a second weighing, then its figures count and the first contact stays', async () => {
    const shift = await given(weighedAt(24));
    const before = await pot(shift);
    await shift.when('08:20 weigh 1 1250g 1240g already');
    expect(await pot(shift)).toEqual(before);
    expect((await shift.shop()).batches.get(1)?.weighing).toMatchObject({ partAGrams: 1250, at: shift.time('08:00') });
  });
});

describe('eyes beat the clock', () => {
  it.each(['thick', 'gel'])('given "%s", then the pot is dead at once and only emptying is left', async (seen) => {
    const shift = await given([...weighedAt(24), '09:42 filter 1']);
    expect(await shift.when(`09:50 ${seen} 1`)).toEqual({ recorded: ['MixThickened'] });
    expect(await pot(shift)).toEqual([undefined, undefined, undefined]);
    expect(await shift.when('09:51 coat new impeller-7 1 brush')).toEqual({ objected: ['pot-dead'] });
    expect(await shift.when('09:52 filter 1')).toHaveProperty(['objected', 0], 'pot-dead');
    expect(await shift.when('09:53 stir 1')).toHaveProperty(['objected', 0], 'pot-dead');
    // One that has gelled may heat: nobody empties it before they are told to stand off.
    if (seen === 'gel') expect(await shift.when('09:54 empty 1')).toEqual({ objected: ['pot-dead'] });
    expect(await shift.when('09:55 empty 1 already')).toEqual({ recorded: ['PotEmptied'] });
  });

  it('given thick was said of the wrong pot, when it is undone, then the bells of the pot stand again', async () => {
    const shift = await given(weighedAt(24));
    const before = await pot(shift);
    await shift.when('09:00 thick 1');
    expect(await shift.when('09:01 undo')).toEqual({ recorded: ['Amended'] });
    expect(await pot(shift)).toEqual(before);
  });

  it('given it was said late, then coats after the time that was seen are deviations, those before are none', async () => {
    const shift = await given([
      ...weighedAt(24),
      '09:42 filter 1',
      '09:50 coat new lid-1 1 dip',
      '10:10 coat new lid-2 1 dip',
    ]);
    await shift.when('10:20 gel 1 at 10:00');
    expect(await shift.deviations()).toEqual(['CoatApplied 10:10 pot-dead']);
  });
});
