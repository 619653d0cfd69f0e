// What can be said of the steps of the maker's paper that are asked once and remembered.

import { askedSteps } from '../steps/step-rows.ts';
import { choice, count, share, yesOrNo } from './slot.ts';
import { verb } from './verb.ts';

export const stepVerbs = {
  /** `confirm bonding` alone says neither: it is asked. */
  confirm: verb(
    {
      batch: count('batch'),
      step: choice('step', askedSteps, { required: true, offered: askedSteps.map((step) => `${step} yes`) }),
      kept: yesOrNo('yes-or-no', {}, ['yes', 'no']),
      /** Of a bottle. */
      purityPercent: share('purity'),
    },
    { leaves: { type: 'StepAnswered' }, oneOf: ['kept', 'purityPercent'] },
  ),
};
