// What the crew has said that it lacks objects to the act that needs it, until it is there. What nobody has answered objects
// to nothing: it is asked.

import type { Batch } from '../batch/batch.ts';
import { isFailed } from '../failed.ts';
import type { Entry } from '../history.ts';
import type { Rule } from '../rules.ts';
import { type Shop, sheetFor } from '../shop.ts';
import type { EpochMs } from '../units.ts';
import { isFlushedWith } from './alcohol.ts';
import type { StepLacking } from './step-objection.ts';
import { type StoppedAct, stepRows } from './step-rows.ts';
import { answerTo, type StepAnswer, stepCaseOf, stepsAskedBy } from './steps-answered.ts';

/** Of the steps that such an act needs, the first that was answered with no. */
export function lackingStep(
  answers: readonly StepAnswer[],
  batch: Batch,
  stopped: StoppedAct,
  at: EpochMs,
): StepLacking | undefined {
  for (const step of stepsAskedBy(batch.sheet)) {
    const answer = stepRows[step].stops === stopped ? answerTo(answers, step, stepCaseOf(batch), at) : undefined;
    if (answer?.kept === false) return { code: 'step-lacking', step, by: answer.by, at: answer.at };
  }
  return undefined;
}

/** Of a flush for no pot: that the bottle in use was told to be too weak, by the sheet that asked for it then. */
export function lackingBottle(shop: Shop, flush: Pick<Entry, 'fact' | 'happenedAt'>): StepLacking | undefined {
  const last = shop.crew.stepAnswers.findLast(
    ({ fact, happenedAt }) => fact.step === 'alcohol' && happenedAt <= flush.happenedAt,
  );
  if (last === undefined || last.fact.kept) return undefined;
  const sheet = sheetFor(shop, last.fact.sheet);
  if (isFailed(sheet) || !isFlushedWith(sheet, flush)) return undefined;
  return { code: 'step-lacking', step: 'alcohol', by: last.by, at: last.happenedAt };
}

export const bottleIsKept: Rule<{ readonly lacking: StepLacking | undefined }> = {
  code: 'step-lacking',
  source: 'sheet',
  liftedBy: 'supervisor',
  since: 6,
  check: ({ lacking }) => lacking,
};

export const stepIsKept: Rule<{ readonly lacking: StepLacking | undefined }> = {
  code: 'step-lacking',
  source: 'sheet',
  liftedBy: 'supervisor',
  since: 3,
  check: ({ lacking }) => lacking,
};
