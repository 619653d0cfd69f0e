// Every time that a gas-sensitive can is opened and shut: with gas at hand, or used whole. That Part A needs gas: common
// practice, no source; the demo sheet's 5, 10 and 20 minutes are invented.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const underGas = ['Mon 08:00 open A lot 7731 5kg gas', '08:03 blanket 1'];

describe('given a can of Part A under gas', () => {
  it('when its lid comes off with nothing said of gas, then the bot asks first and records nothing', async () => {
    const shift = await given(underGas);
    expect(await shift.when('10:00 lid 1')).toEqual({ objected: ['no-gas'] });
    expect(await shift.when('10:00 lid 1 gas')).toEqual({ recorded: ['LidOff'] });
    expect(await shift.deviations()).toEqual([]);
  });

  it('when it came off without gas, then that is recorded, marked, and its minutes run', async () => {
    const shift = await given([...underGas, '10:00 lid 1 already']);
    expect(await shift.deviations()).toEqual(['LidOff 10:00 no-gas']);
    expect(await shift.plan()).toMatchObject({ 'can/1/blanket': '10:05', 'can/1/blanket/3': '10:20' });
  });

  it('when it is said to be shut, which it is, then nobody is told that it is lost', async () => {
    const shift = await given(underGas);
    expect(await shift.when('08:10 shut 1')).toEqual({ recorded: ['LidOn'] });
    expect(await shift.deviations()).toEqual([]);
    expect(await shift.plan()).not.toHaveProperty('can/1/blanket');
    // Told late, of when its lid was off, it is another matter.
    expect(await shift.when('08:11 shut 1 at 8:02')).toEqual({ recorded: ['LidOn'] });
    expect(await shift.deviations()).toEqual(['LidOn 08:02 shut-without-gas']);
  });

  it('when it is shut without gas and said to be shut again, then it is marked once', async () => {
    const shift = await given(['Mon 08:00 open A lot 7731 5kg gas', '08:04 shut 1 already']);
    expect(await shift.when('08:06 shut 1')).toEqual({ recorded: ['LidOn'] });
    expect(await shift.deviations()).toEqual(['LidOn 08:04 shut-without-gas']);
  });

  it('when it is stirred, then its lid came off: gas or whole is asked, and what is said is recorded', async () => {
    const shift = await given(underGas);
    expect(await shift.when('10:00 prestir 1')).toEqual({ objected: ['no-gas'] });
    expect(await shift.when('10:00 prestir 1 gas')).toEqual({ recorded: ['LidOff', 'CanStirred'] });
    // Its lid is off now.
    expect(await shift.when('10:01 prestir 1')).toEqual({ recorded: ['CanStirred'] });
    expect(await shift.deviations()).toEqual([]);
    expect(await shift.when('10:02 undo')).toEqual({ recorded: ['Amended'] });
    expect(await shift.when('10:02 undo')).toEqual({ recorded: ['Amended', 'Amended'] });
    expect(await shift.plan()).not.toHaveProperty('can/1/blanket');
  });

  it('when it was stirred without gas, then its opening is marked, and its minutes run', async () => {
    const shift = await given([...underGas, '10:00 prestir 1 already']);
    expect(await shift.deviations()).toEqual(['LidOff 10:00 no-gas']);
    expect(await shift.plan()).toMatchObject({ 'can/1/blanket': '10:05' });
  });

  it('when it is poured from, then its lid came off: gas or whole is asked, and what is said is recorded', async () => {
    const shift = await given(['Mon 08:00 open A lot 7731 5kg gas', '08:00 prestir 1', '08:03 blanket 1']);
    await shift.when('08:04 mix 400g 24C 48%');
    expect(await shift.when('08:05 weigh 2 200g 200g')).toEqual({ objected: ['no-gas'] });
    expect(await shift.when('08:05 weigh 2 200g 200g argon')).toEqual({ recorded: ['LidOff', 'PartsWeighed'] });
    expect(await shift.deviations()).toEqual([]);
    expect(await shift.plan()).toMatchObject({ 'can/1/blanket': '08:10' });
    await shift.when('08:06 blanket 1');
    expect(await shift.when('08:07 add 2 A 2g')).toEqual({ objected: ['no-gas'] });
    expect(await shift.when('08:07 add 2 A 2g already')).toEqual({ recorded: ['LidOff', 'PartAdded'] });
    expect(await shift.deviations()).toEqual(['LidOff 08:07 no-gas']);
  });

  it('when the lid of Part B comes off, then nobody is asked', async () => {
    const shift = await given(['08:00 open B lot 8802 5kg']);
    expect(await shift.when('10:00 lid 1')).toEqual({ recorded: ['LidOff'] });
    expect(await shift.when('10:05 shut 1')).toEqual({ recorded: ['LidOn'] });
  });
});

