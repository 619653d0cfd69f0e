// What a sheet may ask of the steel before its first coat, a group each with its source. A group that is left out is neither
// asked for nor held against anybody.

import { z } from 'zod';
import { contaminants, surfaceGrades } from '../grades.ts';
import * as units from '../units.ts';
import { above0, source } from './sheet-duration.ts';
import { rule } from './sheet-fault.ts';

const atLeast0 = z.number().min(0);
const micrometres = atLeast0.transform((value) => units.micrometres(value));

export const Surface = z.strictObject({
  /** What has to be off it. */
  remove: z.strictObject({ what: z.array(z.enum(contaminants)).min(1), source }).optional(),
  /** One of these, or a cleaner one of the same series. */
  grade: z.strictObject({ anyOf: z.array(z.enum(surfaceGrades)).min(1), source }).optional(),
  profile: z
    .strictObject({ leastMicrometres: micrometres, mostMicrometres: micrometres, source })
    .refine((read) => read.leastMicrometres <= read.mostMicrometres, rule('least-not-above-most'))
    .optional(),
  salts: z
    .strictObject({
      mostMilligramsPerSquareMetre: atLeast0.transform((value) => units.milligramsPerSquareMetre(value)),
      /** Of the shop's own patches; left out, the standard's. */
      patch: z
        .strictObject({
          areaSquareCentimetres: above0.transform((value) => units.squareCentimetres(value)),
          waterMillilitres: above0.transform((value) => units.millilitres(value)),
        })
        .optional(),
      source,
    })
    .optional(),
  /** ISO 8502-3, how much: 0 to 5. */
  dust: z.strictObject({ mostRating: z.number().min(0).max(5), source }).optional(),
});
export type Surface = z.infer<typeof Surface>;
