// A part weighed from a can that nobody named: the weighing is recorded, its can is named afterwards, and whatever hangs on
// that can counts from the pour. The demo sheet's minutes are invented.

import { describe, expect, it } from 'vitest';
import { traceBatch } from '../../../core/records/trace.ts';
import { given } from '../given.ts';

const onlyB = ['Mon 08:00 air 24C 48%', '08:00 open B lot 8802 5kg', '08:00 mix 2.4kg'];
const unnamed = [...onlyB, '08:04 weigh 2 1200g 1200g'];
const opened = [...unnamed, '08:06 open A lot 7731 5kg gas at 8:01'];

describe('given Part A weighed, and no can of it open by the record', () => {
  it('when its can is named, then it is poured from since the weighing: its gas counts down, what is left is less', async () => {
    const shift = await given(opened);
    expect(await shift.when('08:07 drawn 2 A can 3')).toEqual({ recorded: ['CanNamed'] });
    const named = (await shift.events()).at(-1);
    expect([named?.alsoUnder, named?.happenedAt]).toEqual([['can/3'], shift.time('08:04')]);
    const { cans } = await shift.shop();
    expect(cans.get(3)?.pours).toMatchObject([{ batch: 2, grams: 1200, at: shift.time('08:04') }]);
    expect(await shift.plan()).toMatchObject({ 'can/3/blanket/3': '08:21' });
  });

  it('when the can was shut with gas before the pour, then its gas counts down from the pour', async () => {
    const shift = await given([
      ...onlyB,
      '08:00 open A lot 7731 5kg gas',
      '08:01 blanket 3',
      '08:01 open A lot 7732 5kg gas',
    ]);
    await shift.when('08:04 weigh 2 1200g 1200g');
    await shift.when('08:07 drawn 2 A can 3');
    expect(await shift.plan()).toMatchObject({ 'can/3/blanket': '08:09', 'can/3/blanket/3': '08:24' });
    expect(await shift.deviations()).toEqual(['CanNamed 08:04 part-a-not-stirred']);
  });

  it('when nobody names it, then its lot is told as not given, and that of Part B is known', async () => {
    const shift = await given(unnamed);
    const trace = traceBatch(await shift.shop(), 2);
    expect([trace?.lots.map(({ can }) => can.lot), trace?.unnamed]).toEqual([['8802'], ['part-a']]);
  });

  it('when it is named once more, or of a part that is not weighed, then the bot says that none waits', async () => {
    const shift = await given([...opened, '08:07 drawn 2 A can 3']);
    expect(await shift.when('08:08 drawn 2 A can 3')).toEqual({ unclear: 'no-can-wanted' });
    expect(await shift.when('08:08 drawn 2 B can 3')).toEqual({ unclear: 'can-not-wanted' });
    expect(await shift.when('08:08 drawn 2 A can 9')).toEqual({ unclear: 'no-such-can' });
  });

  it('when the naming is undone, then the can is as full as before, and another may be named', async () => {
    const shift = await given([...opened, '08:07 drawn 2 A can 3', '08:08 undo']);
    expect((await shift.shop()).cans.get(3)?.pours).toEqual([]);
    expect(await shift.when('08:09 drawn 2 A can 3')).toEqual({ recorded: ['CanNamed'] });
  });

  it('when the weighing is put right, then its can follows in weight and time, and back with the undo', async () => {
    const shift = await given([...opened, '08:07 drawn 2 A can 3', '08:08 amend 2 weigh 1210g 1200g "misread"']);
    expect((await shift.shop()).cans.get(3)?.pours).toMatchObject([{ grams: 1210 }]);
    await shift.when('08:09 amend 2 weigh at 8:02 "later typed"');
    expect((await shift.shop()).cans.get(3)?.pours).toMatchObject([{ grams: 1210, at: shift.time('08:02') }]);
    await shift.when('08:10 undo');
    await shift.when('08:10 undo');
    expect((await shift.shop()).cans.get(3)?.pours).toMatchObject([{ grams: 1200, at: shift.time('08:04') }]);
  });

  it('when somebody else has named it, then nothing is undone from under it', async () => {
    const shift = await given([...opened, '08:07 @omar: drawn 2 A can 3']);
    // Her own last act is the opening of the can; that rests on his.
    expect(await shift.when('08:08 undo')).toEqual({ unclear: 'undo-rests' });
  });

  it('when more is added and two cans may be meant, then the bot asks first: it is small', async () => {
    const shift = await given([...opened, '08:07 drawn 2 A can 3', '08:08 open A lot 7732 5kg gas']);
    expect(await shift.when('08:09 add 2 A 14g')).toEqual({ unclear: 'which-can' });
  });
});
