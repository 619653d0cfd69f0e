// What is left, for how long, and the morning on which somebody must see to it.

import { describe, expect, it } from 'vitest';
import { stockOf } from '../../../core/can/can-stock.ts';
import { given } from '../given.ts';

it('given cans of several ages, then the stock tells days open, days to expiry, gas and what runs low', async () => {
  const shift = await given([
    'Mon 08:00 open A lot 7731 5kg gas exp 2026-03-05',
    '08:03 blanket 1',
    '09:00 open B lot 8802 5kg',
    '09:00 mix 8.2kg 24C 48%',
    '09:05 weigh 3 b 4100g already',
    'Tue 10:00 lid 1 gas',
  ]);
  const rows = stockOf(await shift.shop(), shift.time('Tue 10:01'));
  expect(
    rows.map(({ can, leftGrams, daysOpen, daysToExpiry, gas, isLow }) => [
      can.number,
      leftGrams,
      daysOpen,
      daysToExpiry,
      gas.is,
      isLow,
    ]),
  ).toEqual([
    [1, 5000, 1, 2, 'lid-off', false],
    // 900 g of 5000 g: below a fifth.
    [2, 900, 1, undefined, 'not-needed', true],
  ]);
});

it('given nothing that needs anybody, then the morning is silent', async () => {
  const shift = await given(['Mon 08:00 open A lot 7731 5kg gas', '08:03 blanket 1']);
  await shift.until('Wed 12:00');
  expect(shift.rung().map(({ key }) => key)).toEqual(['crew/digest/2026-03-02']);
});

it('given a can in doubt, then the lead is told at seven the next morning', async () => {
  const shift = await given(['Mon 08:00 open A lot 7731 5kg gas', '08:30 blanket 1']);
  await shift.until('Tue 12:00');
  expect(shift.rung().at(-1)).toEqual({ at: 'Tue 07:00', key: 'crew/morning/2026-03-03', to: ['omar'] });
});

it('given a can that expires in ten days, then the morning a week before tells of it, and the one after its last day', async () => {
  const shift = await given(['Mon 08:00 @omar: set morning 6', '08:00 open B lot 8802 5kg exp 2026-03-12']);
  // A week before the 12th is the 5th; gone is the 13th.
  expect(await shift.plan()).toMatchObject({
    'crew/morning/2026-03-05': 'Thu 06:00',
    'crew/morning/2026-03-13': '2026-03-13 06:00',
  });
});

describe('given a can that the sheet lets stand open for 30 days (invented)', () => {
  // Opened on 31 January: its last day is Monday, 2 March.
  const opened = 'Mon 08:00 open B lot 8802 5kg at 2026-01-31 8:00';

  it('when its last day nears, then the stock and the morning tell it', async () => {
    const shift = await given(['Mon 08:00 open B lot 8802 5kg at 2026-02-02 8:00', '08:01 air 24C 48%']);
    const [row] = stockOf(await shift.shop(), shift.time('Mon 08:02'));
    expect(row?.daysOpenLeft).toBe(2);
    await shift.until('Tue 12:00');
    expect(shift.rung().map(({ key }) => key)).toContain('crew/morning/2026-03-03');
  });

  it('when it is poured from on its last day, then nothing is asked; a day later it objects', async () => {
    const shift = await given([opened, '08:01 mix 2.4kg 24C 48%']);
    expect(await shift.when('08:02 weigh 2 b 1200g already')).toEqual({ recorded: ['PartWeighed'] });
    expect(await shift.deviations()).not.toContainEqual(expect.stringContaining('can-open-too-long'));
    await shift.when('Tue 08:00 air 24C 48%');
    await shift.when('08:00 mix 2.4kg');
    expect(await shift.when('08:01 weigh 3 b 1200g')).toEqual({
      objected: expect.arrayContaining(['can-open-too-long']),
    });
  });
});
