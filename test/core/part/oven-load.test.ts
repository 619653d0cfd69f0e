// An oven load: heat-up estimated from metal and wall until readings on the part tell, the door, and parts that go in and
// out together. Cast iron 7500 kg/m3, 450 J/(kg K) and steel 7800, 450: EN ISO 10456. The oven's 10 W/(m2 K) is from memory,
// no source. One hour at 90 degC: common practice, no source.

import { describe, expect, it } from 'vitest';
import { cureDue } from '../../../core/part/part-clocks.ts';

import { airLog, batchOf } from '../../../core/shop.ts';
import { given, type Shift } from '../given.ts';

const coatedWith = (...parts: readonly string[]) => [
  '08:00 air 20C 48%',
  ...parts.map((part) => `08:00 part ${part}`),
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1200g 1200g',
  '10:30 filter 1 already',
];
const iron = [
  ...coatedWith('impeller-7 cast-iron 12mm'),
  '10:35 coat new impeller-7 1 brush',
  '10:46 dry impeller-7',
  '11:00 cure impeller-7 oven 100C',
];
const load = [
  ...coatedWith('impeller-7 cast-iron 12mm', 'valve-3 steel 6mm'),
  '10:35 coat new impeller-7 valve-3 1 brush',
  '10:46 dry impeller-7 valve-3',
  '11:00 cure impeller-7 valve-3 oven 100C',
];
const done = 'part/impeller-7/cure-done';
const warm = 'part/impeller-7/temp-due';

async function dueOf(shift: Shift, name: string) {
  const shop = await shift.shop();
  const part = shop.parts.get(name);
  const batch = part && batchOf(shop, part);
  return part && batch && cureDue(part, batch.sheet, airLog(shop, batch.place));
}

describe('the heat-up', () => {
  it('given metal and wall, then it asks for a reading when the part should be warm, and rings an hour after', async () => {
    // tau = 7500 * 450 * 0.006 / 10 = 2025 s = 33.75 min; from 20 to 90 in 100 degC: 33.75 * ln(80 / 10) = 70.18 min.
    const shift = await given(iron);
    expect(await shift.plan()).toMatchObject({ [warm]: '12:10:11', [done]: '13:10:11' });
    expect(await dueOf(shift, 'impeller-7')).toMatchObject({ basis: 'estimate' });
  });

  it('given the estimate alone, then nothing is proved when it rings', async () => {
    const shift = await given(iron);
    expect(await shift.when('13:11 out impeller-7')).toEqual({ objected: ['cure-not-given'] });
    expect(shift.objections()).toMatchObject([{ progress: 0 }]);
  });

  it('given a reading below, then the estimate begins anew from it', async () => {
    // From 60: 33.75 * ln(40 / 10) = 46.79 min after 11:30.
    const shift = await given([...iron, '11:30 temp impeller-7 60C']);
    expect(await shift.plan()).toMatchObject({ [warm]: '12:16:47', [done]: '13:16:47' });
    expect(await dueOf(shift, 'impeller-7')).toMatchObject({ basis: 'estimate' });
  });

  it('given a reading that shows the temperature, then its hour begins there and the estimate is gone', async () => {
    const shift = await given([...iron, '11:40 temp impeller-7 91C']);
    const plan = await shift.plan();
    expect(plan[done]).toBe('12:40');
    expect(plan).not.toHaveProperty([warm]);
    expect(await dueOf(shift, 'impeller-7')).toMatchObject({ basis: 'readings' });
  });

  it('given its own surface was read before, then the heat-up begins there', async () => {
    // From 10: 33.75 * ln(90 / 10) = 74.16 min.
    const shift = await given([
      ...iron.slice(0, -1),
      '10:50 surface impeller-7 10C',
      '11:00 cure impeller-7 oven 100C',
    ]);
    expect(await shift.plan()).toMatchObject({ [warm]: '12:14:09' });
  });

  it('given an oven no hotter than the sheet asks, then within a degree of it counts as warm', async () => {
    // 33.75 * ln(70 / 1) = 143.4 min.
    const shift = await given([...iron.slice(0, -1), '11:00 cure impeller-7 oven 90C']);
    expect(await shift.plan()).toMatchObject({ [warm]: '13:23:23' });
  });

  it.each([
    ['no wall', 'impeller-7 cast-iron'],
    ['no metal', 'impeller-7 12mm'],
    ['a metal without figures', 'impeller-7 titanium 12mm'],
  ])('given %s, then nothing is estimated: it rings after the plain hour, not measured', async (_, part) => {
    const shift = await given([
      ...coatedWith(part),
      '10:35 coat new impeller-7 1 brush',
      '10:46 dry impeller-7',
      '11:00 cure impeller-7 oven 100C',
    ]);
    const plan = await shift.plan();
    expect(plan[done]).toBe('12:00');
    expect(plan).not.toHaveProperty([warm]);
    expect(await dueOf(shift, 'impeller-7')).toMatchObject({ basis: 'clock' });
  });
});

describe('a load', () => {
  it('given a bare reading, then it is of the part that warms last, and counts for the others', async () => {
    const shift = await given([...load, '12:00 temp 91C']);
    const readings = (await shift.events()).flatMap(({ body, stream, alsoUnder }) =>
      body.type === 'PartTemperatureRead' ? [{ on: body.on, stream, alsoUnder }] : [],
    );
    expect(readings).toEqual([{ on: 'impeller-7', stream: 'part/impeller-7', alsoUnder: ['part/valve-3'] }]);
    await shift.when('13:00 temp 92C');
    expect(await shift.when('13:00 out')).toEqual({ recorded: ['CureEnded', 'CureEnded'] });
    expect(await shift.deviations()).toEqual([]);
  });

  it('given a reading on a named part, then it is that part’s alone', async () => {
    const shift = await given([...load, '12:00 temp valve-3 91C']);
    expect(await shift.when('13:00 out')).toEqual({ objected: ['cure-not-given', 'cure-not-given'] });
    await shift.when('13:00 temp valve-3 92C');
    expect(await shift.when('13:00 out valve-3')).toEqual({ recorded: ['CureEnded'] });
  });

  it('given two loads, then a bare out or door is asked about', async () => {
    const shift = await given([
      ...load,
      '11:05 coat new lid-1 1 flow',
      '11:20 dry lid-1',
      '11:21 cure lid-1 oven 100C',
    ]);
    expect(await shift.when('11:30 out')).toEqual({ unclear: 'which-load' });
    expect(await shift.when('11:30 door')).toEqual({ unclear: 'which-load' });
    expect(await shift.when('11:30 door lid-1 3m')).toEqual({ recorded: ['DoorOpened'] });
  });

  it('given the door was opened twice, then both stand with each part of the load', async () => {
    const shift = await given([...load, '11:20 door 5m', '11:40 door']);
    const { parts } = await shift.shop();
    for (const name of ['impeller-7', 'valve-3']) {
      expect(parts.get(name)?.cure?.doors).toMatchObject([{ openMinutes: 5 }, { openMinutes: undefined }]);
    }
  });

  it('given nothing is in the oven, then a bare out says so', async () => {
    expect(await (await given(['08:00 air 20C 48%'])).when('08:01 out')).toEqual({ unclear: 'which-load' });
  });
});
