// Parts told as lists and stretches: only of parts that the shop has, and never of what may be pots or figures.

import { describe, expect, it } from 'vitest';
import { partsListed } from '../../../../bot/language/as-said/parts-listed.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const parts = [
  'impeller-1',
  'impeller-2',
  'impeller-3',
  'impeller-7',
  'impeller-8',
  'pump-housing-3',
  'rail-01',
  'rail-02',
];

describe('parts listed', () => {
  it.each([
    ['coat impeller 1-3 1 brush', 'coat impeller-1 impeller-2 impeller-3 1 brush'],
    ['coat impellers 1 thru 3 1 brush', 'coat impeller-1 impeller-2 impeller-3 1 brush'],
    ['coat impeller 1, 2 and 3 1 brush', 'coat impeller-1 impeller-2 impeller-3 1 brush'],
    ['dry impeller-1-3', 'dry impeller-1 impeller-2 impeller-3'],
    ['dry rail 1-2', 'dry rail-01 rail-02'],
    ['dry pump housing 3', 'dry pump-housing-3'],
    ['dry 7 and 8', 'dry impeller-7 impeller-8'],
    ['dry the 7 and the 8', 'dry impeller-7 impeller-8'],
    // The second number is a pot's.
    ['coat impeller 7 1 brush', 'coat impeller-7 1 brush'],
  ] as const)('given "%s", then it is "%s"', (line, listed) => {
    expect(partsListed(line, { ...shopAtTen, parts })).toEqual([{ line: listed, isSure: true }]);
  });

  it.each([
    ['seca la 7 y la 8', 'seca impeller-7 impeller-8'],
    ['impellers 1, 2 y 3 con brocha', 'impeller-1 impeller-2 impeller-3 con brocha'],
    ['saqué impeller del 1 al 3', 'saqué impeller-1 impeller-2 impeller-3'],
  ] as const)('given "%s", then it is "%s"', (line, listed) => {
    expect(partsListed(line, { ...tallerALasDiez, parts })).toEqual([{ line: listed, isSure: true }]);
  });

  it.each([
    // Of which thing, or none that the shop has.
    'dry 1 and 2',
    'dry impeller 5',
    'dry impeller 1-9',
    'stir batch 7 and 8',
    'weigh 1 1201 1198',
    'air 24 48',
    'mix 2, 4 kg',
    'coat impeller-7 1 brush',
  ])('given "%s", then it is left as it stands', (line) => {
    expect(partsListed(line, { ...shopAtTen, parts })).toEqual([]);
  });
});
