// What was judged by readings of an instrument that failed its check is judged by nothing that anybody can trust.

import type { InstrumentFailed } from '../instruments.ts';
import type { Rule } from '../rules.ts';

/** What is judged by readings that an instrument made. */
export interface RestsOnReadings {
  readonly readWithFailed: InstrumentFailed | undefined;
}

export const readSoundly: Rule<RestsOnReadings> = {
  code: 'instrument-failed',
  source: 'common practice, no source',
  liftedBy: 'lead',
  since: 11,
  check: ({ readWithFailed }) => readWithFailed,
};
