// What a sheet may say of its cans, of Part A before the pour, of repairing a mix, and of planning one. Every group is
// optional: what the maker does not give is not asked for, and the cards say that there is no figure.

import { z } from 'zod';
import { components } from '../components.ts';
import * as units from '../units.ts';
import { above0, minutes, percent, source } from './sheet-duration.ts';
import { rule } from './sheet-fault.ts';

const grams = above0.transform((value) => units.grams(value));
const litres = above0.transform((value) => units.litres(value));
const micrometres = above0.transform((value) => units.micrometres(value));
const anyLitres = z
  .number()
  .min(0)
  .transform((value) => units.litres(value));

/** What must be kept from the air once the lid is off: times count from there until gas is over it again. */
export const Blanket = z
  .strictObject({
    components: z.array(z.enum(components)).min(1),
    ringMinutes: minutes,
    leadMinutes: minutes,
    doubtfulMinutes: minutes,
    /** Oxygen left in the headspace, per cent by volume. */
    oxygenTargetPercent: percent,
    /** Sizes of can, brimful, by what they are sold with. */
    cans: z.array(z.strictObject({ soldWithGrams: grams, litres })).default([]),
    source,
  })
  .refine(
    (read) => read.ringMinutes < read.leadMinutes && read.leadMinutes < read.doubtfulMinutes,
    rule('ring-lead-doubtful'),
  );
export type Blanket = z.infer<typeof Blanket>;

/** So many days after its opening a can may still be poured from: 0 is the day itself. */
export const OpenCans = z.strictObject({
  components: z.array(z.enum(components)).min(1),
  mostDays: z.number().int().min(0),
  source,
});

/** Part A is stirred in its own can before the pour: minutes by what is in it, a straight line between the points. */
export const PreStir = z.strictObject({
  points: z.array(z.strictObject({ partAGrams: grams, minutes })).min(1),
  /** So long after it a pour still counts as stirred. */
  servesMinutes: minutes,
  source,
});

/** Until when an off-ratio mix may be brought back by adding, counted from the first contact of B with A. */
export const Repair = z.strictObject({ withinMinutes: minutes, source });

/** How the pot life shortens with the mass in the pot: a factor on the sheet's time, a straight line between. */
export const ByMass = z.strictObject({
  points: z
    .array(z.strictObject({ grams, factor: z.number().positive().max(1) }))
    .min(1)
    .refine(
      (points) =>
        points.every((point, i) => {
          const before = points[i - 1];
          return before === undefined || (point.grams > before.grams && point.factor <= before.factor);
        }),
      rule('masses-rise-factors-fall'),
    ),
  source,
});

/** What a plan needs: how much of a litre stays as film, how thick, and what stays in the gear. */
export const Film = z
  .strictObject({
    volumeSolidsPercent: percent.refine((value) => value > 0, rule('above-0')),
    lowestDryMicrometres: micrometres,
    highestDryMicrometres: micrometres,
    source,
  })
  .refine((read) => read.lowestDryMicrometres <= read.highestDryMicrometres, rule('lowest-not-above-highest'));

export const GearLosses = z.strictObject({
  hoseLitres: anyLitres,
  gunLitres: anyLitres,
  filterLitres: anyLitres,
  source,
});

/** How left-over mix is set aside. */
export const LeftOver = z.strictObject({ vented: z.boolean(), source });
