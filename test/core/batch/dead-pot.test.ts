// A gelled or a hot pot: nothing more goes in or comes out of it. What was done all the same is told, marked, and holds.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const mixed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];
const inUse = [...mixed, '09:42 filter 1', '10:00 coat new a0 1 flow'];

describe.each(['hot 1', 'hot pot 1', 'hot pot', 'gel 1'])('given "%s"', (seen) => {
  it('when work on that pot is asked, then it is objected to', async () => {
    const shift = await given([...inUse, `10:05 ${seen}`]);
    for (const work of ['filter 1', 'stir 1', 'catch 1 200g', 'coat new a1 1 brush', 'add 1 a 10g', 'weigh 1 1g 1g']) {
      expect(await shift.when(`10:06 ${work}`)).toMatchObject({ objected: expect.arrayContaining(['pot-dead']) });
    }
  });

  it('when it is still being weighed, then the second part is not poured in', async () => {
    const shift = await given([...mixed.slice(0, 2), '08:00 weigh 1 a 1200g', `08:01 ${seen}`]);
    expect(await shift.when('08:02 weigh 1 b 1200g')).toEqual({ objected: ['pot-dead'] });
  });

  it('when it was coated from all the same, then that is recorded, a deviation, and the part is on hold', async () => {
    const shift = await given([...inUse, `10:05 ${seen}`]);
    expect(await shift.when('10:06 coat new a1 1 brush already')).toEqual({ recorded: ['CoatApplied', 'PartHeld'] });
    expect(await shift.deviations()).toEqual(['CoatApplied 10:06 pot-dead']);
    expect((await shift.shop()).parts.get('a1')?.verdict).toMatchObject({ is: 'held', because: ['pot-dead'] });
  });

  it('then no bell of that pot rings, and it may be noted and held; it is emptied only where that has happened', async () => {
    const shift = await given([...inUse, `10:05 ${seen}`]);
    expect(Object.keys(await shift.plan()).filter((key) => key.startsWith('batch/'))).toEqual([]);
    for (const open of ['thick 1', 'cover 1', 'hold a0 pot went off', 'near miss pot swelled']) {
      expect(await shift.when(`10:06 ${open}`)).toHaveProperty('recorded');
    }
    expect(await shift.when('10:06 empty 1 2000g')).toEqual({ objected: ['pot-dead'] });
    expect(await shift.when('10:06 empty 1 2000g already')).toEqual({ recorded: ['PotEmptied'] });
    expect(await shift.deviations()).toEqual(['PotEmptied 10:06 pot-dead']);
  });
});

it('given it was said late, then a coat of the meantime is marked, and its part held', async () => {
  const shift = await given([...inUse, '10:10 coat new a1 1 brush', '10:20 hot 1 at 10:05']);
  expect(await shift.deviations()).toEqual(['CoatApplied 10:10 pot-dead']);
  expect((await shift.shop()).parts.get('a1')?.verdict).toMatchObject({ because: ['pot-dead'] });
});

it('given two pots and no number, then the alarm is recorded and nothing is guessed; a number stops that one', async () => {
  const shift = await given([...inUse, '10:01 mix 2.4kg', '10:02 weigh 2 1200g 1200g']);
  expect(await shift.when('10:05 hot pot')).toEqual({ recorded: ['AlarmRaised'] });
  const dead = async () => [...(await shift.shop()).batches.values()].map(({ thickened }) => thickened?.seen);
  expect(await dead()).toEqual([undefined, undefined]);
  await shift.when('10:06 hot 2');
  expect(await dead()).toEqual([undefined, 'hot']);
  expect(await shift.when('10:07 hot 99')).toEqual({ recorded: ['AlarmRaised'] });
});

it.each(['hot can 5', 'hot drum by the door', 'pot 7 is hot', 'la lata está caliente'])(
  'given one pot and "%s", then the alarm is recorded and that pot is not taken for it',
  async (said) => {
    const shift = await given(inUse);
    expect(await shift.when(`10:05 ${said}`)).toEqual({ recorded: ['AlarmRaised'] });
    expect((await shift.shop()).batches.get(1)?.thickened).toBeUndefined();
  },
);

it('given two pots and "pot 2 is hot", then that pot is dead and the other is not', async () => {
  const shift = await given([...inUse, '10:01 mix 2.4kg', '10:02 weigh 2 1200g 1200g', '10:05 pot 2 is hot']);
  const { batches } = await shift.shop();
  expect([1, 2].map((number) => batches.get(number)?.thickened?.seen)).toEqual([undefined, 'hot']);
});

it('given a thick pot that gels and then heats, then the worst stands, each since its own time', async () => {
  const shift = await given([...inUse, '10:05 thick 1', '10:06 gel 1', '10:07 hot 1', '10:08 thick 1']);
  expect((await shift.shop()).batches.get(1)?.thickened).toEqual({ seen: 'hot', at: shift.time('10:07') });
});
