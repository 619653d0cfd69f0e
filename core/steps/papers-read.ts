// Who has read the maker's papers, and in which revision.

import type { Batch } from '../batch/batch.ts';
import { type Entry, isAct } from '../history.ts';
import type { PersonName } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import { papersRevision } from '../products/sheet-papers.ts';
import type { EpochMs } from '../units.ts';
import type { StepAnswer } from './steps-answered.ts';

export interface PaperReader {
  readonly by: PersonName;
  readonly at: EpochMs;
  /** False for an earlier revision. */
  readonly isCurrent: boolean;
}

/** The last word of each on these papers, where it was that they are read; the latest last. */
export function papersReadBy(
  answers: readonly StepAnswer[],
  sheet: Pick<Sheet, 'id' | 'revision' | 'steps'>,
  at: EpochMs,
): readonly PaperReader[] {
  const ofPapers = answers.filter(
    ({ fact, happenedAt }) => fact.step === 'papers' && fact.sheet === sheet.id && happenedAt <= at,
  );
  const last = new Map(ofPapers.map((answer) => [answer.by, answer]));
  const revision = papersRevision(sheet);
  return [...last.values()]
    .filter(({ fact }) => fact.kept)
    .map(({ by, happenedAt, fact }) => ({ by, at: happenedAt, isCurrent: fact.revision === revision }))
    .sort((a, b) => a.at - b.at);
}

/** Whoever did something to this pot, in the order in which they came. */
export const handsOn = ({ entries }: { readonly entries: readonly Entry[] }): readonly PersonName[] => [
  ...new Set(entries.filter(isAct).map(({ by }) => by)),
];

export interface PapersOfPot {
  readonly sheet: Sheet;
  readonly read: readonly PaperReader[];
  readonly notSaid: readonly PersonName[];
}

/** `undefined` where the sheet asks nobody to read them. Of those only who had a hand in these pots. */
export function papersOf(answers: readonly StepAnswer[], batches: readonly Batch[], at: EpochMs) {
  const [first] = batches;
  if (first?.sheet.steps?.papers === undefined) return undefined;
  const hands = [...new Set(batches.flatMap(handsOn))];
  const read = papersReadBy(answers, first.sheet, at).filter(({ by }) => hands.includes(by));
  const notSaid = hands.filter((name) => !read.some(({ by }) => by === name));
  return { sheet: first.sheet, read, notSaid } satisfies PapersOfPot;
}
