// What has left the shop is recorded by whoever says it. That nobody had released it is a deviation and a hold, and never a release.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const cured = [
  ...['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['10:00 coat new a1 1 brush', '10:12 dry a1', '10:12 cure a1 oven 90C', '10:12 temp a1 90C', '11:12 temp a1 90C'],
];

const partOf = async (shift: Awaited<ReturnType<typeof given>>) => (await shift.shop()).parts.get('a1');

describe('a part that has left the shop', () => {
  it('given nobody released it, when crew tells that it is gone, then that is recorded and holds it', async () => {
    const shift = await given([...cured, '11:12 out a1']);
    expect(await shift.when('11:20 @kari: shipped a1')).toEqual({ recorded: ['PartLeft', 'PartHeld'] });
    expect(await shift.deviations()).toEqual(['PartLeft 11:20 not-released']);
    expect((await partOf(shift))?.verdict).toMatchObject({ is: 'held', because: ['not-released'] });
  });

  it('given it was released, when it goes, then nothing speaks against it', async () => {
    const shift = await given([...cured, '11:12 out a1', '11:15 @omar: release a1']);
    expect(await shift.when('11:20 @kari: shipped a1')).toEqual({ recorded: ['PartLeft'] });
    expect(await shift.deviations()).toEqual([]);
    expect((await partOf(shift))?.verdict).toMatchObject({ is: 'released' });
  });

  it('given it went released, then its release is not taken back from under it', async () => {
    const shift = await given([...cured, '11:12 out a1', '11:15 @omar: release a1', '11:20 @kari: shipped a1']);
    expect(await shift.when('11:25 @omar: undo')).toEqual({ unclear: 'undo-rests' });
  });

  it('given leave that nobody can give, then that it is gone is recorded all the same, and held', async () => {
    const shift = await given([...cured, '11:12 out a1']);
    expect(await shift.when('11:20 shipped a1 permit the customer was in a hurry')).toEqual({
      recorded: ['PartLeft', 'PartHeld'],
    });
  });

  it('given it went wet, then nothing rings for it here any more', async () => {
    const shift = await given([...cured.slice(0, 5)]);
    const ofPart = async () => Object.keys(await shift.plan()).filter((key) => key.startsWith('part/a1/'));
    expect(await ofPart()).not.toEqual([]);
    await shift.when('10:05 shipped a1');
    expect(await ofPart()).toEqual([]);
  });

  it('given it went out of the oven, then its cure ends there, and a release meets that, and no oven', async () => {
    const shift = await given([...cured.slice(0, 8), '10:30 shipped a1']);
    expect((await partOf(shift))?.cure?.run.to).toBe(shift.time('10:30'));
    expect(await shift.when('10:40 @omar: release a1')).toEqual({ objected: ['on-hold', 'cure-not-given'] });
  });

  it('given a part that nobody has named, then it is asked about, and as a new one recorded and held', async () => {
    const shift = await given(cured.slice(0, 3));
    expect(await shift.when('11:20 shipped hub-9')).toEqual({ unclear: 'new-part' });
    expect(await shift.when('11:20 shipped new hub-9')).toEqual({ recorded: ['PartLeft', 'PartHeld'] });
  });

  it('given it is coated once more, then it is back', async () => {
    const shift = await given([...cured.slice(0, 5), '10:05 shipped a1', '10:30 coat a1 1 brush already']);
    expect((await partOf(shift))?.leftAt).toBeUndefined();
  });
});
