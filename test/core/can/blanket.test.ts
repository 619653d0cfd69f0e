// Inert gas over what is left of a gas-sensitive can. That Part A needs it: common practice, no source; the demo sheet's
// 5, 10 and 20 minutes are invented.

import { describe, expect, it } from 'vitest';
import { headspaceOf } from '../../../core/can/can-clocks.ts';
import { given } from '../given.ts';

const openWithGas = ['Mon 08:00 open A lot 7731 5kg gas'];

describe('given a can of Part A, which air spoils (common practice, no source)', () => {
  it('when it is opened with nothing said of gas, then the bot asks first and records nothing', async () => {
    const shift = await given([]);
    expect(await shift.when('Mon 08:00 open A lot 7731 5kg')).toEqual({ objected: ['no-gas'] });
    expect(await shift.events()).toHaveLength(0);
  });

  it('when gas is at hand, or the whole can is used now, then it is opened', async () => {
    const shift = await given([]);
    expect(await shift.when('Mon 08:00 open A lot 7731 5kg gas')).toEqual({ recorded: ['CanOpened'] });
    expect(await shift.when('08:01 open A lot 7732 1kg whole')).toEqual({ recorded: ['CanOpened'] });
  });

  it('when it was opened without gas, then it is recorded, marked, and its clock runs from the lid', async () => {
    const shift = await given(['Mon 08:00 open A lot 7731 5kg already']);
    expect(await shift.deviations()).toEqual(['CanOpened 08:00 no-gas']);
    expect(await shift.plan()).toMatchObject({ 'can/1/blanket': '08:05', 'can/1/blanket/3': '08:20' });
  });

  it('when a lead allows it with a reason, then it is opened; the crew may not allow it', async () => {
    const shift = await given([]);
    expect(await shift.when('Mon 08:00 open A lot 7731 5kg permit "test can"')).toEqual({ unclear: 'may-not-permit' });
    expect(await shift.when('08:01 @omar: open A lot 7731 5kg permit "test can"')).toEqual({ recorded: ['CanOpened'] });
    expect(await shift.deviations()).toEqual(['CanOpened 08:01 no-gas permitted: test can']);
  });

  it('when Part B is opened, which the sheet does not name, then nobody is asked and nothing rings', async () => {
    const shift = await given(['Mon 08:00 open B lot 8802 5kg']);
    await shift.until('08:30');
    expect(shift.rung()).toEqual([]);
  });
});

describe('given the lid off at 8:00 and gas at hand', () => {
  it('when nobody says blanket, then it rings for who has it, for the lead, and for both that it is in doubt', async () => {
    const shift = await given(openWithGas);
    await shift.until('08:30');
    expect(shift.rung()).toEqual([
      { at: '08:05', key: 'can/1/blanket', to: ['kari'] },
      { at: '08:10', key: 'can/1/blanket/2', to: ['omar'] },
      { at: '08:20', key: 'can/1/blanket/3', to: ['kari', 'omar'] },
    ]);
  });

  it('when the first ring is heard but no gas is over it, then the lead is rung all the same', async () => {
    const shift = await given([...openWithGas, '08:06 ok']);
    await shift.until('08:12');
    expect(shift.rung().map(({ key }) => key)).toEqual(['can/1/blanket', 'can/1/blanket/2']);
  });

  it('when blanket is said, then nothing more rings', async () => {
    const shift = await given([...openWithGas, '08:07 blanket 1']);
    await shift.until('09:00');
    expect(shift.rung().map(({ key }) => key)).toEqual(['can/1/blanket']);
  });

  it('when gas went over it at 8:04 and is told of at 8:25, then it was never in doubt', async () => {
    const shift = await given([
      ...openWithGas,
      '08:01 mix 400g 24C 48%',
      '08:02 prestir 1',
      '08:25 blanket 1 at 08:04',
    ]);
    expect(await shift.when('08:30 weigh 2 200g 200g gas')).toEqual({ recorded: ['LidOff', 'PartsWeighed'] });
    expect(await shift.deviations()).toEqual([]);
  });

  it('when the opening is told of 25 minutes late, then whoever opened it and the leads hear at once, each once', async () => {
    const shift = await given(['Mon 08:25 open A lot 7731 5kg gas at 08:00']);
    expect(shift.rung().map(({ at, key, to }) => `${at} ${key} ${to}`)).toEqual([
      '08:25 can/1/blanket kari',
      '08:25 can/1/blanket/3 omar',
    ]);
  });

  it('when the opening was really ten minutes earlier, then an amendment moves what has not rung', async () => {
    const shift = await given([...openWithGas, '08:06 amend 1 open at 07:50 "told late"']);
    expect(shift.rung().map(({ at, key }) => `${at} ${key}`)).toEqual(['08:05 can/1/blanket', '08:06 can/1/blanket/2']);
    expect(await shift.plan()).toMatchObject({ 'can/1/blanket/3': '08:10' });
  });

  it('when it is discarded or poured to its last gram, then nothing rings any more', async () => {
    const shift = await given([
      'Mon 08:00 open A lot 7731 1kg whole',
      '08:00 open A lot 7732 5kg gas',
      '08:00 mix 2kg 24C 48%',
      '08:01 prestir 1',
      '08:02 weigh 3 1000g 1000g can 1',
      '08:03 discard 2 gelled in the can',
    ]);
    await shift.until('09:00');
    expect(shift.rung().filter(({ key }) => key.includes('blanket'))).toEqual([]);
  });
});

