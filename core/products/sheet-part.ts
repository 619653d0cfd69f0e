// What a sheet may say of the surface, the wet film, the cure's stages and the dry film. Every group is optional: what
// the maker does not give is not asked for, and the cards say that there is no figure.

import { z } from 'zod';
import * as units from '../units.ts';
import { above0, Duration, minutes, percent, source } from './sheet-duration.ts';
import { rule } from './sheet-fault.ts';

const micrometres = above0.transform((value) => units.micrometres(value));

/** What cures by moisture earns nothing outside these, nor where nobody read the humidity. */
export const CureHumidity = z
  .strictObject({ lowestPercent: percent, highestPercent: percent, source })
  .refine((read) => read.lowestPercent < read.highestPercent, rule('lowest-below-highest'));

export const stageNames = ['handle', 'service', 'full'] as const;
export type StageName = (typeof stageNames)[number];

/** To be handled, to go into service, to resist all that it will: each counted from the beginning of the cure. */
export const CureStage = z.strictObject({ stage: z.enum(stageNames), time: Duration });

/** Counted from when the cure is given. Each may be left out. */
export const AfterCure = z.strictObject({
  serviceMinutes: minutes.optional(),
  fullMinutes: minutes.optional(),
  improvesMinutes: minutes.optional(),
  source,
});
export type AfterCure = z.infer<typeof AfterCure>;

const band = { leastMicrometres: micrometres, mostMicrometres: micrometres };

/** How many are read, in place of the count by area: no fewer than the smallest area asks. */
const spots = z.number().int().min(5).optional();

/** By which rule the dry film is judged. The usual ones are for 40 um and more; a thin film needs one of its own. */
export const FilmRule = z.discriminatedUnion('rule', [
  z.strictObject({
    rule: z.literal('own'),
    ...band,
    leastReadings: z.number().int().positive(),
    judged: z.enum(['each-reading', 'mean']),
    /** What the gauge may be off by: so much, or that share of the reading, whichever is more. */
    gauge: z.strictObject({
      fixedMicrometres: micrometres,
      share: z
        .number()
        .min(0)
        .max(1)
        .transform((value) => units.fraction(value)),
    }),
    source,
  }),
  z.strictObject({
    rule: z.literal('iso-19840'),
    nominalMicrometres: micrometres,
    mostMicrometres: micrometres,
    profile: z.enum(['gauge-set-on-profile', 'fine', 'medium', 'coarse', 'not-known']),
    spots,
    source,
  }),
  z.strictObject({ rule: z.literal('pa-2'), ...band, level: z.literal([1, 2, 3, 4, 5]), spots, source }),
]);
export type FilmRule = z.infer<typeof FilmRule>;
