// Of parts that stand alike the rules are asked once, and each is offered what it would be offered alone.

import { expect, test } from 'vitest';
import { statusOf } from '../../../core/status.ts';
import { given } from '../given.ts';

const coated = [
  'Mon 08:00 air 24C 48%',
  '08:00 part b2 aluminium 3mm max 70C',
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1201g 1198g',
  '09:50 filter 1',
  '09:51 coat new b1 b3 b4 1 flow',
  '09:51 coat b2 1 flow',
];

/** What parts are offered together and each alone, line by line. */
async function offered(lines: readonly string[]) {
  const shift = await given(coated);
  const rounds = [];
  for (const line of lines) {
    await shift.when(line);
    const shop = await shift.shop();
    const moment = { shop, now: shift.time(line) };
    const parts = [...shop.parts.values()];
    const together = statusOf.parts(moment, parts).map(({ part, next }) => [part.name, next()] as const);
    rounds.push({ together, alone: parts.map((part) => [part.name, statusOf.part(moment, part).next()] as const) });
  }
  return rounds;
}

test.each([
  [
    'dipped and cured together, one of which bears no oven',
    ['09:52 wet b1 60um', '10:10 dry b1 b2 b3 b4', '10:11 cure b1 b3 oven 90C'],
  ],
  [
    'of which one is dry, one held, one touched up',
    ['10:10 dry b1', '10:11 hold b3 dust in it', '10:12 coat b4 1 flow same coat'],
  ],
  [
    'read, taken out, and one put right afterwards',
    [
      '10:10 dry b1 b3 b4',
      '10:11 cure b1 b3 b4 oven 90C',
      '10:30 temp b3 91C',
      '10:31 door b1',
      '12:30 happened out b1 b3 b4',
      '12:31 undo',
    ],
  ],
])('given parts %s, then each is offered what it is offered alone', async (_, lines) => {
  for (const { together, alone } of await offered(lines)) {
    expect(together).toEqual(alone);
    expect(together.length).toBe(4);
  }
});