describe('given a can under gas', () => {
  const underGas = [...openWithGas, '08:03 blanket 1'];

  it('when its lid comes off again, then the minutes count anew and the rings go on numbering', async () => {
    const shift = await given([...openWithGas, '08:06 blanket 1', '10:00 lid 1 gas']);
    expect(await shift.plan()).toMatchObject({
      'can/1/blanket/2': '10:05',
      'can/1/blanket/3': '10:10',
      'can/1/blanket/4': '10:20',
    });
  });

  it('when it is poured from with no lid said, then the minutes count from the pour', async () => {
    const shift = await given([...underGas, '08:04 mix 400g 24C 48%', '10:00 weigh 2 200g 200g already']);
    expect(await shift.plan()).toMatchObject({ 'can/1/blanket': '10:05' });
  });
});

describe('given a can that stood without gas for 20 minutes', () => {
  const doubtful = [...openWithGas, '08:01 mix 400g 24C 48%', '08:24 prestir 1', '08:26 blanket 1'];

  it('when it is poured from, then the bot objects until a lead has looked at it', async () => {
    const shift = await given(doubtful);
    expect(await shift.when('08:30 weigh 2 200g 200g gas')).toEqual({ objected: ['can-doubtful'] });
    expect(shift.objections()).toEqual([
      { code: 'can-doubtful', can: 1, since: shift.time('08:20'), limitMinutes: 20 },
    ]);
    expect(await shift.when('08:31 check 1')).toEqual({ objected: ['check-by-lead'] });
    expect(await shift.when('08:32 @omar: check 1')).toEqual({ recorded: ['CanChecked'] });
    expect(await shift.when('08:33 weigh 2 200g 200g gas')).toEqual({ recorded: ['LidOff', 'PartsWeighed'] });
    expect(await shift.deviations()).toEqual([]);
  });

  it('when one of the crew says to have looked already, then it objects, and the doubt stands', async () => {
    const shift = await given(doubtful);
    expect(await shift.when('08:31 check 1 already')).toEqual({ objected: ['check-by-lead'] });
    expect(await shift.when('08:32 weigh 2 200g 200g gas')).toEqual({ objected: ['can-doubtful'] });
  });

  it('when it was poured from all the same, then the weighing is marked', async () => {
    const shift = await given([...doubtful, '08:32 weigh 2 200g 200g gas already']);
    expect(await shift.deviations()).toEqual(['PartsWeighed 08:32 can-doubtful']);
  });

  it('when the lead takes it while its lid is still off, then twenty minutes more bring the doubt back', async () => {
    const shift = await given([...openWithGas, '08:25 @omar: check 1']);
    expect(await shift.plan()).toMatchObject({ 'can/1/blanket/4': '08:30', 'can/1/blanket/6': '08:45' });
    await shift.until('08:46');
    await shift.when('08:46 mix 400g 24C 48%');
    await shift.when('08:46 prestir 1');
    expect(await shift.when('08:50 weigh 2 200g 200g')).toEqual({ objected: ['can-doubtful'] });
  });
});

it('given a clear can of 5 kg in 6 l (invented), when 1201 g are poured, then the headspace wants its gas by the logarithm', async () => {
  const shift = await given([
    ...openWithGas,
    '08:00 mix 2.4kg 24C 48%',
    '08:00 prestir 1',
    '08:02 weigh 2 1201g 1198g',
  ]);
  const can = (await shift.shop()).cans.get(1);
  const headspace = can === undefined ? undefined : headspaceOf(can);
  // By hand: 6 - 3.799 / 0.95 = 2.0011 l; 2.0011 x ln(20.9 / 2) = 4.695 l of gas (check values 11.3: V = Vh ln(C0/C)).
  expect(headspace?.headspaceLitres).toBeCloseTo(2.0011, 4);
  expect(headspace?.gasLitres).toBeCloseTo(4.6955, 3);
});
