// What has been answered of the steps: the last word on each, for the place, the reader, the pot or the crew that it counts for; and
// which one step, if any, a batch asks about.

import type { Batch } from '../batch/batch.ts';
import type { Entry } from '../history.ts';
import type { PersonName, PlaceName } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import { papersRevision } from '../products/sheet-papers.ts';
import type { EpochMs } from '../units.ts';
import { isFlushedWith, strengthAsked } from './alcohol.ts';
import type { StepAnswered } from './step-events.ts';
import { type AskedStep, askedSteps, stepRows } from './step-rows.ts';

/** One answer as it now stands in the record. */
export type StepAnswer = Pick<Entry, 'seq' | 'by' | 'happenedAt'> & { readonly fact: StepAnswered };

export function stepAnswersIn(entries: readonly Entry[]): readonly StepAnswer[] {
  return entries.flatMap(({ fact, seq, by, happenedAt }) =>
    fact.type === 'StepAnswered' ? [{ fact, seq, by, happenedAt }] : [],
  );
}

/** At whom and at what a step is asked. */
export interface StepCase {
  readonly sheet: Pick<Sheet, 'id' | 'revision' | 'steps' | 'flush'>;
  readonly place: PlaceName;
  /** Whoever is asked: the papers are read by each person for themselves. */
  readonly reader: PersonName;
  /** Left out while there is none yet. */
  readonly pot?: Pick<Batch, 'number' | 'openedAt'>;
}

export interface Answered {
  readonly kept: boolean;
  readonly at: EpochMs;
  readonly by: PersonName;
}

export const stepsAskedBy = (sheet: Pick<Sheet, 'steps' | 'flush'>): readonly AskedStep[] =>
  askedSteps.filter((step) => {
    const { group } = stepRows[step];
    return group === 'flush' ? strengthAsked(sheet) !== undefined : sheet.steps?.[group] !== undefined;
  });

/** The last answer by `at` that counts for this case. */
export function answerTo(
  answers: readonly StepAnswer[],
  step: AskedStep,
  asked: StepCase,
  at: EpochMs,
): Answered | undefined {
  const last = answers.findLast(
    (answer) => answer.fact.step === step && answer.happenedAt <= at && countsFor(answer, asked),
  );
  return last && { kept: isKept(last.fact, asked.sheet), at: last.happenedAt, by: last.by };
}

/** What is strong enough for one sheet may be too weak for another. */
function isKept({ kept, purityPercent }: StepAnswered, sheet: Pick<Sheet, 'flush'>): boolean {
  const strength = strengthAsked(sheet);
  return purityPercent === undefined || strength === undefined ? kept : purityPercent >= strength.purityPercent;
}

function countsFor({ fact, by, happenedAt }: StepAnswer, { sheet, place, reader, pot }: StepCase): boolean {
  switch (stepRows[fact.step].per) {
    case 'place':
      return fact.place === place;
    case 'reader':
      return by === reader && fact.sheet === sheet.id && fact.revision === papersRevision(sheet);
    case 'pot':
      // What one sheet allows another may not; what another pot is in later says nothing of this one.
      return fact.sheet === sheet.id && (pot === undefined || fact.batch === pot.number || happenedAt <= pot.openedAt);
    case 'bottle':
    case 'crew':
      return true;
  }
}

export const stepCaseOf = (batch: Batch): StepCase => ({
  ...{ sheet: batch.sheet, place: batch.place, reader: batch.openedBy },
  pot: batch,
});

/**
 * The one step that a batch asks about: the first that nobody had answered when it was opened. Once that is answered the
 * batch asks no more, and the next one asks the next: nobody is held up by a list. What was answered before it stands
 * before it in the record: two batches may be opened in one minute. Of a bottle it is asked once it was flushed with.
 */
export function stepAskedAt(
  answers: readonly StepAnswer[],
  batch: Batch,
  at: EpochMs,
  isFlushed = batch.entries.some((entry) => isFlushedWith(batch.sheet, entry)),
): AskedStep | undefined {
  const first = firstUnanswered(answers, batch, at, isFlushed);
  return first === undefined || answerTo(answers, first, stepCaseOf(batch), at) !== undefined ? undefined : first;
}

/** When it was opened. */
export function firstUnanswered(
  answers: readonly StepAnswer[],
  batch: Batch,
  at: EpochMs,
  isFlushed: boolean,
): AskedStep | undefined {
  const asked = stepCaseOf(batch);
  const openedSeq = batch.entries[0]?.seq ?? 0;
  const before = answers.filter(({ seq }) => seq < openedSeq);
  return stepsAskedBy(batch.sheet).find(
    (step) => answerTo(before, step, asked, at) === undefined && (stepRows[step].stops !== 'flush' || isFlushed),
  );
}
