// What a sheet may say of its VOC: the mass that leaves a litre of each part, and how much of the litre is exempt
// solvent or water. The densities stand with the ratio.

import { z } from 'zod';
import * as units from '../units.ts';
import { percent, source } from './sheet-duration.ts';
import { rule } from './sheet-fault.ts';

const Liquid = z
  .strictObject({
    /** Exempt solvents and water left out of the mass, not out of the litre. */
    actualGramsPerLitre: z
      .number()
      .min(0)
      .max(2_000)
      .transform((value) => units.gramsPerLitre(value)),
    exemptVolumePercent: percent.default(units.percent(0)),
    waterVolumePercent: percent.default(units.percent(0)),
  })
  .refine((read) => read.exemptVolumePercent + read.waterVolumePercent < 100, rule('something-left'));

export const Voc = z.strictObject({ partA: Liquid, partB: Liquid, source });
export type Voc = z.infer<typeof Voc>;
