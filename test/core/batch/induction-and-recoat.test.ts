// A whole batch of the second demo sheet, of another kind: 4 : 1 by volume, standing for an induction time in place of
// stirring, a recoat window, no filter, no oven. Every figure of it is invented.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

// 6450 g are 5400 g of A and 1050 g of B: 4 L at 1.35 kg/L, 1 L at 1.05 kg/L. At 25 degC: induction 15 minutes, pot life
// 240 / 2^0.5 = 169.7056 minutes.
const weighed = ['08:00 air 25C 48%', '08:00 mix 6.45kg demo-build', '08:00 weigh 1 5400g 1050g'];
const coated = [...weighed, '08:20 coat new rail-2 1 brush'];

describe('the demo build', () => {
  it('given it is weighed, then induction and pot life run from there, and no stirrer is asked for', async () => {
    const shift = await given(weighed);
    expect(await shift.plan()).toEqual({
      'batch/1/induction-done': '08:15',
      // 84.853 minutes; 20 before the end; 169.706 minutes.
      'batch/1/pot-half': '09:24:51',
      'batch/1/pot-margin': '10:29:42',
      'batch/1/pot-end': '10:49:42',
      'place/room/air-due': '12:00',
      'crew/digest/2026-03-02': '17:00',
    });
    expect(await shift.deviations()).toEqual([]);
  });

  it('given a mix in litres, then its mass follows from the densities', async () => {
    const shift = await given(['08:00 air 25C 48%', '08:00 mix 5L demo-build']);
    expect((await shift.shop()).batches.get(1)?.plannedGrams).toBeCloseTo(6450, 9);
  });

  it('given B by weight in the proportion of the volumes, then the ratio is far out', async () => {
    const shift = await given([...weighed.slice(0, 2), '08:00 weigh 1 5160g 1290g']);
    // (1290 / 5160) / (1050 / 5400) - 1 = 0.286, against 5 %.
    expect(await shift.deviations()).toEqual(['PartsWeighed 08:00 ratio-out']);
  });

  it('given 17.5 degC, halfway along the table, then the induction takes 22.5 minutes', async () => {
    const shift = await given(['08:00 air 17.5C 48%', ...weighed.slice(1)]);
    expect(await shift.plan()).toMatchObject({ 'batch/1/induction-done': '08:22:30' });
    expect(await shift.when('08:22 coat new rail-2 1 brush')).toEqual({ objected: ['blend-not-done'] });
    expect(await shift.when('08:22:30 coat new rail-2 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given 8 degC, below the table, then the slowest that the sheet gives earns credit, as this sheet says', async () => {
    const shift = await given(['08:00 air 8C 48%', ...weighed.slice(1)]);
    expect(await shift.plan()).toMatchObject({ 'batch/1/induction-done': '08:30' });
    expect(await shift.when('08:30 coat new rail-2 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given a coat, then induction rings no more, and the window opens after 6 h and warns 2 h before it closes', async () => {
    const shift = await given(coated);
    expect(await shift.plan()).toMatchObject({
      'part/rail-2/flash-least': '08:40',
      'part/rail-2/flash-most': '09:20',
      'part/rail-2/recoat-opens': '14:20',
      'part/rail-2/recoat-closes': 'Thu 06:20',
    });
    expect(await shift.plan()).not.toHaveProperty(['batch/1/induction-done']);
  });

  it.each([
    ['Mon 14:19:59', { objected: ['recoat-too-early'] }],
    ['Mon 14:20', { recorded: ['CoatApplied'] }],
    ['Thu 08:20', { recorded: ['CoatApplied'] }],
    ['Thu 08:20:01', { objected: ['recoat-too-late'] }],
  ])('given a window from 6 to 72 h after 8:20, when the next coat is at %s, then %j', async (at, heard) => {
    const day = at.slice(0, 3);
    const shift = await given([
      ...coated,
      `${day} 07:30 air 25C 48%`.replace('Mon 07:30', '13:30'),
      `${day === 'Mon' ? '13:30' : '07:30'} mix 6.45kg demo-build`,
      `${day === 'Mon' ? '13:30' : '07:30'} weigh 2 5400g 1050g`,
    ]);
    expect(await shift.when(`${at} coat new rail-2 2 brush`)).toEqual(heard);
  });

  it('given the second coat, then the window counts from that one', async () => {
    const shift = await given([
      ...coated,
      '14:00 air 25C 48%',
      '14:00 mix 6.45kg demo-build',
      '14:00 weigh 2 5400g 1050g',
      '14:30 coat new rail-2 2 brush',
    ]);
    expect(await shift.plan()).toMatchObject({
      'part/rail-2/recoat-opens/2': '20:30',
      'part/rail-2/recoat-closes': 'Thu 12:30',
    });
  });

  it('given a room cure of 7 days at 23 degC, when the lowest of the week is told, then it may be released', async () => {
    const shift = await given([...coated, '08:50 dry rail-2', '09:00 air 23C 50%', '09:00 cure rail-2 room']);
    const week = { 'part/rail-2/cure-done': '2026-03-09 09:00' };
    expect(await shift.plan()).toMatchObject(week);
    await shift.when('Sun 09:00 night 23C');
    expect(await shift.plan()).toMatchObject(week);
    // Six days of seven are proved: 8640 of 10080 minutes.
    expect(await shift.when('Sun 09:00 release rail-2')).toEqual({ objected: ['cure-not-given'] });
    expect(shift.objections()).toMatchObject([{ progress: expect.closeTo(8640 / 10_080, 9) }]);
    expect(await shift.when('Sun 09:05 @rosa: release rail-2 permit indoors, not loaded')).toHaveProperty('recorded');
  });

  it('given 25 degC, above the cure table, then no credit, and it rings at the slowest, ten days', async () => {
    const shift = await given([...coated, '08:50 dry rail-2', '09:00 cure rail-2 room']);
    expect(await shift.plan()).toMatchObject({ 'part/rail-2/cure-done': '2026-03-12 09:00' });
  });
});
