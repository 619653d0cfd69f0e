// What can have happened to a batch. Times are the envelope's `happenedAt`; bodies carry figures only.

import { z } from 'zod';
import { Component, FromCan } from '../can/can-events.ts';
import { FrozenSheet } from '../products/frozen-sheet.ts';
import { editions } from '../rule-editions.ts';
import { Celsius, Grams, Litres, Percent } from '../unit-schemas.ts';

export const BatchOpened = z.object({
  type: z.literal('BatchOpened'),
  batch: z.number().int().positive(),
  /** The sheet as it stood: a later file never touches a running batch. */
  sheet: FrozenSheet,
  plannedGrams: Grams,
  place: z.string(),
  /** What the mixing vessel holds. */
  vesselLitres: Litres.optional(),
  air: z.object({ celsius: Celsius, relativeHumidityPercent: Percent }).optional(),
});
export type BatchOpened = z.infer<typeof BatchOpened>;

/** B met A: pot life runs, and the stirrer (or the induction) with it. */
export const PartsWeighed = z.object({
  type: z.literal('PartsWeighed'),
  partAGrams: Grams,
  partBGrams: Grams,
  fromCans: z.array(FromCan).optional(),
});
export type PartsWeighed = z.infer<typeof PartsWeighed>;

/** One part alone. B meets A once both are in. */
export const PartWeighed = z.object({
  type: z.literal('PartWeighed'),
  component: Component,
  grams: Grams,
  fromCans: z.array(FromCan).optional(),
});

/** More of one part, to bring the ratio back: stirring starts again for the whole, pot life never does. */
export const PartAdded = z.object({
  type: z.literal('PartAdded'),
  component: Component,
  grams: Grams,
  fromCans: z.array(FromCan).optional(),
});

export const StirrerStarted = z.object({ type: z.literal('StirrerStarted') });
export const StirrerStopped = z.object({ type: z.literal('StirrerStopped') });
export const MixFiltered = z.object({ type: z.literal('MixFiltered') });
export const PotUncovered = z.object({ type: z.literal('PotUncovered') });
export const PotCovered = z.object({ type: z.literal('PotCovered') });
/** Drained from a flow coat. It keeps the batch's age, and is filtered again before it is used. */
export const MixCaught = z.object({ type: z.literal('MixCaught'), grams: Grams });
export const MixThickened = z.object({ type: z.literal('MixThickened'), seen: z.enum(['thick', 'gelled']) });
/** From here on its acts are asked about by this edition of the rules, whatever edition judged them at the time. */
export const JudgedAnew = z.object({ type: z.literal('JudgedAnew'), edition: z.literal(editions) });
export const PotEmptied = z.object({ type: z.literal('PotEmptied'), leftGrams: Grams.optional() });

export const BatchEvent = z.discriminatedUnion('type', [
  BatchOpened,
  PartsWeighed,
  PartWeighed,
  PartAdded,
  StirrerStarted,
  StirrerStopped,
  PotUncovered,
  PotCovered,
  MixFiltered,
  MixCaught,
  MixThickened,
  PotEmptied,
  JudgedAnew,
]);
export type BatchEvent = z.infer<typeof BatchEvent>;
