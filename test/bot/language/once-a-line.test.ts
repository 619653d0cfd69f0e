// What readings share of one line, and what no line may get from another.

import { describe, expect, it } from 'vitest';
import { onceALine } from '../../../bot/language/once-a-line.ts';
import { shopAtTen } from './shop-at-ten.ts';

describe('what several readings make of the same words', () => {
  it('given the same words of one line twice, then they are made once; of the next line, anew', () => {
    const made: string[] = [];
    const partsOf = onceALine((line, { parts }) => {
      made.push(line);
      return parts.length;
    });
    const line = { ...shopAtTen, parts: ['impeller-7'] };
    const next = { ...shopAtTen, parts: [] };
    expect([partsOf('dry', line), partsOf('dry', line), partsOf('dry', next)]).toEqual([1, 1, 0]);
    expect(made).toEqual(['dry', 'dry']);
  });

  it('given words of which nothing is made, then that is not tried again', () => {
    let tried = 0;
    const nothing = onceALine(() => {
      tried += 1;
      return undefined;
    });
    const line = { ...shopAtTen };
    expect([nothing('thick', line), nothing('thick', line)]).toEqual([undefined, undefined]);
    expect(tried).toBe(1);
  });
});
