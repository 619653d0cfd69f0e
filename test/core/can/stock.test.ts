// What is left, for how long, and the morning on which somebody must see to it.

import { expect, it } from 'vitest';
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
