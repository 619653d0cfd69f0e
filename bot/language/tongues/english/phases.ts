// How a pot or a part stands, in English, and what its blend is called.

import type { BatchPhase } from '../../../../core/batch/batch.ts';
import type { PartPhase } from '../../../../core/part/part.ts';

export const phases: Readonly<Record<BatchPhase['is'] | PartPhase['is'] | 'prepared', string>> = {
  'to-weigh': 'to be weighed',
  blending: 'mixing time runs',
  paused: 'stirrer off',
  filtered: 'in use',
  dead: 'thick, gelled or hot: waste',
  emptied: 'empty',
  bare: 'bare',
  prepared: 'prepared, not coated',
  flashing: 'flash-off',
  dry: 'dry, waits for its cure',
  curing: 'in cure',
  cured: 'out of cure',
  released: 'released',
  left: 'left the shop',
  rework: 'to be reworked, old coat on it',
  scrapped: 'scrapped',
  returned: 'given back',
};

export const blend = {
  stir: { wanted: 'Stirring wanted', given: 'Stirred', doneAt: 'Stirring done at' },
  induction: { wanted: 'Induction wanted', given: 'Stood', doneAt: 'Induction over at' },
};
