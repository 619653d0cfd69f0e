// An act of the past is asked about by the rules of its own day.

import { describe, expect, it } from 'vitest';
import type { Edition } from '../../core/rule-editions.ts';
import { editionOfToday, editions } from '../../core/rule-editions.ts';
import { objectionsTo, type Rule } from '../../core/rules.ts';

const row = { source: 'common practice, no source', liftedBy: 'lead' } as const;
const ofOld: Rule<undefined> = { ...row, code: 'not-filtered', check: () => ({ code: 'not-filtered' }) };
/** As a rule will look that comes with the next edition. */
const next = (editionOfToday + 1) as Edition;
const ofTomorrow: Rule<undefined> = {
  ...row,
  code: 'not-weighed',
  since: next,
  check: () => ({ code: 'not-weighed' }),
};

describe('a rule that came later', () => {
  it('given an act that was judged before it, then it is not held against that act', () => {
    expect(objectionsTo([ofOld, ofTomorrow], undefined, editionOfToday)).toEqual([{ code: 'not-filtered' }]);
  });

  it('given an act after it, then both ask', () => {
    expect(objectionsTo([ofOld, ofTomorrow], undefined, next).map(({ code }) => code)).toEqual([
      'not-filtered',
      'not-weighed',
    ]);
  });

  it('belongs to an edition that is counted without a gap', () => {
    expect(editions.map(Number)).toEqual(editions.map((_, i) => i + 1));
    expect(editionOfToday).toBe(editions.at(-1));
  });
});
