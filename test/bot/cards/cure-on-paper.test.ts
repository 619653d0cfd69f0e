// What readings prove of a cure in the oven, on its trace: at the sheet's temperature in all, and the longest without a break.
// One hour at 90 degC: common practice, no source.

import { expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const inOven = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 103m', 'filter 1', 'part hub-1 cast-iron 12mm'],
  ...['coat hub-1 1 brush', 'empty 1', 'wait 17m', 'dry hub-1', 'cure hub-1 oven 95C'],
];

it.each([
  ['one stretch', ['temp hub-1 90C', 'wait 60m', 'temp hub-1 91C'], '1 h in all, 1 h the longest without a break.'],
  [
    'a door between',
    [
      'temp hub-1 90C',
      'wait 40m',
      'temp hub-1 91C',
      'door hub-1 2m',
      'wait 10m',
      'temp hub-1 90C',
      'wait 30m',
      'temp hub-1 90C',
    ],
    '1 h 10 min in all, 40 min the longest without a break.',
  ],
  [
    'a colder reading between',
    [
      'temp hub-1 90C',
      'wait 40m',
      'temp hub-1 91C',
      'wait 5m',
      'temp hub-1 80C',
      'wait 5m',
      'temp hub-1 90C',
      'wait 20m',
      'temp hub-1 90C',
    ],
    '1 h in all, 40 min the longest without a break.',
  ],
])('given %s, then the trace says how long it was at temperature', async (_, lines, told) => {
  const { say } = await talkAfter(...inOven, ...lines, 'out hub-1');
  expect((await say('trace hub-1')).card.lines.map((line) => line.trim())).toContain(
    `At 90 °C or above, by its readings: ${told}`,
  );
});

it('given no reading reached it, then nothing is said of it', async () => {
  const { say } = await talkAfter(...inOven, 'temp hub-1 60C', 'wait 20m', 'temp hub-1 80C');
  expect((await say('trace hub-1')).text).not.toContain('or above, by its readings');
});

it('given readings on the way up, then the estimate names the reading that it is fitted to', async () => {
  const { say } = await talkAfter(...inOven, 'wait 20m', 'temp hub-1 55C', 'wait 10m');
  const { card } = await say('temp hub-1 70C');
  expect(card.lines).toContain(
    'Estimate by the reading of 10:30 and its pace since the one before, in an oven of 95 °C. Read the part.',
  );
});
