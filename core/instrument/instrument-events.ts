// What can have happened to an instrument: kept by its name, checked, taken up somewhere. Told of the crew, and filed under the
// instrument too, as everything that was read with it.

import { z } from 'zod';
import { event } from '../event.ts';
import { checkResults, instrumentKinds } from '../instrument-kinds.ts';

export const InstrumentEvent = z.discriminatedUnion('type', [
  event('InstrumentKept', {
    instrument: z.string().min(1),
    of: z.enum(instrumentKinds),
    /** ISO: the last day of its check, where somebody said. */
    due: z.string().optional(),
    /** Out of use: nothing is taken to be read with it any more. */
    retired: z.literal(true).optional(),
  }),
  /** `next`: ISO, the last day that this check holds. */
  event('InstrumentChecked', {
    instrument: z.string().min(1),
    result: z.enum(checkResults),
    next: z.string().optional(),
  }),
  /** The first that was read with it there since something else was: what is read next there is read with it. */
  event('InstrumentTaken', { instrument: z.string().min(1), place: z.string() }),
]);
