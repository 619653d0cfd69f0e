// What is held while an alarm is on, by what is known of it: new work and work gone on with, in the place that it names, or
// everywhere; never what ends work. A drill holds nothing.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

// One pot at work, one to be weighed, and a can that neither comes from.
const pots = [
  '08:00 air 24C 48%',
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1200g 1200g',
  '08:00 mix 2.4kg',
  '09:50 air 24C 48%',
];
const begun = [...pots, '09:50 open A lot 7731 5kg gas'];
const heldWork = ['weigh 2 1200g 1200g', 'add 1 b 10g', 'filter 1', 'open B lot 3390 5kg gas', 'mix 2.4kg'];
const endings = ['stop 1', 'cover 1', 'empty 1 1000g', 'air 25C 50%'];
const objecting = async (cry: string, acts: readonly string[]) => {
  const shift = await given([...pots, `09:55 ${cry}`]);
  const held: string[] = [];
  for (const act of acts) {
    const heard = await shift.when(`10:00 ${act}`);
    if ('objected' in heard && heard.objected.includes('alarm-on')) held.push(act);
  }
  return held;
};

describe('while an alarm is on', () => {
  it.each(['@kari: fire', '@kari: fire in the room', '@kari: hay fuego', '@kari: eyes'])(
    'given "%s", then all new work is held, and what ends work is not',
    async (cry) => {
      expect(await objecting(cry, [...heldWork, 'brief in booth spray kari'])).toEqual([
        ...heldWork,
        'brief in booth spray kari',
      ]);
      expect(await objecting(cry, endings)).toEqual([]);
    },
  );

  it('given it names the booth, then only what is begun there is held', async () => {
    expect(await objecting('@kari: fire in the booth', [...heldWork, 'brief in booth spray kari'])).toEqual([
      'brief in booth spray kari',
    ]);
  });

  it.each(['@kari: hot 2', '@omar: start drill fire'])('given "%s", then no other work is held by it', async (cry) => {
    expect(await objecting(cry, [...heldWork, 'brief in booth spray kari'])).toEqual([]);
  });

  it('given a pot or a can that is hot, then that one is held by its own rules, others go on', async () => {
    const shift = await given([...begun, '09:55 hot 1', '09:56 can 3 hot']);
    expect(await shift.when('10:00 add 1 b 10g')).toMatchObject({ objected: expect.arrayContaining(['pot-dead']) });
    expect(await shift.when('10:00 prestir 3')).toMatchObject({ objected: expect.arrayContaining(['can-reacts']) });
    expect(await shift.when('10:00 mix 2.4kg')).toHaveProperty('recorded');
  });

  it('given a can, then it is neither stirred nor poured from, and gas over it and its lid are not held', async () => {
    const shift = await given([...begun, '09:55 fire']);
    expect(await shift.when('10:00 prestir 3')).toEqual({ objected: ['alarm-on'] });
    expect(await shift.when('10:00 blanket 3')).toHaveProperty('recorded');
  });

  it('given the stirrer was stopped, then it is not started again; given the lead says alarm over, then it is', async () => {
    const shift = await given([...begun, '09:55 fire', '09:56 stop 1']);
    expect(await shift.when('10:00 stir 1')).toEqual({ objected: ['alarm-on'] });
    await shift.when('10:01 @omar: alarm over');
    expect(await shift.when('10:02 stir 1')).toEqual({ recorded: ['StirrerStarted'] });
  });

  it('given a monitor showed too much in the room, then pots wait too, until it is read within its limit', async () => {
    const shift = await given([...begun, '09:55 lel 12% in room', '09:56 @omar: alarm over']);
    expect(await shift.when('10:00 stop 1')).toHaveProperty('recorded');
    expect(await shift.when('10:00 stir 1')).toEqual({ objected: ['gas-beyond'] });
    await shift.when('10:01 lel 2% in room');
    expect(await shift.when('10:04 stir 1')).toEqual({ recorded: ['StirrerStarted'] });
  });

  it('given it was done all the same, then it is recorded and marked, also when the cry is told afterwards', async () => {
    const shift = await given([...begun, '09:55 fire']);
    expect(await shift.when('10:00 filter 1 already')).toEqual({ recorded: ['MixFiltered'] });
    expect(await shift.deviations()).toEqual(['MixFiltered 10:00 alarm-on']);
    const late = await given([...begun, '10:00 add 1 b 10g', '10:05 fire at 09:58']);
    expect(await late.deviations()).toContain('PartAdded 10:00 alarm-on');
  });
});
