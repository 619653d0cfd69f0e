// What can have happened to a batch. Times are the envelope's `happenedAt`; bodies carry figures only.

import { z } from 'zod';
import { Sheet } from '../products/sheet.ts';
import { Celsius, Grams, Percent } from '../unit-schemas.ts';

export const BatchOpened = z.object({
  type: z.literal('BatchOpened'),
  batch: z.number().int().positive(),
  /** The sheet as it stood: a later file never touches a running batch. */
  sheet: Sheet,
  plannedGrams: Grams,
  place: z.string(),
  air: z.object({ celsius: Celsius, relativeHumidityPercent: Percent }).optional(),
});
export type BatchOpened = z.infer<typeof BatchOpened>;

/** B met A: pot life runs, and the stirrer (or the induction) with it. */
export const PartsWeighed = z.object({
  type: z.literal('PartsWeighed'),
  partAGrams: Grams,
  partBGrams: Grams,
});
export type PartsWeighed = z.infer<typeof PartsWeighed>;

export const StirrerStarted = z.object({ type: z.literal('StirrerStarted') });
export const StirrerStopped = z.object({ type: z.literal('StirrerStopped') });
export const MixFiltered = z.object({ type: z.literal('MixFiltered') });
export const MixThickened = z.object({ type: z.literal('MixThickened'), seen: z.enum(['thick', 'gelled']) });
export const PotEmptied = z.object({ type: z.literal('PotEmptied'), leftGrams: Grams.optional() });

export const BatchEvent = z.discriminatedUnion('type', [
  BatchOpened,
  PartsWeighed,
  StirrerStarted,
  StirrerStopped,
  MixFiltered,
  MixThickened,
  PotEmptied,
]);
export type BatchEvent = z.infer<typeof BatchEvent>;
