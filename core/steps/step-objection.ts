// Why not yet: the crew has said that a step of the maker's paper is lacking.

import type { PersonName } from '../ids.ts';
import type { EpochMs } from '../units.ts';
import type { AskedStep } from './step-rows.ts';

export type StepObjection = {
  readonly code: 'step-lacking';
  readonly step: AskedStep;
  readonly by: PersonName;
  readonly at: EpochMs;
};
