// How fast the stirrer turned, where it tells it. A slight vortex and no faster, since air shortens the pot life: common
// practice, no source; 100 to 400 rpm and the share of the pot life are invented.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { potLifeTimes } from '../../../core/batch/batch-clocks.ts';
import { speedsOutside } from '../../../core/batch/stir-speed.ts';
import { airLog } from '../../../core/shop.ts';
import { given, type Setting, type Shift } from '../given.ts';
import { demoFolder, shelfWith } from '../products/own-sheets.ts';

const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];

async function outside(shift: Shift) {
  const batch = (await shift.shop()).batches.get(1);
  return batch === undefined ? [] : speedsOutside(batch).map((each) => [each.is, each.revolutionsPerMinute]);
}

async function potEnd(shift: Shift): Promise<string | undefined> {
  const shop = await shift.shop();
  const batch = shop.batches.get(1);
  const end = batch && potLifeTimes(batch, airLog(shop))?.endAt;
  return end === undefined ? undefined : shift.spoken(end);
}

describe('the speed of the stirrer', () => {
  it('given it is told, then the event has it, and undone it is gone', async () => {
    const shift = await given([...weighed, '08:05 stir 1 450rpm']);
    expect((await shift.events()).at(-1)?.body).toEqual({ type: 'StirrerStarted', revolutionsPerMinute: 450 });
    await shift.when('08:05 undo');
    expect(await outside(shift)).toEqual([]);
  });

  it('given it is told while the stirrer turns, then the stirring counts on', async () => {
    const shift = await given([...weighed, '08:05 stir 1 300rpm']);
    expect((await shift.shop()).batches.get(1)?.stirring).toEqual([{ from: shift.time('08:00'), to: undefined }]);
  });

  it.each([
    [99, [['too-slow', 99]]],
    [100, []],
    [400, []],
    [401, [['too-fast', 401]]],
  ])('given %d rpm of 100 to 400, then outside is %j, which is no deviation', async (rpm, expected) => {
    const shift = await given([...weighed, `08:05 stir 1 ${rpm}rpm`]);
    expect(await outside(shift)).toEqual(expected);
    expect(await shift.deviations()).toEqual([]);
  });

  it('given a can is stirred, then its event has it too', async () => {
    const shift = await given(['08:00 open A lot 7731 5kg gas', '08:01 prestir 1 250rpm']);
    expect((await shift.events()).at(-1)?.body).toEqual({ type: 'CanStirred', revolutionsPerMinute: 250 });
  });

  it('given the sheet does not say what it costs, then the pot lives as long as before', async () => {
    expect(await potEnd(await given([...weighed, '08:05 stir 1 900rpm']))).toBe('12:33:20');
  });
});

describe('a sheet that says what air beaten in costs: a quarter of the pot life', () => {
  const own = (): Setting => {
    const demo = JSON.parse(readFileSync(join(demoFolder, 'demo-clear.json'), 'utf8'));
    const speed = { lowestRevolutionsPerMinute: 100, highestRevolutionsPerMinute: 400, fastPotLifePercent: 75 };
    const steps = { ...demo.steps, vortex: { speed, source: 'invented for the tests' } };
    const sheet = { ...demo, id: 'shop-clear', name: 'Shop Clear', steps };
    return { shelf: shelfWith({ 'shop-clear.json': JSON.stringify(sheet) }) };
  };
  const mixed = ['08:00 air 24C 48%', '08:00 mix 2.4kg shop-clear', '08:00 weigh 1 1200g 1200g'];

  // At 24 degC 288 minutes, between 20 and 25 degC of the sheet; three quarters are 216.
  it.each([
    ['fast enough', '08:05 stir 1 400rpm', '12:33:20'],
    ['too fast', '08:05 stir 1 500rpm', '11:36'],
    ['too slow', '08:05 stir 1 50rpm', '12:33:20'],
  ])('given it turned %s, then it ends at %3$s', async (_, line, end) => {
    expect(await potEnd(await given([...mixed, line], own()))).toBe(end);
  });

  it('given it turned too fast when three quarters were gone already, then it ends at that moment', async () => {
    const shift = await given([...mixed, '11:50 air 24C 48%', '12:00 stir 1 500rpm'], own());
    expect(await potEnd(shift)).toBe('12:00');
  });
});
