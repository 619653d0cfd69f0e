// What can be said of an instrument: that the shop keeps it, and what its check said.

import { checkResults, instrumentKinds } from '../instrument-kinds.ts';
import { choice, day, mark, text } from './slot.ts';
import { verb } from './verb.ts';

const name = text('instrument', { required: true });

/** What a reading was made with; left out, what was used there last. */
export const readWith = text('read-with', { behind: 'with', amend: true });

export const instrumentVerbs = {
  /** Told again, what is said of it changes. */
  instrument: verb(
    {
      name,
      /** Left out, as it was. */
      kind: choice('instrument-kind', instrumentKinds),
      /** The last day of its check: `2027-03-01`. */
      due: day('check-due', { behind: 'due', amend: true }),
      retired: mark('retired', 'retired'),
    },
    { leaves: { type: 'InstrumentKept' }, on: 'crew' },
  ),
  /** A fact, whoever tells it. */
  calibrated: verb(
    {
      name,
      result: choice('check-result', checkResults, { required: true, amend: true }, { ok: 'passed' }),
      /** The last day that this check holds. */
      next: day('next-check', { behind: 'next', amend: true }),
    },
    { leaves: { type: 'InstrumentChecked' }, on: 'crew' },
  ),
};
