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

/** Vapours and mists that may leave whoever breathes them with asthma. */
export const sensitiserKinds = ['isocyanates', 'silanes', 'amines'] as const;
export type SensitiserKind = (typeof sensitiserKinds)[number];

/** Over a working day, over a quarter of an hour, or never to be passed. */
export const limitSpans = ['day', 'short', 'ceiling'] as const;

/** Left out, the sheet leaves it open, and it counts as having one. An empty list: the paper says that there is none. */
export const Sensitisers = z.strictObject({
  named: z.array(
    z.strictObject({
      kind: z.enum(sensitiserKinds),
      limit: z
        .strictObject({
          partsPerMillion: above0.transform((value) => units.partsPerMillion(value)),
          over: z.enum(limitSpans),
          source,
        })
        .optional(),
    }),
  ),
  source,
});
export type Sensitisers = z.infer<typeof Sensitisers>;

/** What the gun and the vessels are flushed with, in this order. */
export const Flush = z.strictObject({
  steps: z.array(z.strictObject({ solvent, purityPercent: percent.optional() })).min(1),
  /** So often it rings until somebody says that it is flushed. */
  everyMinutes: minutes,
  source,
});
export type Flush = z.infer<typeof Flush>;
