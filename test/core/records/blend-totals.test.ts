// What the day says of stirring: wanted by the sheet over the temperatures there were, given in whole.

import { describe, expect, it } from 'vitest';
import { blendTotals } from '../../../core/batch/batch-clocks.ts';
import { airLog } from '../../../core/shop.ts';
import { epochMs } from '../../../core/units.ts';
import { given } from '../given.ts';

const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];

async function totals(lines: readonly string[], hours: number) {
  const shift = await given([...lines]);
  const shop = await shift.shop();
  const batch = shop.batches.get(1);
  if (batch === undefined) throw new Error('batch 1 was not opened');
  return blendTotals(batch, airLog(shop), epochMs(batch.openedAt + hours * 3_600_000));
}

describe('stirring wanted and given', () => {
  it('given it was stopped at half an hour, then hours later 102 minutes are still what was wanted', async () => {
    const { wantedMinutes, givenMinutes } = await totals([...weighed, '08:30 stop 1'], 9);
    expect(wantedMinutes).toBeCloseTo(102, 6);
    expect(givenMinutes).toBe(30);
  });

  it('given minutes that earned nothing, then they are not wanted', async () => {
    // 12 degC is below the table: no credit until 8:30; at 20 degC the whole is 110.
    const cold = ['08:00 air 12C 48%', ...weighed.slice(1), '08:30 air 20C 48%', '09:30 stop 1'];
    expect((await totals(cold, 3)).wantedMinutes).toBeCloseTo(110, 6);
  });

  it('given nobody stopped the stirrer, then nothing is given after the pot died', async () => {
    // Pot life ends at 12:33:20: 240 minutes at 288 (24 degC), the rest at the fastest 200 (invented for the demo).
    expect((await totals(weighed, 16)).givenMinutes).toBeCloseTo(273.33, 1);
  });

  it('given an induction, then what stands on after it is not given', async () => {
    const built = ['08:00 air 25C 48%', '08:00 mix 6.45kg demo-build', '08:00 weigh 1 5400g 1050g'];
    expect(await totals(built, 8)).toMatchObject({ wantedMinutes: 15, givenMinutes: 15 });
  });
});
