// What is held while an alarm is on, by what is known of it: new work and work gone on with, in the place that it names, or
// everywhere; never what ends work. A drill holds nothing.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

// One pot at work, one to be weighed, and a can that neither comes from.
const pots = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '08:00 mix 2.4kg'];
const begun = [...pots, '08:00 open A lot 7731 5kg gas'];
const heldWork = ['weigh 2 1200g 1200g', 'add 1 b 10g', 'open B lot 3390 5kg gas', 'mix 2.4kg', 'filter 1'];
const endings = ['stop 1', 'cover 1', 'empty 1 1000g', 'air 25C 50%'];
const objecting = async (cry: string, acts: readonly string[]) => {
  const shift = await given([...pots, `08:05 ${cry}`]);
  const held: string[] = [];
  for (const act of acts) {
    const heard = await shift.when(`${act === 'filter 1' ? '09:42' : '08:10'} ${act}`);
    if ('objected' in heard && heard.objected.includes('alarm-on')) held.push(act);
  }
  return held;
};

describe('while an alarm is on', () => {
  it.each(['@kari: fire', '@kari: fire in the room', '@kari: hay fuego', '@kari: eyes'])(
    'given "%s", then all new work is held, and what ends work is not',
    async (cry) => {
      expect(await objecting(cry, ['brief in booth spray kari', ...heldWork])).toEqual([
        'brief in booth spray kari',
        ...heldWork,
      ]);
      expect(await objecting(cry, endings)).toEqual([]);
    },
  );

  it('given it names the booth, then only what is begun there is held', async () => {
    expect(await objecting('@kari: fire in the booth', ['brief in booth spray kari', ...heldWork])).toEqual([
      'brief in booth spray kari',
    ]);
  });

  it.each(['@kari: hot 2', '@omar: start drill fire'])('given "%s", then no other work is held by it', async (cry) => {
    expect(await objecting(cry, ['brief in booth spray kari', ...heldWork])).toEqual([]);
  });

  it('given a pot or a can that is hot, then that one is held by its own rules, others go on', async () => {
    const shift = await given([...begun, '08:05 hot 1', '08:06 can 3 hot']);
    expect(await shift.when('08:10 add 1 b 10g')).toMatchObject({ objected: expect.arrayContaining(['pot-dead']) });
    expect(await shift.when('08:10 prestir 3')).toMatchObject({ objected: expect.arrayContaining(['can-reacts']) });
    expect(await shift.when('08:10 mix 2.4kg')).toHaveProperty('recorded');
  });

  it('given a can, then it is neither stirred nor poured from, and gas over it and its lid are not held', async () => {
    const shift = await given([...begun, '08:05 fire']);
    expect(await shift.when('08:10 prestir 3')).toEqual({ objected: ['alarm-on'] });
    expect(await shift.when('08:10 blanket 3')).toHaveProperty('recorded');
  });

  it('given the stirrer was stopped, then it is not started again; given the lead says alarm over, then it is', async () => {
    const shift = await given([...begun, '08:05 fire', '08:06 stop 1']);
    expect(await shift.when('08:10 stir 1')).toEqual({ objected: ['alarm-on'] });
    await shift.when('08:11 @omar: alarm over');
    expect(await shift.when('08:12 stir 1')).toEqual({ recorded: ['StirrerStarted'] });
  });

  it('given a monitor showed too much in the room, then pots wait too, until it is read within its limit', async () => {
    const shift = await given([
      ...begun,
      '08:04 @omar: set monitor 2026-12-31',
      '08:05 lel 12% in room',
      '08:06 @omar: alarm over',
    ]);
    expect(await shift.when('08:10 stop 1')).toHaveProperty('recorded');
    expect(await shift.when('08:10 stir 1')).toEqual({ objected: ['gas-beyond'] });
    await shift.when('08:11 lel 2% in room');
    expect(await shift.when('08:14 stir 1')).toEqual({ recorded: ['StirrerStarted'] });
  });

  it('given it was done all the same, then it is recorded and marked, also when the cry is told afterwards', async () => {
    const shift = await given([...begun, '08:05 fire']);
    expect(await shift.when('09:42 filter 1 already')).toEqual({ recorded: ['MixFiltered'] });
    expect(await shift.deviations()).toEqual(['MixFiltered 09:42 alarm-on']);
    const late = await given([...begun, '08:10 add 1 b 10g', '08:15 fire at 08:08']);
    expect(await late.deviations()).toContain('PartAdded 08:10 alarm-on');
  });

  it('given it is over by now, when work of the time in which it was on is told late, then it is recorded despite it, and marked', async () => {
    const shift = await given([...begun, '08:05 fire', '08:20 @omar: alarm over', '08:20 stop 1']);
    expect(await shift.when('08:25 open B lot 3390 5kg gas at 08:10')).toEqual({ recorded: ['CanOpened'] });
    expect((await shift.events()).at(-1)?.saidWith.despite).toEqual(['alarm-on']);
    expect(await shift.deviations()).toEqual(['CanOpened 08:10 alarm-on']);
  });
});
