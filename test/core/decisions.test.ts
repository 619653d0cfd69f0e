// A decision is no fact that happened: telling that it was made makes none, nor does a time before now, nor a correction.

import { describe, expect, it } from 'vitest';
import { given } from './given.ts';

const cured = [
  ...['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...[
    '10:00 coat new a1 1 brush',
    '10:12 dry a1',
    '10:12 cure a1 oven 90C',
    '10:12 temp a1 90C',
    '11:12 temp a1 90C',
    '11:12 out a1',
  ],
];
const held = [...cured, '11:20 @rosa: hold a1 customer looks first'];

describe('release', () => {
  it.each([
    'release a1 already',
    'already release a1',
    'release a1 at 11:25',
    'release a1 5m ago',
    'release a1 at 11:15',
  ])('given a supervisor’s hold, when crew says "%s", then it objects and releases nothing', async (line) => {
    const shift = await given(held);
    const before = (await shift.events()).length;
    expect(await shift.when(`11:30 ${line}`)).toEqual({ objected: ['on-hold'] });
    expect(await shift.events()).toHaveLength(before);
    expect((await shift.shop()).parts.get('a1')?.verdict).toMatchObject({ is: 'held', by: 'rosa' });
  });

  it('given half of the cure, when it is told as released, then it objects', async () => {
    const shift = await given([...cured.slice(0, -2), '10:42 temp a1 90C']);
    expect(await shift.when('10:42 release a1 already')).toEqual({ objected: ['still-in-oven', 'cure-not-given'] });
  });

  it('given a time before now, then it counts from when it is said, and no correction moves it', async () => {
    const shift = await given(cured);
    expect(await shift.when('11:30 release a1 at 11:15')).toEqual({ recorded: ['PartReleased'] });
    expect((await shift.shop()).parts.get('a1')?.verdict).toMatchObject({ is: 'released', at: shift.time('11:30') });
    expect(await shift.when('11:31 amend a1 release at 11:00 typed late')).toEqual({ unclear: 'decision-stands' });
  });

  it('given a hold since 11:20, when a lead lifts it with an earlier time, then it is lifted as of now', async () => {
    const shift = await given(held);
    await shift.when('11:30 @omar: release a1 at 11:15 permit customer agreed');
    expect((await shift.shop()).parts.get('a1')?.verdict).toMatchObject({ is: 'released', at: shift.time('11:30') });
  });

  it('given a release and a hold after it, when the time of either is moved past the other, then it is refused', async () => {
    const shift = await given([...cured, '11:15 release a1', '11:20 @rosa: hold a1 customer looks first']);
    expect(await shift.when('11:30 amend a1 release at 11:25 told late')).toEqual({ unclear: 'decision-stands' });
    expect(await shift.when('11:30 amend a1 hold at 11:14 told late')).toEqual({ unclear: 'decision-stands' });
    expect(await shift.when('11:30 @rosa: amend a1 hold at 11:18 told late')).toEqual({ recorded: ['Amended'] });
  });

  it('given a part that left unreleased, when that is said as a hold, then both reasons stand', async () => {
    const shift = await given([...held, '11:30 hold a1 "left the shop, not released"']);
    expect((await shift.shop()).parts.get('a1')?.verdict).toMatchObject({
      why: 'customer looks first; left the shop, not released',
    });
  });
});

describe('a look at a doubtful can', () => {
  // In doubt from 8:20 on (the demo sheet's, invented).
  const doubtful = ['08:00 open A lot 7731 5kg gas', '08:21 air 24C 48%'];

  it('given crew tells that it was looked at, then it objects: whether it may be used is for a lead', async () => {
    const shift = await given(doubtful);
    for (const line of ['check 1 already', 'check 1 at 8:20', 'check 1']) {
      expect(await shift.when(`08:22 ${line}`)).toEqual({ objected: ['check-by-lead'] });
    }
    expect(await shift.when('08:23 @omar: check 1 at 8:22')).toEqual({ recorded: ['CanChecked'] });
  });

  it('given a lead’s look, when crew moves its time, then that is for a lead as well', async () => {
    const shift = await given([...doubtful, '08:22 @omar: check 1']);
    expect(await shift.when('08:40 amend can 1 check at 8:35 told late')).toEqual({ unclear: 'may-not-settle' });
    expect(await shift.when('08:40 @omar: amend can 1 check at 8:35 told late')).toEqual({ recorded: ['Amended'] });
  });
});

it('given a setting that is the lead’s, when crew tells that it was set, then it is refused all the same', async () => {
  const shift = await given(['08:00 air 24C 48%']);
  for (const line of ['set air-limit 8h', 'set air-limit 8h already', 'set air-limit 8h at 7:00']) {
    expect(await shift.when(`08:05 ${line}`)).toMatchObject({ unclear: 'may-not-settle' });
  }
});
