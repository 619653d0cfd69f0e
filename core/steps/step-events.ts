// That a step of the maker's paper is kept, or is not: filed under the crew, since it counts beyond the batch at which it was
// asked, and under that batch too.

import { z } from 'zod';
import { event } from '../event.ts';
import { Percent } from '../unit-schemas.ts';
import { askedSteps } from './step-rows.ts';

export const StepAnswered = event('StepAnswered', {
  step: z.enum(askedSteps),
  kept: z.boolean(),
  /** How strong the bottle in use is, where somebody said. */
  purityPercent: Percent.optional(),
  /** Whose paper asks for it, and which of its revisions. */
  sheet: z.string(),
  revision: z.string(),
  place: z.string(),
  batch: z.number().int().positive().optional(),
});
export type StepAnswered = z.infer<typeof StepAnswered>;
