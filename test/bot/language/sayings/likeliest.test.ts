// Lines that no phrase accounts for, read by what their words speak for (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import { shopAtTen } from '../shop-at-ten.ts';

const shop = {
  ...shopAtTen,
  batches: [1, 2],
  parts: ['flange-1', 'flange-2', 'flange-3', 'flange-4'],
  live: () => ({
    parts: [
      { name: 'flange-1', phase: 'bare' as const },
      { name: 'flange-2', phase: 'flashing' as const },
      { name: 'flange-3', phase: 'curing' as const },
      { name: 'flange-4', phase: 'cured' as const },
    ],
    batches: [
      { number: 1, phase: 'filtered' as const, method: 'brush' as const },
      { number: 2, phase: 'to-weigh' as const },
    ],
    cans: [
      { number: 3, isLidOff: true, component: 'A' as const },
      { number: 4, isLidOff: false, component: 'B' as const },
    ],
  }),
};

function offered(line: string): readonly string[] {
  const read = readLine(line, shop);
  return read.kind === 'misread' ? read.misread.suggestions : [`${read.kind}`];
}

describe('a line that no phrase accounts for', () => {
  it.each([
    ['gonna need 900 gram of that, set me up', 'mix 900 gram'],
    ['touched 2 everywhere, it doesnt grab the mitt anymore', 'dry flange-2'],
    ['the thermocouple taped to 3 crept to 88C', 'temp flange-3 88C'],
    ['four is a beauty, stamp it and let it go', 'release flange-4'],
    ['scooped the last dribble of 1 into the waste drum', 'empty 1'],
    ['da la 2 por seca, el dedo sale limpio', 'dry flange-2'],
  ])('given %s, then %s is a tap', (line, tap) => {
    expect(offered(line)).toContain(tap);
  });

  it.each([
    'nice work on the flanges today',
    'we will scoop the last dribble of 1 into the drum',
    'touched 2, it still isnt dry at all',
    'somebody should tape the thermocouple to 3',
    'the thermocouple on 3 is broken, isnt it?',
    'can 3 is empty',
    'my phone is dead',
  ])('given %s, then no act is offered', (line) => {
    expect(offered(line).filter((each) => !/^(?:how|where|who|what|card|why)/.test(each))).toEqual([]);
  });

  it('given an act that is done to other things than it names, then nothing else is made of it', () => {
    expect(offered('three came to 88C on the thermocouple')).not.toContain('surface flange-1 88C');
  });
});