describe('given a can of Part A that stands open', () => {
  const open = ['Mon 08:00 open A lot 7731 5kg gas'];

  it('when it is shut with nothing said of gas, then the bot asks, and gas said stops its minutes', async () => {
    const shift = await given(open);
    expect(await shift.when('08:04 shut 1')).toEqual({ objected: ['shut-without-gas'] });
    expect(await shift.when('08:04 shut 1 gas')).toEqual({ recorded: ['CanBlanketed'] });
    await shift.until('09:00');
    expect(shift.rung()).toEqual([]);
  });

  it('when it was shut without gas, then it is marked, rings on, and is in doubt like one that was left open', async () => {
    const shift = await given([...open, '08:01 mix 400g 24C 48%', '08:04 shut 1 already']);
    expect(await shift.deviations()).toEqual(['LidOn 08:04 shut-without-gas']);
    await shift.until('08:22');
    expect(shift.rung().map(({ at }) => at)).toEqual(['08:05', '08:10', '08:20']);
    await shift.when('08:23 prestir 1 gas');
    expect(await shift.when('08:26 weigh 2 200g 200g')).toEqual({ objected: ['can-doubtful'] });
  });

  it('when it is said to be used whole and the record has some left, then that is marked and the can in doubt', async () => {
    const shift = await given([...open, '08:01 mix 400g 24C 48%']);
    expect(await shift.when('08:02 shut 1 whole')).toEqual({ objected: ['whole-left-over'] });
    await shift.when('08:02 shut 1 whole already');
    expect(await shift.deviations()).toEqual(['LidOn 08:02 whole-left-over']);
    await shift.when('08:03 prestir 1 whole');
    expect(await shift.when('08:06 weigh 2 200g 200g')).toEqual({ objected: ['can-doubtful', 'whole-left-over'] });
    expect(await shift.when('08:07 @omar: check 1')).toEqual({ recorded: ['CanChecked'] });
    expect(await shift.when('08:07 lid 1 gas')).toEqual({ recorded: ['LidOff'] });
    expect(await shift.when('08:08 weigh 2 200g 200g')).toEqual({ recorded: ['PartsWeighed'] });
  });
});

describe('given a can of 1 kg of Part A to be used whole', () => {
  const whole = ['Mon 08:00 open A lot 7731 1kg whole', '08:00 prestir 1', '08:01 mix 2kg 24C 48%'];

  it('when all of it is poured, then nothing is marked', async () => {
    const shift = await given([...whole, '08:05 weigh 2 1000g 1000g']);
    expect(await shift.deviations()).toEqual([]);
  });

  it('when some is left over, then the bot says so before, marks it after, and the can is in doubt', async () => {
    const shift = await given(whole);
    expect(await shift.when('08:05 weigh 2 900g 900g')).toEqual({ objected: ['whole-left-over'] });
    await shift.when('08:05 weigh 2 900g 900g already');
    expect(await shift.deviations()).toEqual(['PartsWeighed 08:05 whole-left-over']);
    await shift.when('08:06 mix 200g');
    await shift.when('08:06 prestir 1');
    expect(await shift.when('08:12 weigh 3 50g 50g')).toEqual({ objected: ['can-doubtful', 'whole-left-over'] });
  });

  it('when gas goes over it before the pour, then gas was at hand and what is left is as good', async () => {
    const shift = await given([...whole, '08:04 blanket 1', '08:05 weigh 2 900g 900g gas']);
    expect(await shift.deviations()).toEqual([]);
  });
});
