// The gear of every method is cleaned at once: a bell for each 20 minutes after its last use, a deviation from 30 minutes on
// (invented for the demo). Acetone, then isopropyl alcohol: common practice, no source.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { waitsForCleaning } from '../../../core/batch/gear-to-clean.ts';
import { given, type Setting, type Shift } from '../given.ts';
import { demoFolder, ownSheet, shelfWith } from '../products/own-sheets.ts';

const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];
const brushed = [...filtered, '10:00 coat new impeller-7 1 brush'];

const shopBrushed = [
  ...filtered.map((line) => line.replace('2.4kg', '2.4kg shop-clear')),
  '10:00 coat new impeller-7 1 brush',
];

function vesselsToo(): Setting {
  const { steps, ratio } = JSON.parse(readFileSync(join(demoFolder, 'demo-clear.json'), 'utf8'));
  const cleaning = { ringMinutes: 20, mostMinutes: 30, vessels: true, source: 'invented for the tests' };
  const own = ownSheet('shop-clear', { ratio, steps: { ...steps, cleaning } });
  return { shelf: shelfWith({ 'shop-clear.json': own }) };
}

const gearBells = (shift: Shift) => shift.rung().filter(({ key }) => key.startsWith('batch/1/gear'));

describe('the gear of a batch', () => {
  it('given twenty minutes after the last coat with it, then it rings once, for whoever coated last', async () => {
    const shift = await given([...brushed, '10:05 @omar: coat new lid-2 1 brush']);
    await shift.until('12:00');
    expect(gearBells(shift)).toEqual([{ at: '10:25', key: 'batch/1/gear/brush', to: ['omar'] }]);
  });

  it('given the next coat with it comes before, then the bell waits for that one', async () => {
    const shift = await given([...brushed, '10:15 coat new lid-2 1 brush']);
    expect(await shift.plan()).toMatchObject({ 'batch/1/gear/brush': '10:35' });
  });

  it('given the sheet’s solvents in their order, then nothing rings, whoever waits', async () => {
    const shift = await given([...brushed, '10:06 flush brush acetone 100ml', '10:07 clean brush 1 ipa 100ml']);
    await shift.until('12:00');
    expect([gearBells(shift), await shift.deviations()]).toEqual([[], []]);
  });

  it('given it was cleaned and used again, then it is to be cleaned again', async () => {
    const shift = await given([...brushed, '10:01 flush brush', '10:03 coat new lid-2 1 brush']);
    expect(await shift.plan()).toMatchObject({ 'batch/1/gear/brush': '10:23' });
  });

  it.each(['flush brush acetone', 'flush brush ipa', 'flush roller'])(
    'given only %s, then it still waits',
    async (line) => {
      const shift = await given([...brushed, `10:06 ${line}`]);
      expect(await shift.plan()).toMatchObject({ 'batch/1/gear/brush': '10:20' });
    },
  );

  it('given two methods and a sheet that has the vessels cleaned too, then each rings by itself', async () => {
    const shift = await given(
      [...shopBrushed, '10:02 coat new lid-2 1 dip', '10:05 empty 1', '10:06 flush brush'],
      vesselsToo(),
    );
    await shift.until('12:00');
    expect(gearBells(shift).map(({ at, key }) => `${at} ${key}`)).toEqual([
      '10:22 batch/1/gear/dip-tank',
      '10:25 batch/1/gear/vessels',
    ]);
  });

  it('given a sheet that asks for none of it, then nothing rings and nothing is late', async () => {
    const shift = await given([
      '08:00 air 24C 48%',
      '08:01 mix 6.45kg demo-build',
      '08:02 weigh 1 6kg 450g',
      '08:40 coat new impeller-7 1 brush already',
      '08:45 empty 1',
    ]);
    await shift.until('10:00');
    await shift.when('10:00 flush brush 1');
    expect([gearBells(shift), (await shift.deviations()).filter((each) => each.includes('late'))]).toEqual([[], []]);
  });

  it('given a pot that may heat, then nobody is sent to clean by it', async () => {
    const shift = await given([...brushed, '10:05 gel 1']);
    await shift.until('11:00');
    expect(gearBells(shift)).toEqual([]);
    await shift.when('11:00 empty 1');
    const gelled = (await shift.shop()).batches.get(1);
    expect(gelled && waitsForCleaning(gelled)).toBe(false);
  });
});

describe('gear that is cleaned late', () => {
  it('given 30 minutes, then it is in time; a minute more is a deviation of the first cleaning, once', async () => {
    const inTime = await given([...brushed, '10:30 flush brush acetone', '10:40 flush brush ipa']);
    expect(await inTime.deviations()).toEqual([]);
    const late = await given([...brushed, '10:31 flush brush acetone', '10:32 flush brush ipa']);
    expect(await late.deviations()).toEqual(['GearFlushed 10:31 gear-cleaned-late']);
  });

  it('given the pot is empty and its bells have rung, then the cleaning still finds it', async () => {
    const shift = await given([...brushed, '10:05 empty 1']);
    await shift.until('12:00');
    await shift.when('12:00 flush brush');
    expect(await shift.deviations()).toEqual(['GearFlushed 12:00 gear-cleaned-late']);
  });

  it('given it is said afterwards that it was cleaned in time, then it is no deviation', async () => {
    const shift = await given(brushed);
    await shift.when('11:00 flush brush at 10:10');
    expect(await shift.deviations()).toEqual([]);
  });

  it('given two pots, then one cleaning serves both, and each number its own', async () => {
    const two = [
      ...brushed,
      '10:01 mix 2.4kg',
      '10:01 weigh 2 1200g 1200g',
      '11:43 filter 2',
      '11:50 coat new lid-2 2 brush',
    ];
    const both = await given([...two, '11:55 flush brush']);
    expect(Object.keys(await both.plan()).filter((key) => key.includes('gear'))).toEqual([]);
    const second = await given([...two, '11:55 flush brush 2']);
    expect(await second.deviations()).toEqual([]);
  });
});

describe('a gun without a session', () => {
  it('given no pot, then it is recorded with its solvent, and asks nothing', async () => {
    const shift = await given([]);
    expect(await shift.when('08:00 flush gun acetone 200ml')).toEqual({ recorded: ['GearFlushed'] });
  });

  it('given a coat that was sprayed without a brief, then its gun rings and is cleaned for its batch', async () => {
    const shift = await given([...filtered, '10:00 coat new impeller-7 1 spray already']);
    expect(await shift.plan()).toMatchObject({ 'batch/1/gear/gun': '10:20' });
    await shift.when('10:06 flush gun');
    expect(await shift.plan()).not.toHaveProperty('batch/1/gear/gun');
  });

  it('given a spray session, then its own bells ring for gun and vessels, and none of the batch', async () => {
    const shift = await given([
      ...filtered,
      '09:45 brief 1 spray kari',
      '09:46 ack',
      '09:46 fan on 0.6m/s already',
      '09:46 supplied yes',
      '09:50 coat new impeller-7 1 spray already',
      '10:00 empty 1',
    ]);
    await shift.until('10:40');
    expect(gearBells(shift)).toEqual([]);
    expect(shift.rung().map(({ key }) => key)).toContain('session/2/vessels/1');
    await shift.when('10:41 flush gun acetone');
    expect(await shift.deviations()).toContain('GearFlushed 10:41 gear-cleaned-late');
  });
});
