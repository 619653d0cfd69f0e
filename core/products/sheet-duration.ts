// A duration as a sheet gives it, and the small figures that every group of a sheet is made of.

import { z } from 'zod';
import * as units from '../units.ts';
import { rule } from './sheet-fault.ts';

/** Where a figure comes from: `sheet p. 2`, `common practice, no source`, `invented for the demo`. */
export const source = z.string().min(3);

export const above0 = z.number().positive();
export const minutes = above0.transform((value) => units.minutes(value));
export const celsius = z
  .number()
  .min(-60)
  .max(400)
  .transform((value) => units.celsius(value));
export const percent = z
  .number()
  .min(0)
  .max(100)
  .transform((value) => units.percent(value));

export const range = z
  .strictObject({ lowestCelsius: celsius, highestCelsius: celsius })
  .refine((read) => read.lowestCelsius < read.highestCelsius, rule('lowest-below-highest'));

export const Duration = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('plain'), minutes, range: range.optional(), source }),
  z.strictObject({
    kind: z.literal('table'),
    points: z
      .array(z.strictObject({ celsius, minutes }))
      .min(2)
      .refine(
        (points) => points.every((point, i) => i === 0 || point.celsius > (points[i - 1]?.celsius ?? 0)),
        rule('temperatures-rise'),
      ),
    source,
  }),
  z.strictObject({
    kind: z.literal('q10'),
    minutes,
    atCelsius: celsius,
    factorPerTenDegrees: z.number().min(1).max(5),
    range,
    source,
  }),
  z.strictObject({
    kind: z.literal('arrhenius'),
    minutes,
    atCelsius: celsius,
    activationKilojoulesPerMole: above0.transform((value) => units.kilojoulesPerMole(value)),
    range,
    source,
  }),
]);
export type Duration = z.infer<typeof Duration>;
