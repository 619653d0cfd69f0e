// What a monitor's reading comes to, at each edge. Published: 10 % of the lower explosive limit, oxygen 19.5 to 23.5 %, 29 CFR
// 1910.146(b); carbon monoxide 50 ppm and hydrogen sulphide 20 ppm, 29 CFR 1910.1000, with NIOSH's 35 and 10, from memory.

import { expect, it } from 'vitest';
import { type Gas, gasVerdict, isBeyond } from '../../../core/calc/monitor-limits.ts';

it.each<readonly [Gas, number, string]>([
  ['lel', 9.9, 'within'],
  ['lel', 10, 'over'],
  ['o2', 19.4, 'under'],
  ['o2', 19.5, 'within'],
  ['o2', 23.5, 'within'],
  ['o2', 23.6, 'over'],
  ['co', 35, 'within'],
  ['co', 36, 'advised'],
  ['co', 50, 'advised'],
  ['co', 50.1, 'over'],
  ['h2s', 10, 'within'],
  ['h2s', 11, 'advised'],
  ['h2s', 20.1, 'over'],
])('given %s at %d, then it is %s', (gas, value, is) => {
  expect(gasVerdict(gas, value).is).toBe(is);
  expect(isBeyond(gas, value)).toBe(is === 'over' || is === 'under');
});
