// What a sheet may say of spraying and of the flush after it. Both groups are optional: what the maker does not give is
// not asked for by a figure, and the brief says that there is none.

import { z } from 'zod';
import { solvents } from '../calc/solvents.ts';
import * as units from '../units.ts';
import { above0, minutes, source } from './sheet-duration.ts';
import { rule } from './sheet-fault.ts';

const percent = above0.max(100).transform((value) => units.percent(value));
const solvent = z.enum(Object.keys(solvents) as [keyof typeof solvents]);

export const Spray = z
  .strictObject({
    /** After so long the brief has lapsed. */
    longestSpellMinutes: minutes,
    /** How often somebody outside reads the air and looks at the fan. */
    airRecheckMinutes: minutes,
    ventilateAfterMinutes: minutes,
    /** Of the mixed coating, by mass. What is left out is counted neither as vapour nor as breathed. */
    solvents: z.array(z.strictObject({ solvent, percentByMass: percent })).min(1),
    source,
  })
  .refine(
    ({ solvents: parts }) => parts.reduce((sum, part) => sum + part.percentByMass, 0) <= 100,
    rule('solvents-to-100'),
  );
export type Spray = z.infer<typeof Spray>;

/** What the gun and the vessels are flushed with, in this order. */
export const Flush = z.strictObject({
  steps: z.array(z.strictObject({ solvent, purityPercent: percent.optional() })).min(1),
  /** So often it rings until somebody says that it is flushed. */
  everyMinutes: minutes,
  source,
});
export type Flush = z.infer<typeof Flush>;
