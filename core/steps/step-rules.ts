// What the crew has said that it lacks objects to the act that needs it, until it is there. What nobody has answered objects
// to nothing: it is asked.

import type { Batch } from '../batch/batch.ts';
import type { Rule } from '../rules.ts';
import type { EpochMs } from '../units.ts';
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

export const stepIsKept: Rule<{ readonly lacking: StepLacking | undefined }> = {
  code: 'step-lacking',
  source: 'sheet',
  liftedBy: 'supervisor',
  since: 3,
  check: ({ lacking }) => lacking,
};
