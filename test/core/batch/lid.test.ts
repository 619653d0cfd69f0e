// Covered while it is stirred: an open lid rings for whoever took it off, and past the sheet's most it is a
// deviation. Covered: common practice, no source; the minutes and the share of the pot life: invented.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { potLifeTimes } from '../../../core/batch/batch-clocks.ts';
import { airLog } from '../../../core/shop.ts';
import { given, type Setting, type Shift } from '../given.ts';
import { demoFolder, shelfWith } from '../products/own-sheets.ts';

// At 24 degC the demo clear lives 273 minutes and 20 seconds (see pot-life.test.ts).
const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];
const source = 'invented for the tests';

function sheetWith(covered: object): Setting {
  const demo = JSON.parse(readFileSync(join(demoFolder, 'demo-clear.json'), 'utf8'));
  const own = {
    ...demo,
    id: 'shop-clear',
    name: 'Shop Clear',
    steps: { ...demo.steps, covered: { ...covered, source } },
  };
  return { shelf: shelfWith({ 'shop-clear.json': JSON.stringify(own) }) };
}
const shopWeighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg shop-clear', '08:00 weigh 1 1200g 1200g'];

const lidRings = (shift: Shift) => shift.rung().filter(({ key }) => key.startsWith('batch/1/uncovered'));

describe('a lid that is off while the mix is stirred', () => {
  it('given ten minutes, then it rings for whoever took it off; taken off again, then again', async () => {
    const shift = await given([...weighed, '08:10 @omar: uncover 1', '08:25 cover 1', '08:30 uncover 1']);
    await shift.until('09:00');
    expect(lidRings(shift)).toEqual([
      { at: '08:20', key: 'batch/1/uncovered', to: ['omar'] },
      { at: '08:40', key: 'batch/1/uncovered/2', to: ['kari'] },
    ]);
  });

  it.each([
    ['covered before', '08:19 cover 1'],
    ['emptied before', '08:19 empty 1'],
    ['gelled before', '08:19 gel 1'],
    ['filtered before: it is stirred no more', '08:19 filter 1 already'],
  ])('given it was %s, then nothing rings', async (_, line) => {
    const shift = await given([...weighed, '08:10 uncover 1', line]);
    await shift.until('09:30');
    expect(lidRings(shift)).toEqual([]);
  });

  it('given nothing is mixed yet, then it rings ten minutes after B met A', async () => {
    const shift = await given([...weighed.slice(0, 2), '08:05 uncover 1', '08:30 weigh 1 1200g 1200g']);
    await shift.until('09:00');
    expect(lidRings(shift)).toMatchObject([{ at: '08:40' }]);
  });

  it('given a sheet that does not ask for it, then nothing rings and nothing is a deviation', async () => {
    const shift = await given(['08:00 air 25C 48%', '08:00 mix 6.45kg demo-build', '08:00 weigh 1 5400g 1050g']);
    await shift.when('08:05 uncover 1');
    await shift.when('09:30 cover 1');
    expect([lidRings(shift), await shift.deviations()]).toEqual([[], []]);
  });
});

describe("a lid that was off longer than the sheet's half hour in all", () => {
  it('given 20 and 10 minutes, then it is within; a minute more is a deviation of the second time', async () => {
    const twice = [...weighed, '08:10 uncover 1', '08:30 cover 1', '08:40 uncover 1'];
    expect(await (await given([...twice, '08:50 cover 1'])).deviations()).toEqual([]);
    const over = await given([...twice, '08:51 cover 1']);
    expect(await over.deviations()).toEqual(['PotUncovered 08:40 uncovered-too-long']);
  });

  it('given it stood open while it was used, then that is no deviation', async () => {
    const shift = await given([...weighed, '08:10 uncover 1', '08:40 filter 1 already', '10:00 cover 1']);
    expect(await shift.deviations()).toEqual(['MixFiltered 08:40 blend-not-done']);
  });

  it('given it is still off, then what is done to the pot later shows how long', async () => {
    const shift = await given([...weighed, '08:10 uncover 1']);
    await shift.until('09:00');
    expect(await shift.deviations()).toEqual([]);
    await shift.when('09:42 stop 1');
    expect(await shift.deviations()).toEqual(['PotUncovered 08:10 uncovered-too-long']);
  });

  it('given no share of the pot life on the sheet, then the pot lives as long as before', async () => {
    const shift = await given([...weighed, '08:10 uncover 1', '08:51 cover 1']);
    expect(await potEnd(shift)).toBe('12:33:20');
  });
});

async function potEnd(shift: Shift): Promise<string | undefined> {
  const shop = await shift.shop();
  const batch = shop.batches.get(1);
  const end = batch && potLifeTimes(batch, airLog(shop))?.endAt;
  return end === undefined ? undefined : shift.spoken(end);
}

describe('a sheet that says what an open lid costs: half the pot life', () => {
  const half = () => sheetWith({ ringMinutes: 10, mostMinutes: 30, potLifePercent: 50 });

  it('given it was off for as long as the sheet allows, then it costs nothing', async () => {
    const shift = await given([...shopWeighed, '08:10 uncover 1', '08:40 cover 1'], half());
    expect(await potEnd(shift)).toBe('12:33:20');
  });

  it('given it was off longer, then it has half of the 288 minutes that 24 degC gives: 144 minutes', async () => {
    const shift = await given([...shopWeighed, '08:10 uncover 1', '08:41 cover 1'], half());
    expect(await potEnd(shift)).toBe('10:24');
  });

  it('given it had lived half of it by then, then it ends at that moment, not in the past', async () => {
    const shift = await given([...shopWeighed, '11:00 air 24C 48%', '11:00 uncover 1', '11:31 cover 1'], half());
    expect(await potEnd(shift)).toBe('11:30');
  });
});
