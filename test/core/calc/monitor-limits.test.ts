// What a monitor's reading comes to, at each edge. Published: 10 % of the lower explosive limit, oxygen 19.5 to 23.5 %, 29 CFR
// 1910.146(b); from memory: carbon monoxide 50 ppm and hydrogen sulphide 20 ppm, 29 CFR 1910.1000, with NIOSH's 35 and 10; 20 and
// 5 ppm in the European Union (2017/164, 2009/161) and the United Kingdom (EH40).

import { expect, it } from 'vitest';
import { type LegalFrame, legalFrames } from '../../../core/calc/legal-frame.ts';
import { type Gas, gasVerdict, isBeyond } from '../../../core/calc/monitor-limits.ts';

it.each<readonly [Gas, number, string, LegalFrame]>([
  ['lel', 9.9, 'within', 'us'],
  ['lel', 10, 'over', 'us'],
  ['lel', 10, 'over', 'eu'],
  ['o2', 19.4, 'under', 'us'],
  ['o2', 19.5, 'within', 'us'],
  ['o2', 23.5, 'within', 'uk'],
  ['o2', 23.6, 'over', 'us'],
  ['co', 35, 'within', 'us'],
  ['co', 36, 'advised', 'us'],
  ['co', 50, 'advised', 'us'],
  ['co', 50.1, 'over', 'us'],
  ['co', 20, 'within', 'eu'],
  ['co', 20.1, 'over', 'eu'],
  ['co', 20.1, 'over', 'uk'],
  ['h2s', 10, 'within', 'us'],
  ['h2s', 11, 'advised', 'us'],
  ['h2s', 20.1, 'over', 'us'],
  ['h2s', 5.1, 'over', 'eu'],
  ['h2s', 5.1, 'over', 'uk'],
])('given %s at %d, then it is %s by the law of %s', (gas, value, is, law) => {
  expect(gasVerdict({ gas, value, law }).is).toBe(is);
  expect(isBeyond({ gas, value, law })).toBe(is === 'over' || is === 'under');
});

it.each(['co', 'h2s'] as const)(
  'given no figure of a country is kept for %s, then the lowest of those that are counts',
  (gas) => {
    const highest = (law: LegalFrame) => gasVerdict({ gas, value: 0, law }).highest.value;
    for (const law of ['mexico', 'elsewhere'] as const) {
      expect(highest(law)).toBe(Math.min(...legalFrames.map(highest)));
    }
  },
);
