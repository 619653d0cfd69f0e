// A pot's end at worst, where the air was read again and warmer. The demo sheet's table is invented: 480 minutes at 15
// degC, 360 at 20, 270 at 25, 200 at 30.

import { describe, expect, it } from 'vitest';
import { potAtWorst } from '../../../core/batch/at-worst.ts';
import { airLog } from '../../../core/shop.ts';
import { given, type Shift } from '../given.ts';

const potAt = (celsius: number) => [`08:00 air ${celsius}C 50%`, '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];
const filtered = [...potAt(15), '11:00 filter 1 already'];

async function worst(shift: Shift): Promise<string | undefined> {
  const shop = await shift.shop();
  const batch = shop.batches.get(1);
  const found = batch && potAtWorst(batch, airLog(shop, batch.place));
  return found && shift.spoken(found.endAt);
}

const ofWorst = async (shift: Shift) => (await shift.deviations()).filter((each) => each.endsWith('-at-worst'));

describe('the pot life at worst', () => {
  it('given 15 degC, then 30 degC 239 minutes later, then it is the 200 minutes of 30 degC from the first contact', async () => {
    const shift = await given([...potAt(15), '11:59 air 30C 50%']);
    // By the clock (1 - 239/480) * 200 = 100 min 25 s more; at worst it was 30 degC all along.
    expect((await shift.plan())['batch/1/pot-end']).toBe('13:39:25');
    expect(await worst(shift)).toBe('11:20');
  });

  it('given it was read in between, then only what follows that reading may have been warmer', async () => {
    const shift = await given([...potAt(15), '10:00 air 15C 50%', '11:59 air 30C 50%']);
    // 120/480 by ten; three quarters of 200 minutes are 150.
    expect(await worst(shift)).toBe('12:30');
  });

  it('given a pot mixed after the earlier reading, then it counts from its first contact', async () => {
    const shift = await given([
      '08:00 air 15C 50%',
      '09:00 mix 2.4kg',
      '09:00 weigh 1 1200g 1200g',
      '11:59 air 30C 50%',
    ]);
    expect(await worst(shift)).toBe('12:20');
  });

  it.each([
    ['a single reading', []],
    ['a colder one', ['11:59 air 15C 50%']],
    ['the same again', ['11:59 air 20C 50%']],
    ['a warmer one of before the pot', ['07:00 air 15C 50%']],
    ['the warmer one undone', ['10:00 air 30C 50%', '10:01 undo']],
  ])('given %s, then nothing is said', async (_, lines) => {
    const early = lines.filter((line) => line < '08');
    const shift = await given([...early, ...potAt(20), ...lines.filter((line) => line >= '08')].toSorted());
    expect(await worst(shift)).toBeUndefined();
  });

  it('given 10 degC, colder than the sheet covers, then 20 degC: it ran at the fastest already', async () => {
    const shift = await given([
      '08:00 @rosa: air 10C 50%',
      '08:00 @rosa: mix 2.4kg permit trial',
      '08:00 weigh 1 1200g 1200g',
      '09:00 air 20C 50%',
    ]);
    expect(await worst(shift)).toBeUndefined();
  });
});

describe('a coat after the end at worst', () => {
  const coats = ['11:10 coat new lid-1 1 brush already', '11:30 coat new lid-2 1 brush already'];

  it('given it was applied before the warmer reading, then that marks it, and holds and rings nothing', async () => {
    const shift = await given([...filtered, ...coats]);
    await shift.until('11:59');
    const events = (await shift.events()).length;
    await shift.when('11:59 air 30C 50%');
    expect(await ofWorst(shift)).toEqual(['CoatApplied 11:30 past-pot-life-at-worst']);
    expect((await shift.events()).slice(events).map(({ body }) => body.type)).toEqual(['AirRead']);
  });

  it('given it comes after that reading, then nothing objects, and it is marked up to the end by the clock', async () => {
    const shift = await given([...filtered, '11:59 air 30C 50%']);
    expect(await shift.when('13:00 coat new lid-1 1 brush')).toEqual({ recorded: ['CoatApplied'] });
    expect(await ofWorst(shift)).toEqual(['CoatApplied 13:00 past-pot-life-at-worst']);
    expect((await shift.events()).map(({ body }) => body.type)).not.toContain('PartHeld');
    await shift.when('13:40 coat new lid-2 1 brush already');
    expect(await ofWorst(shift)).toHaveLength(1);
    expect(await shift.deviations()).toContain('CoatApplied 13:40 past-pot-life');
  });

  it('given the warmer reading is corrected to a colder one, then nothing is marked any more', async () => {
    const shift = await given([...filtered, ...coats, '11:59 air 30C 50%']);
    await shift.when('12:05 amend air 15C misread the dial');
    expect(await ofWorst(shift)).toEqual([]);
  });
});
