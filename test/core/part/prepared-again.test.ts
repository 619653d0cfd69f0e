// What is said of a surface in several lines before one coat: what was taken off adds up, what was measured is of the surface
// as it is. Common practice, no source.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

async function preparedAfter(...lines: readonly string[]) {
  return (await (await given(['08:00 part lid-6', ...lines])).shop()).parts.get('lid-6')?.prepared;
}

describe('a surface that is worked again', () => {
  it('given salts and profile read before a new blasting, then of the new surface nothing is measured yet', async () => {
    const prepared = await preparedAfter('08:10 prep lid-6 sa2 60um salts 40mg/m2', '09:00 prep lid-6 sa2.5');
    expect(prepared).toMatchObject({ grade: 'sa2.5' });
    expect(prepared?.saltsMilligramsPerSquareMetre).toBeUndefined();
    expect(prepared?.profileMicrometres).toBeUndefined();
  });

  it('given it is wiped after the reading, then the reading stands, and so does the time of its blasting', async () => {
    const before = await preparedAfter('08:10 prep lid-6 sa2.5 60um');
    const prepared = await preparedAfter('08:10 prep lid-6 sa2.5 60um', '09:00 prep lid-6 degreased acetone');
    expect(prepared).toMatchObject({ at: before?.at, profileMicrometres: 60, removed: ['grease'] });
  });
});
