// Cross-cut adhesion ratings against the two published scales.

import { astmCrossCut, isoCrossCut } from '../../core/calc/adhesion.ts';
import { percent } from '../../core/units.ts';
import { answered, checkPublished, derived, type PublishedCase, seen } from './published-case.ts';

const rows = [
  [0, '5B', 0],
  [3, '4B', 1],
  [10, '3B', 2],
  [20, '2B', 3],
  [50, '1B', 4],
  [80, '0B', 5],
] as const;
const astm = 'ASTM D3359, method B';
const iso = 'ISO 2409';
const ratings = (...removed: readonly number[]) => removed.map((share) => answered(astmCrossCut(percent(share))));
const classes = (...removed: readonly number[]) => removed.map((share) => answered(isoCrossCut(percent(share))));

const cases: readonly PublishedCase[] = [
  ...rows.flatMap(([removed, rating, isoClass]) => [
    derived(`${removed} % removed is ${rating}`, astm, () => astmCrossCut(percent(removed)), rating),
    derived(`${removed} % removed is class ${isoClass}`, iso, () => isoCrossCut(percent(removed)), isoClass),
  ]),
  seen(
    '4B is less than 5 %, 3B 5 to 15, 2B 15 to 35, 1B 35 to 65, 0B more than 65',
    astm,
    () => ratings(0, 4.99, 5, 14.99, 15, 34.99, 35, 65, 65.01),
    ['5B', '4B', '3B', '3B', '2B', '2B', '1B', '1B', '0B'],
  ),
  seen(
    'class 1 is not greater than 5 %, 2 not than 15, 3 not than 35, 4 not than 65',
    iso,
    () => classes(0, 0.01, 5, 5.01, 15, 15.01, 35, 35.01, 65, 65.01),
    [0, 1, 1, 2, 2, 3, 3, 4, 4, 5],
  ),
  seen(
    'the digits of the two scales add up to 5',
    `${astm} and ${iso}`,
    () =>
      rows.map(
        ([removed]) =>
          Number.parseInt(answered(astmCrossCut(percent(removed))), 10) + answered(isoCrossCut(percent(removed))),
      ),
    [5, 5, 5, 5, 5, 5],
  ),
  derived(
    'at exactly 5 % they part: 3B and class 1',
    `${astm} and ${iso}`,
    () => [astmCrossCut(percent(5)), isoCrossCut(percent(5))],
    ['3B', 1],
  ),
];

checkPublished('adhesion ratings', { seen: 3, run: 0, derived: 13, 'from-memory': 0 }, cases);
