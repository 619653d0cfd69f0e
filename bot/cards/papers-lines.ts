// Who of those with a hand in a pot has read the maker's papers, and in which revision: in the day, the trace and on paper.

import type { Batch } from '../../core/batch/batch.ts';
import { papersRevision } from '../../core/products/sheet-papers.ts';
import { papersOf } from '../../core/steps/papers-read.ts';
import type { Figures } from '../language/figures.ts';
import type { Telling } from './card-context.ts';

/** One line for all pots of the same papers; none of a sheet that does not ask for them. */
export function papersLines(
  { shop, words, now, figures: usual }: Telling,
  batches: readonly Batch[],
  figures: Figures = usual,
): readonly string[] {
  const byPapers = new Map<string, Batch[]>();
  for (const batch of batches) {
    const key = JSON.stringify([batch.sheet.id, papersRevision(batch.sheet)]);
    byPapers.set(key, [...(byPapers.get(key) ?? []), batch]);
  }
  return [...byPapers.values()].flatMap((pots) => {
    const of = papersOf(shop.crew.stepAnswers, pots, now);
    return of === undefined ? [] : [words.papers.ofPot(of, figures)];
  });
}
