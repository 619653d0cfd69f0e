// The maker's papers are read by each person, at each of their revisions: a new one asks everybody again, and what is mended
// in a sheet beside them asks nobody. The sheets are invented.

import { describe, expect, it } from 'vitest';
import type { ReadSheet, Sheet } from '../../../core/products/sheet.ts';
import type { MakerPaper } from '../../../core/products/sheet-papers.ts';
import { papersReadBy } from '../../../core/steps/papers-read.ts';
import { stepAskedAt } from '../../../core/steps/steps-answered.ts';
import { epochMs } from '../../../core/units.ts';
import { demoShelf, given } from '../given.ts';

const ever = epochMs(Number.MAX_SAFE_INTEGER);
const others = ['equipment', 'bonding', 'vessel', 'clean-oven', 'clean-room'].map(
  (step) => `08:00 confirm ${step} yes`,
);

/** A demo sheet as the shop mends it from one day to the next. */
async function withSheet(mended: (sheet: Sheet) => Sheet = (sheet) => sheet) {
  const demo = demoShelf.get('demo-clear');
  if (demo?.kind !== 'sheet') throw new Error('no demo sheet');
  const first = mended(demo.sheet);
  const shelf = new Map<string, ReadSheet>([['demo-clear', { kind: 'sheet', sheet: first }]]);
  const shift = await given(['08:00 air 22C 50%', ...others], { shelf });
  return {
    shift,
    mend: (change: Partial<Sheet>) => shelf.set('demo-clear', { kind: 'sheet', sheet: { ...first, ...change } }),
    asked: async (batch: number) => {
      const { batches, crew } = await shift.shop();
      const found = batches.get(batch);
      return found && stepAskedAt(crew.stepAnswers, found, ever);
    },
  };
}

const paper = (of: MakerPaper['of'], revision: string): MakerPaper => ({
  ...{ of, title: 'Invented for the test', revision, file: `${of}.txt` },
});
const papers = (revision: string): Sheet['steps'] => ({
  papers: { named: [paper('instructions', revision), paper('safety-a', '1')], source: 'invented for the test' },
});

const unnamed = (sheet: Sheet): Sheet => ({ ...sheet, steps: { papers: { source: 'invented for the test' } } });

describe('the papers of a sheet that does not name them', () => {
  it('given a new revision of the sheet, then each who has read the last one is asked again', async () => {
    const { shift, mend, asked } = await withSheet(unnamed);
    for (const line of ['08:01 confirm papers yes', '08:01 @omar: confirm papers yes', '08:02 mix 1kg'])
      await shift.when(line);
    expect(await asked(1)).toBeUndefined();
    mend({ revision: '2' });
    await shift.when('08:03 mix 1kg');
    await shift.when('08:04 @omar: mix 1kg');
    expect([await asked(2), await asked(3)]).toEqual(['papers', 'papers']);
    await shift.when('08:05 @omar: confirm 3 papers yes');
    expect([await asked(2), await asked(3)]).toEqual(['papers', undefined]);
  });

  it('given a typo mended in a sheet of the same revision, then nobody is asked again', async () => {
    const { shift, mend, asked } = await withSheet(unnamed);
    await shift.when('08:01 confirm papers yes');
    mend({ name: 'Demo Clear (mended)' });
    await shift.when('08:02 mix 1kg');
    expect(await asked(1)).toBeUndefined();
  });
});

describe('papers that the sheet names', () => {
  it('given a sheet mended under a new revision of its own, then its readers are not asked: the papers are the same', async () => {
    const { shift, mend, asked } = await withSheet((sheet) => ({ ...sheet, steps: papers('3') }));
    await shift.when('08:01 confirm papers yes');
    expect((await shift.events()).at(-1)?.body).toMatchObject({ revision: 'instructions 3, safety-a 1' });
    mend({ revision: '2' });
    await shift.when('08:02 mix 1kg');
    expect(await asked(1)).toBeUndefined();
  });

  it('given a new revision of one of them, then its readers are asked again, and the old reading is told as one', async () => {
    const { shift, mend, asked } = await withSheet((sheet) => ({ ...sheet, steps: papers('3') }));
    await shift.when('08:01 confirm papers yes');
    mend({ steps: papers('4') });
    await shift.when('08:02 mix 1kg');
    expect(await asked(1)).toBe('papers');
    const { batches, crew } = await shift.shop();
    const sheet = batches.get(1)?.sheet;
    const read = () => sheet && papersReadBy(crew.stepAnswers, sheet, ever).map(({ by, isCurrent }) => [by, isCurrent]);
    expect(read()).toEqual([['kari', false]]);
  });
});
